namespace Runup.Dynamics.Control;

/// <summary>The numbers that vector control works with, from the motor's circuit as far as the drive knows it.</summary>
internal sealed class VectorFigures
{
    // Of the voltage that the bus allows: the rest is for control (common practice, no source).
    internal const double VoltageShare = 0.94;

    internal VectorFigures(ControlFigures figures)
    {
        var (settings, motor) = (figures.Settings, figures.Motor);
        var radPerS = settings.MotorRatedFrequency.RadiansPerSecond;
        StatorOhm = motor.StatorResistance.Ohms;
        RotorOhm = motor.RotorResistance.Ohms;
        LeakageH = motor.Leakage.Ohms / radPerS;
        MagnetizingH = motor.Magnetizing.Ohms / radPerS;

        // Without load the whole rated voltage stands on stator resistance and reactance.
        var peakV = settings.MotorRatedVoltage.Phase.Volts * Math.Sqrt(2);
        var reactance = motor.Leakage.Ohms + motor.Magnetizing.Ohms;
        RatedFluxA = peakV / Math.Sqrt((StatorOhm * StatorOhm) + (reactance * reactance));
        RatedFluxWb = MagnetizingH * RatedFluxA;
        RatedTorqueA = Math.Sqrt(Math.Max((2 * figures.MotorA * figures.MotorA) - (RatedFluxA * RatedFluxA), 0.1 * figures.MotorA * figures.MotorA));
        MostA = Math.Sqrt(2) * figures.LimitA;
        RatedSlipRadPerS = 2 * Math.PI * figures.RatedSlipHz;
    }

    internal double StatorOhm { get; }

    internal double RotorOhm { get; }

    internal double LeakageH { get; }

    internal double MagnetizingH { get; }

    /// <summary>Current that makes the flux, and that flux, at rated voltage and frequency; peaks of the phase.</summary>
    internal double RatedFluxA { get; }

    internal double RatedFluxWb { get; }

    /// <summary>Current that makes the torque at the rated point, a peak of the phase.</summary>
    internal double RatedTorqueA { get; }

    internal double MostA { get; }

    internal double RatedSlipRadPerS { get; }
}
