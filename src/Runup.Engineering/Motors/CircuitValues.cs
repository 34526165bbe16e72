using System.Runtime.InteropServices;
using Runup.Quantities;

namespace Runup.Engineering.Motors;

/// <summary>The numbers of an equivalent circuit without their units, for the inner loops: ohms, siemens, watts, rad/s; reactances at rated frequency.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct CircuitValues
{
    internal required double Stator_ohm { get; init; }

    internal required double StatorLeakage_ohm { get; init; }

    internal required double Magnetizing_ohm { get; init; }

    internal double CoreLoss_siemens { get; init; }

    internal required double Rotor_ohm { get; init; }

    internal required double RotorLeakage_ohm { get; init; }

    /// <summary>Resistance of a second cage beside the first; zero where there is none.</summary>
    internal double SecondRotor_ohm { get; init; }

    internal double SecondRotorLeakage_ohm { get; init; }

    internal double Friction_W { get; init; }

    internal double StrayPerSquareAmpere_W { get; init; }

    /// <summary>Speed at which friction and stray loss hold.</summary>
    internal required double ReferenceSpeed_radPerS { get; init; }

    internal required double RatedFrequency_Hz { get; init; }

    internal required int PolePairs { get; init; }

    /// <summary>How the iron gives way above the flux at which the magnetizing reactance holds.</summary>
    internal MagnetizingCurve Iron { get; init; }

    /// <summary>The numbers of a circuit.</summary>
    /// <exception cref="ArgumentException">The circuit has a stray loss without the current at which it holds.</exception>
    internal static CircuitValues Of(EquivalentCircuit circuit)
    {
        if (circuit.StrayLoss.Watts != 0 && circuit.RatedCurrent is not { Amperes: > 0 })
        {
            throw new ArgumentException("A stray loss holds at a current, which this circuit does not state.", nameof(circuit));
        }

        return new CircuitValues
        {
            Stator_ohm = circuit.StatorResistance.Ohms,
            StatorLeakage_ohm = circuit.StatorLeakage.Ohms,
            Magnetizing_ohm = circuit.Magnetizing.Ohms,
            CoreLoss_siemens = circuit.CoreLoss is { } coreLoss ? 1 / coreLoss.Ohms : 0,
            Rotor_ohm = circuit.RotorResistance.Ohms,
            RotorLeakage_ohm = circuit.RotorLeakage.Ohms,
            SecondRotor_ohm = circuit.SecondCage?.Resistance.Ohms ?? 0,
            SecondRotorLeakage_ohm = circuit.SecondCage?.Leakage.Ohms ?? 0,
            Friction_W = circuit.FrictionLoss.Watts,
            StrayPerSquareAmpere_W = circuit.RatedCurrent is { Amperes: > 0 } rated ? circuit.StrayLoss.Watts / (rated.Amperes * rated.Amperes) : 0,
            ReferenceSpeed_radPerS = circuit.RatedSpeed?.RadiansPerSecond
                ?? circuit.RatedFrequency.SynchronousSpeed(circuit.Poles).RadiansPerSecond,
            RatedFrequency_Hz = circuit.RatedFrequency.Hertz,
            PolePairs = circuit.Poles.Pairs,
        };
    }

    /// <summary>The circuit of these numbers; its iron is left out, which no circuit states.</summary>
    internal EquivalentCircuit Circuit(double phase_V, double rated_A)
    {
        var frequency = ElectricalFrequency.FromHertz(RatedFrequency_Hz);
        return new EquivalentCircuit
        {
            StatorResistance = Resistance.FromOhms(Stator_ohm),
            StatorLeakage = Reactance.FromOhms(StatorLeakage_ohm),
            Magnetizing = Reactance.FromOhms(Magnetizing_ohm),
            RotorLeakage = Reactance.FromOhms(RotorLeakage_ohm),
            RotorResistance = Resistance.FromOhms(Rotor_ohm),
            SecondCage = SecondRotor_ohm > 0 ? new RotorCage(Resistance.FromOhms(SecondRotor_ohm), Reactance.FromOhms(SecondRotorLeakage_ohm)) : null,
            CoreLoss = CoreLoss_siemens > 0 && double.IsFinite(1 / CoreLoss_siemens) ? Resistance.FromOhms(1 / CoreLoss_siemens) : null,
            FrictionLoss = ElectricalPower.FromWatts(Friction_W),
            StrayLoss = ElectricalPower.FromWatts(StrayPerSquareAmpere_W * rated_A * rated_A),
            RatedCurrent = LineCurrent.FromAmperes(rated_A),
            RatedSpeed = ShaftSpeed.FromRadiansPerSecond(ReferenceSpeed_radPerS),
            RatedFrequency = frequency,
            RatedVoltage = PhaseVoltage.FromVolts(phase_V).Line,
            Poles = PoleCount.FromPoles(2 * PolePairs),
        };
    }
}
