using Runup.Engineering.Motors;

namespace Runup.Dynamics.Plant;

/// <summary>Temperatures of winding, heat sink and braking resistor: one mass each, warmed by losses, cooled towards 40 °C.</summary>
/// <remarks>
/// τ·dθ/dt = θ_N·p − θ, p the loss over the one at rated load: I²/I_N² in the winding, I/I_N in the heat sink, power over continuous power in the resistor.
/// Rises at rated load and time constants: winding 80 K and 20 min, heat sink 40 K and 2 min, resistor 300 K and 1 min (common practice, no source). No reduced cooling at
/// low speed; the circuit's resistances stay what they are.
/// </remarks>
internal sealed class ThermalStates(EquivalentCircuit motor, DriveSystem system)
{
    private const double AmbientC = 40;
    private const double WindingRise = 80;
    private const double WindingS = 1200;
    private const double HeatSinkRise = 40;
    private const double HeatSinkS = 120;
    private const double ResistorRise = 300;
    private const double ResistorS = 60;

    private readonly double ratedA = motor.RatedCurrent?.Amperes ?? system.Drive.Overloads[0].Current.Amperes;
    private readonly double driveA = system.Drive.Overloads[0].Current.Amperes;
    private readonly double resistorW = system.BrakingResistorPower?.Watts ?? 0;
    private double winding;
    private double heatSink;
    private double resistor;

    /// <summary>Winding, in °C.</summary>
    internal double WindingC => AmbientC + winding;

    /// <summary>Heat sink of the drive, in °C.</summary>
    internal double HeatSinkC => AmbientC + heatSink;

    /// <summary>Braking resistor, in °C; ambient where its power is not known.</summary>
    internal double ResistorC => AmbientC + resistor;

    internal void Pass(double lengthS, double currentA, double resistorJ)
    {
        var load = currentA / ratedA;
        winding += lengthS / WindingS * ((WindingRise * load * load) - winding);
        heatSink += lengthS / HeatSinkS * ((HeatSinkRise * currentA / driveA) - heatSink);
        if (resistorW > 0)
        {
            resistor += ((ResistorRise * resistorJ / resistorW) - (lengthS * resistor)) / ResistorS;
        }
    }
}
