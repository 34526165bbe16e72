namespace Runup.Engineering.Numerics;

/// <summary>Zeros of a function of one variable between two points where its sign differs.</summary>
internal static class Root
{
    private const int LargestStepCount = 200;

    /// <summary>
    /// The zero between two ends, to the last digits: inverse quadratic interpolation where it is safe, bisection where not (T. R. Chandrupatla, 1997).
    /// </summary>
    /// <remarks>Without a change of sign, the end with the smaller magnitude.</remarks>
    internal static double Between(double low, double high, Func<double, double> function)
    {
        var (a, b, fa, fb) = (high, low, function(high), function(low));
        if (fa == 0 || fb == 0 || fa > 0 == fb > 0)
        {
            return Math.Abs(fa) < Math.Abs(fb) ? a : b;
        }

        var (c, fc, t) = (a, fa, 0.5);
        for (var step = 0; step < LargestStepCount; step++)
        {
            var x = a + (t * (b - a));
            var fx = function(x);
            if (fx > 0 == fa > 0)
            {
                (c, fc) = (a, fa);
            }
            else
            {
                (c, fc, b, fb) = (b, fb, a, fa);
            }

            (a, fa) = (x, fx);
            var best = Math.Abs(fa) < Math.Abs(fb) ? a : b;
            var smallest = (2.4e-16 * Math.Abs(best)) + 1e-300;
            var fraction = smallest / Math.Abs(b - a);
            if (fraction > 0.5 || fx == 0)
            {
                return best;
            }

            t = Math.Clamp(Next(a, b, c, fa, fb, fc), fraction, 1 - fraction);
        }

        return Math.Abs(fa) < Math.Abs(fb) ? a : b;
    }

    private static double Next(double a, double b, double c, double fa, double fb, double fc)
    {
        var xi = (a - b) / (c - b);
        var phi = (fa - fb) / (fc - fb);
        var interpolationIsSafe = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
        return interpolationIsSafe
            ? (fa / (fb - fa) * (fc / (fb - fc))) + ((c - a) / (b - a) * (fa / (fc - fa)) * (fb / (fc - fb)))
            : 0.5;
    }
}
