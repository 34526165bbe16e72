using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Integration;

/// <summary>The embedded Runge-Kutta pair of orders 5 and 4 of Dormand and Prince, which chooses its own steps.</summary>
/// <remarks>
/// Error of a step: ‖y₅ − y₄‖ over (absolute + relative·|y|), root mean square over the states; next step
/// h·min(5, max(0.2, 0.9·error^(−1/5))). The last step's length is kept for the next call.
/// </remarks>
[Engineering.Source("hairer", "II.5, table 5.2 (from memory)")]
internal sealed class DormandPrince(double relativeTolerance, double absoluteTolerance) : IStepper<One>
{
    private const double ShortestStepS = 1e-15;

    private static readonly double[][] A =
    [
        [1.0 / 5],
        [3.0 / 40, 9.0 / 40],
        [44.0 / 45, -56.0 / 15, 32.0 / 9],
        [19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729],
        [9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656],
        [35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84],
    ];

    // Weights of order 5 less weights of order 4.
    private static readonly double[] E =
        [71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40];

    private double proposedS = 1e-5;

    /// <inheritdoc/>
    public void Step<TRates>(ref TRates rates, ref SixStates<One> states, One lengthS)
        where TRates : struct, IRates<One>
    {
        Span<double> y = [states.X1, states.X2, states.X3, states.X4, states.X5, states.X6];
        Span<double> k = stackalloc double[42];
        Span<double> trial = stackalloc double[6];
        double left = lengthS;
        while (left > 0)
        {
            var last = proposedS >= left;
            var h = last ? left : proposedS;
            var error = Try(ref rates, y, k, trial, h);
            if (!double.IsFinite(error) || (h < ShortestStepS && !last))
            {
                // The solution runs away: the caller sees it by a state that is not a number.
                y.Fill(double.NaN);
                break;
            }

            if (error <= 1)
            {
                trial.CopyTo(y);
                left = last ? 0 : left - h;
            }

            var next = h * Math.Clamp(0.9 * Math.Pow(Math.Max(error, 1e-10), -0.2), 0.2, 5);
            proposedS = last && error <= 1 ? Math.Max(proposedS, next) : next;
        }

        states = new SixStates<One> { X1 = y[0], X2 = y[1], X3 = y[2], X4 = y[3], X5 = y[4], X6 = y[5] };
    }

    private double Try<TRates>(ref TRates rates, ReadOnlySpan<double> y, Span<double> k, Span<double> trial, double h)
        where TRates : struct, IRates<One>
    {
        y.CopyTo(trial);
        for (var stage = 0; stage < 7; stage++)
        {
            if (stage > 0)
            {
                Combine(y, k, A[stage - 1], h, trial);
            }

            rates.At(
                trial[0], trial[1], trial[2], trial[3], trial[4], trial[5],
                out var d1, out var d2, out var d3, out var d4, out var d5, out var d6);
            ((ReadOnlySpan<double>)[d1, d2, d3, d4, d5, d6]).CopyTo(k[(stage * 6)..]);
        }

        // The seventh stage stands at the end of the step: the trial is the solution of order 5.
        var sum = 0.0;
        for (var i = 0; i < 6; i++)
        {
            var difference = 0.0;
            for (var stage = 0; stage < 7; stage++)
            {
                difference += E[stage] * k[(stage * 6) + i];
            }

            var scale = absoluteTolerance + (relativeTolerance * Math.Max(Math.Abs(y[i]), Math.Abs(trial[i])));
            sum += h * difference / scale * (h * difference / scale);
        }

        return Math.Sqrt(sum / 6);
    }

    private static void Combine(ReadOnlySpan<double> y, ReadOnlySpan<double> k, double[] weights, double h, Span<double> result)
    {
        for (var i = 0; i < 6; i++)
        {
            var slope = 0.0;
            for (var stage = 0; stage < weights.Length; stage++)
            {
                slope += weights[stage] * k[(stage * 6) + i];
            }

            result[i] = y[i] + (h * slope);
        }
    }
}
