using System.Runtime.InteropServices;
using Runup.Engineering.Motors;
using Runup.Engineering.Numerics;
using Runup.Quantities;

namespace Runup.Engineering.Drives;

/// <summary>The boost that a motor needs to break a load away, and the current that it costs.</summary>
/// <remarks>
/// <para>
/// At standstill the slip frequency is the output frequency. With the air-gap flux that the motor has at rated voltage and frequency without load, E = E₀ f/f_N and
/// T(f) = 3 E²/ω_s · Re(1/(Rr + jXlr f/f_N)); the lowest f at which T(f) is the breakaway torque is where the shaft lets go. The voltage that
/// holds that flux is U = √3 E |Z_in/Z_inner|; the boost is what the characteristic without boost lacks of it: b = (U − U_0(f)) / (U_N (1 − f/f_b)).
/// E air-gap voltage (V), ω_s synchronous speed at f (rad/s), U_N rated voltage (V), f_b base frequency (Hz).
/// </para>
/// <para>Validity: induction motor at standstill, cold start from zero frequency, V/f control without automatic boost.</para>
/// <para>
/// Assumptions: no saturation beyond the no-load flux, skin effect as far as a second cage gives it; the cable's resistance is part of Rs if the caller adds it; dead time of the inverter is not
/// counted, so that a real drive may need a little more.
/// </para>
/// </remarks>
[Source("common-practice", "boost for rated flux at the breakaway torque")]
public abstract record TorqueBoost
{
    private TorqueBoost()
    {
    }

    /// <summary>This boost does it.</summary>
    /// <param name="Boost">As a part of rated voltage, added at standstill; zero if the characteristic does without.</param>
    /// <param name="Frequency">Output frequency at which the shaft lets go.</param>
    /// <param name="Voltage">Output voltage there.</param>
    /// <param name="Current">Output current there.</param>
    public sealed record Required(Fraction Boost, ElectricalFrequency Frequency, LineVoltage Voltage, LineCurrent Current) : TorqueBoost;

    /// <summary>At rated flux the motor has no such torque at standstill.</summary>
    /// <param name="Largest">The largest that it has.</param>
    public sealed record NotAttainable(Torque Largest) : TorqueBoost;

    /// <summary>The boost for a breakaway torque at the motor's shaft.</summary>
    /// <param name="circuit">The motor.</param>
    /// <param name="characteristic">Voltage against frequency; its own boost is left out.</param>
    /// <param name="breakaway">Torque at the motor's shaft.</param>
    public static TorqueBoost For(EquivalentCircuit circuit, VoltsPerHertz characteristic, Torque breakaway)
    {
        var values = CircuitValues.Of(circuit);
        var rated_V = circuit.RatedVoltage.Phase.Volts;
        if (For(values, rated_V, characteristic, breakaway.NewtonMetres) is not { } found)
        {
            return new NotAttainable(Torque.FromNewtonMetres(FluxAtStandstill.Of(values, rated_V).Largest().Torque_Nm));
        }

        return new Required(
            Fraction.FromRatio(found.Boost),
            ElectricalFrequency.FromHertz(found.Frequency_Hz),
            PhaseVoltage.FromVolts(found.Phase_V).Line,
            LineCurrent.FromAmperes(found.Current_A));
    }

    /// <summary>As bare numbers, for the inner loops; null where the motor has no such torque at that flux.</summary>
    internal static BoostNumbers? For(in CircuitValues circuit, double ratedPhase_V, VoltsPerHertz characteristic, double breakaway_Nm)
    {
        var standstill = FluxAtStandstill.Of(circuit, ratedPhase_V);
        var (peak_Hz, largest_Nm) = standstill.Largest();
        if (!(breakaway_Nm <= largest_Nm))
        {
            return null;
        }

        var frequency_Hz = Root.Between(SmallestShare * circuit.RatedFrequency_Hz, peak_Hz, f => standstill.At(f).DevelopedTorque_Nm - breakaway_Nm);
        var flow = standstill.At(frequency_Hz);
        var lacking = (flow.Phase_V * Math.Sqrt(3)) - (characteristic with { Boost = default }).At(frequency_Hz);
        var weight = characteristic.RatedVoltage.Volts * (1 - (frequency_Hz / characteristic.BaseFrequency.Hertz));
        return new BoostNumbers(lacking > 0 && weight > 0 ? lacking / weight : 0, frequency_Hz, flow.Phase_V, flow.Current_A);
    }

    // Of rated frequency: where the search begins.
    private const double SmallestShare = 1e-6;
}

/// <summary>A boost and the state in which the shaft lets go, as bare numbers.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct BoostNumbers(double Boost, double Frequency_Hz, double Phase_V, double Current_A);

/// <summary>A motor at standstill with the air-gap flux that it has at rated voltage and frequency without load.</summary>
internal sealed class FluxAtStandstill
{
    private const int ScanSteps = 10;
    private const double ScanFrom = 0.01;

    private readonly CircuitValues circuit;
    private readonly double fluxPerHertz;

    private FluxAtStandstill(in CircuitValues circuit, double fluxPerHertz) => (this.circuit, this.fluxPerHertz) = (circuit, fluxPerHertz);

    internal static FluxAtStandstill Of(in CircuitValues circuit, double ratedPhase_V) =>
        new(circuit, new PhaseCircuit(circuit, circuit.RatedFrequency_Hz).At(ratedPhase_V, 0).AirGapEmf_V / circuit.RatedFrequency_Hz);

    internal PhaseFlow At(double frequency_Hz) => new PhaseCircuit(circuit, frequency_Hz).AtEmf(fluxPerHertz * frequency_Hz, 1);

    /// <summary>The largest torque and its frequency: with one cage where the rotor's leakage reactance equals its resistance, with two by search.</summary>
    internal (double Frequency_Hz, double Torque_Nm) Largest()
    {
        var rated_Hz = circuit.RatedFrequency_Hz;
        var peak_Hz = Math.Min(1, circuit.Rotor_ohm / circuit.RotorLeakage_ohm) * rated_Hz;
        for (var step = 0; circuit.SecondRotor_ohm > 0 && step <= ScanSteps; step++)
        {
            var frequency_Hz = rated_Hz * Math.Pow(ScanFrom, (double)step / ScanSteps);
            peak_Hz = At(frequency_Hz).DevelopedTorque_Nm > At(peak_Hz).DevelopedTorque_Nm ? frequency_Hz : peak_Hz;
        }

        return (peak_Hz, At(peak_Hz).DevelopedTorque_Nm);
    }
}
