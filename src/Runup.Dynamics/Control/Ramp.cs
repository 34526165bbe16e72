namespace Runup.Dynamics.Control;

/// <summary>The ramp generator: takes the frequency to its target at no more than the rates of the moment.</summary>
internal sealed class Ramp
{
    /// <summary>The ramp's frequency, signed, in Hz.</summary>
    internal double FrequencyHz { get; private set; }

    internal void Reset() => FrequencyHz = 0;

    /// <summary>One sample. Rise and fall count away from zero and towards it; a negative rate turns the ramp back.</summary>
    internal void Sample(double targetHz, double riseHzPerS, double fallHzPerS, double highestHz)
    {
        var direction = FrequencyHz == 0 ? Math.Sign(targetHz) : Math.Sign(FrequencyHz);
        var size = Math.Abs(FrequencyHz);
        var wanted = Math.Max(direction * targetHz, 0);
        var rise = Math.Min((wanted - size) / ControlFigures.TickS, riseHzPerS);
        var rate = Math.Max(rise, -fallHzPerS);
        FrequencyHz = direction * Math.Clamp(size + (rate * ControlFigures.TickS), 0, Math.Max(highestHz, size));
    }
}
