namespace Runup.Engineering.Numerics;

/// <summary>Least squares of a few unknowns: Levenberg's damped steps with differences for derivatives.</summary>
internal static class LeastSquares
{
    private const int Steps = 60;
    private const double Difference = 1e-6;
    private const double SmallestGain = 1e-14;
    private const double LargestDamping = 1e9;

    /// <summary>The unknowns with the least sum of squares near a start, and that sum; a residual that is not finite is never stepped to.</summary>
    internal static (double[] Unknowns, double Sum) From(double[] start, Func<double[], double[]> residuals)
    {
        var (at, now) = (start, residuals(start));
        var (sum, damping) = (Square(now), 1e-3);
        var slopes = Slopes(at, now, residuals);
        for (var step = 0; step < Steps && damping < LargestDamping; step++)
        {
            var tried = Stepped(at, now, slopes, damping);
            var then = residuals(tried);
            var reached = Square(then);
            if (!(reached < sum))
            {
                damping *= 8;
                continue;
            }

            var gain = sum - reached;
            (at, now, sum, damping) = (tried, then, reached, damping / 4);
            if (gain < SmallestGain * (1 + sum))
            {
                break;
            }

            slopes = Slopes(at, now, residuals);
        }

        return (at, sum);
    }

    private static double[][] Slopes(double[] at, double[] now, Func<double[], double[]> residuals)
    {
        var slopes = new double[at.Length][];
        for (var unknown = 0; unknown < at.Length; unknown++)
        {
            var aside = (double[])at.Clone();
            aside[unknown] += Difference;
            var there = residuals(aside);
            var slope = new double[now.Length];
            for (var place = 0; place < slope.Length; place++)
            {
                var rise = (there[place] - now[place]) / Difference;
                slope[place] = double.IsFinite(rise) ? rise : 0;
            }

            slopes[unknown] = slope;
        }

        return slopes;
    }

    private static double[] Stepped(double[] at, double[] now, double[][] slopes, double damping)
    {
        var count = at.Length;
        var system = new double[count, count + 1];
        for (var row = 0; row < count; row++)
        {
            for (var column = 0; column < count; column++)
            {
                system[row, column] = Product(slopes[row], slopes[column]) + (row == column ? damping * (1 + Product(slopes[row], slopes[row])) : 0);
            }

            system[row, count] = -Product(slopes[row], now);
        }

        var stepped = Solved(system, count);
        for (var unknown = 0; unknown < count; unknown++)
        {
            stepped[unknown] += at[unknown];
        }

        return stepped;
    }

    // The damped system is positive definite, so that elimination needs no search for pivots.
    private static double[] Solved(double[,] system, int count)
    {
        for (var pivot = 0; pivot < count; pivot++)
        {
            for (var row = pivot + 1; row < count; row++)
            {
                var factor = system[row, pivot] / system[pivot, pivot];
                for (var column = pivot; column <= count; column++)
                {
                    system[row, column] -= factor * system[pivot, column];
                }
            }
        }

        var solution = new double[count];
        for (var row = count - 1; row >= 0; row--)
        {
            var known = 0.0;
            for (var column = row + 1; column < count; column++)
            {
                known += system[row, column] * solution[column];
            }

            solution[row] = (system[row, count] - known) / system[row, row];
        }

        return solution;
    }

    private static double Square(double[] values)
    {
        var sum = Product(values, values);
        return double.IsNaN(sum) ? double.PositiveInfinity : sum;
    }

    private static double Product(double[] one, double[] other)
    {
        var sum = 0.0;
        for (var place = 0; place < one.Length; place++)
        {
            sum += one[place] * other[place];
        }

        return sum;
    }
}
