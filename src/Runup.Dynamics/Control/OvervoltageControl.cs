namespace Runup.Dynamics.Control;

/// <summary>Overvoltage control: stretches the deceleration, so that the bus stays at its control level.</summary>
/// <remarks>
/// The power that flows back answers the slip, and the bus integrates it: v″ = (P_N/f_slip)/(C·v) · df/dt. A controller with derivative makes
/// of that a damped second-order loop of 50 rad/s. With a chopper at work the prediction is left out: the chopper comes first.
/// </remarks>
internal sealed class OvervoltageControl
{
    private const double LoopRate = 50;
    private const double LeadS = 0.04;
    private const double Band = 0.05;

    private readonly ControlFigures figures;
    private readonly double gain;
    private double lastV = double.NaN;
    private double slopeVPerS;

    internal OvervoltageControl(ControlFigures figures)
    {
        this.figures = figures;
        gain = LoopRate * LoopRate * figures.BusF * figures.OvervoltageControlV * figures.RatedSlipHz / figures.Settings.MotorRatedPower.Watts;
    }

    internal bool Active { get; private set; }

    internal void Reset()
    {
        lastV = double.NaN;
        slopeVPerS = 0;
        Active = false;
    }

    /// <summary>Highest rate at which the frequency may fall now, in Hz/s; negative makes it rise.</summary>
    internal double HighestFall(in Measurement measured, double fallHzPerS)
    {
        var rise = double.IsNaN(lastV) ? 0 : (measured.BusV - lastV) / ControlFigures.TickS;
        lastV = measured.BusV;
        slopeVPerS += 0.4 * (rise - slopeVPerS);
        var level = figures.OvervoltageControlV;
        var lead = figures.Settings.BrakingChopper ? 0 : LeadS * slopeVPerS;
        var start = figures.Settings.BrakingChopper ? level : level * (1 - Band);
        Active = figures.Settings.OvervoltageControl && measured.OutputW < 0 && measured.BusV + lead > start;
        return Active
            ? Math.Clamp(gain * (level - measured.BusV - lead), -100 * figures.RatedSlipHz, fallHzPerS)
            : fallHzPerS;
    }
}
