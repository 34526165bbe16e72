using System.Numerics;

namespace Runup.Dynamics.Plant;

/// <summary>The healthy motor in the frame of the control; where the inverter is off the frame turns with the rotor, and the cages alone make the field.</summary>
internal sealed class TurningFields(DetailedMachine machine, double strayPerSpeed, double busF) : MotorFields(machine, strayPerSpeed, busF)
{
    /// <inheritdoc/>
    internal override FieldRates At(in DetailedStates x)
    {
        Span<Complex> cages = [x.First, x.Second];
        cages = cages[..Machine.Cages];
        var frame = FrameRadPerS;
        var magnetizing = Machine.Magnetizing(x.Stator, cages, Fed ? frame : 0, Fed);
        var statorA = Fed ? Machine.StatorA(x.Stator, magnetizing) : default;
        var slip = Fed ? frame - (Machine.PolePairs * x.MotorRadPerS) : 0;
        return new FieldRates(
            Fed ? (Modulation * x.BusV) - (Machine.StatorOhm * statorA) - (new Complex(0, frame) * x.Stator) : default,
            Machine.CageRate(0, x.First, Machine.CageA(0, x.First, magnetizing), slip),
            Machine.Cages > 1 ? Machine.CageRate(1, x.Second, Machine.CageA(1, x.Second, magnetizing), slip) : default,
            Fed ? DrivingNm(Machine.TorqueNm(cages, magnetizing), statorA, x.MotorRadPerS) : 0,
            Fed ? 1.5 * (Modulation * Complex.Conjugate(statorA)).Real : 0);
    }

    /// <inheritdoc/>
    internal override Complex OutputA(in DetailedStates x) => Fed ? Machine.StatorA(x.Stator, Magnetizing(x, fed: true)) : default;

    /// <inheritdoc/>
    internal override double TorqueNm(in DetailedStates x)
    {
        Span<Complex> cages = [x.First, x.Second];
        return Fed ? Machine.TorqueNm(cages[..Machine.Cages], Magnetizing(x, fed: true)) : 0;
    }

    /// <inheritdoc/>
    internal override DetailedStates Switch(in DetailedStates x, bool on)
    {
        var after = on && !Fed ? x with { Stator = Magnetizing(x, fed: false) }
            : Fed && !on ? x with { Stator = default, BusV = BusAfter(x.BusV, OutputA(x).Magnitude) }
            : x;
        Fed = on;
        return after;
    }

    /// <summary>Takes over a motor that the inverter feeds, or not.</summary>
    internal void Take(bool fed) => Fed = fed;

    private Complex Magnetizing(in DetailedStates x, bool fed)
    {
        Span<Complex> cages = [x.First, x.Second];
        return Machine.Magnetizing(x.Stator, cages[..Machine.Cages], fed ? FrameRadPerS : 0, fed);
    }
}
