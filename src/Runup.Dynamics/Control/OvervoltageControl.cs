namespace Runup.Dynamics.Control;

/// <summary>Overvoltage control: stretches the deceleration, so that the bus stays at its control level.</summary>
/// <remarks>
/// <para>
/// The power that flows back answers the slip with the lag of the rotor's leakage, and the bus integrates it:
/// v″ ≈ (P_N/f_slip)/(C·v) · df/dt. From the moment at which the bus is about to reach its level the rate of deceleration is
/// s + K·(e − T₁·(v′ + T₂·v″)), e = level − v, ds/dt = K·w·e from s = 0, T₂ the rotor's lag: at first the frequency is held or raised, then it falls
/// just as fast as losses and load take up what the masses give. K is the square of the loop's rate over the gain above.
/// </para>
/// <para>With a chopper at work nothing is predicted: the chopper comes first. Figures found by trial on motors from 0.75 to 75 kW.</para>
/// </remarks>
internal sealed class OvervoltageControl
{
    private const double LoopRate = 40;
    private const double LeadS = 0.06;
    private const double IntegralRate = 6;
    private const double WarningS = 0.04;

    // The integral must not wind up while the bus is still far from its level; shares of the level.
    private const double MostErrorUp = 0.04;
    private const double MostErrorDown = 0.1;

    // It lets go when the motor takes power again and the bus is well down.
    private const double ReleaseBelow = 0.15;
    private const double ReleaseS = 0.1;
    private const double Smoothing = 0.5;

    private readonly ControlFigures figures;
    private readonly double levelV;
    private readonly double gain;
    private readonly double warningS;
    private double lastV = double.NaN;
    private double slope;
    private double bend;
    private double integral;
    private double motoringS;

    internal OvervoltageControl(ControlFigures figures)
    {
        this.figures = figures;
        levelV = figures.OvervoltageControlV;
        warningS = figures.Settings.BrakingChopper ? 0 : WarningS;
        gain = LoopRate * LoopRate * figures.BusF * levelV * figures.RatedSlipHz / figures.Settings.MotorRatedPower.Watts;
    }

    internal bool Active { get; private set; }

    internal void Reset()
    {
        lastV = double.NaN;
        slope = 0;
        Active = false;
    }

    /// <summary>Highest rate at which the frequency may fall now, in Hz/s; negative makes it rise.</summary>
    internal double HighestFall(in Measurement measured, double fallHzPerS)
    {
        Differentiate(measured.BusV);
        var error = levelV - measured.BusV;
        if (!figures.Settings.OvervoltageControl || !(Active || Begins(measured, error)))
        {
            return fallHzPerS;
        }

        var rate = integral + (gain * (error - (LeadS * (slope + (figures.RotorLagS * bend)))));
        integral += gain * IntegralRate * Math.Clamp(error, -MostErrorDown * levelV, MostErrorUp * levelV) * ControlFigures.TickS;
        motoringS = measured.OutputW >= 0 && error > ReleaseBelow * levelV ? motoringS + ControlFigures.TickS : 0;
        Active = integral < fallHzPerS && motoringS < ReleaseS;
        return Math.Clamp(rate, -100 * figures.RatedSlipHz, fallHzPerS);
    }

    private bool Begins(in Measurement measured, double error)
    {
        if (measured.OutputW >= 0 || error > warningS * slope)
        {
            return false;
        }

        integral = 0;
        motoringS = 0;
        return true;
    }

    private void Differentiate(double busV)
    {
        var last = slope;
        slope += Smoothing * ((double.IsNaN(lastV) ? 0 : (busV - lastV) / ControlFigures.TickS) - slope);
        bend = (slope - last) / ControlFigures.TickS;
        lastV = busV;
    }
}
