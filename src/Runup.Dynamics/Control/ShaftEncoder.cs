using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Control;

/// <summary>The speed of a shaft as a drive reckons it from the counts of an encoder.</summary>
/// <remarks>
/// Counts are whole, four to a pulse. A tracking loop follows them: with e the counted angle less the followed one, pω_i = ω₀²·e, ω = ω_i + 2·ω₀·e, ω₀ 150 /s (by trial): no lag at a steady speed,
/// and one count is worth 2·ω₀ of its angle.
/// </remarks>
internal sealed class ShaftEncoder<T>(int pulsesPerTurn)
    where T : struct, ILanes<T>
{
    private const double LoopRate = 150;

    private readonly double countsPerRad = 4 * pulsesPerTurn / (2 * Math.PI);
    private readonly double[] places = new double[T.Count];
    private readonly double[] counted = new double[T.Count];
    private T behindRad;
    private T integral;

    /// <summary>Speed of the shaft, in rad/s.</summary>
    internal T RadPerS { get; private set; }

    /// <summary>One sample: how fast the shaft turned since the last.</summary>
    internal void Sample(T shaftRadPerS)
    {
        Span<double> moved = stackalloc double[T.Count];
        shaftRadPerS.Store(moved);
        for (var lane = 0; lane < moved.Length; lane++)
        {
            // What is left of a count is kept, what was counted is not: the numbers stay small however long it turns.
            var place = places[lane] + (countsPerRad * ControlFigures.TickS * moved[lane]);
            counted[lane] = Math.Floor(place);
            places[lane] = place - counted[lane];
        }

        behindRad += ((1 / countsPerRad) * T.Load(counted)) - (ControlFigures.TickS * RadPerS);
        integral += (LoopRate * LoopRate * ControlFigures.TickS) * behindRad;
        RadPerS = integral + ((2 * LoopRate) * behindRad);
    }
}
