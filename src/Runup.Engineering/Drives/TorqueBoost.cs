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
/// Assumptions: no saturation beyond the no-load flux, no skin effect; the cable's resistance is part of Rs if the caller adds it; dead time of the inverter is not
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
        var rated_Hz = circuit.RatedFrequency.Hertz;
        var fluxPerHertz = new PhaseCircuit(circuit, rated_Hz).At(circuit.RatedVoltage.Phase.Volts, 0).AirGapEmf_V / rated_Hz;
        PhaseFlow AtFlux(double frequency_Hz)
        {
            var phases = new PhaseCircuit(circuit, frequency_Hz);
            return phases.At(fluxPerHertz * frequency_Hz / phases.At(1, 1).AirGapEmf_V, 1);
        }

        // The torque at a given flux peaks where the rotor's leakage reactance equals its resistance.
        var peak_Hz = Math.Min(1, circuit.RotorResistance.Ohms / circuit.RotorLeakage.Ohms) * rated_Hz;
        var largest = AtFlux(peak_Hz).DevelopedTorque_Nm;
        if (breakaway.NewtonMetres > largest)
        {
            return new NotAttainable(Torque.FromNewtonMetres(largest));
        }

        var smallest_Hz = 1e-6 * rated_Hz;
        var frequency_Hz = Root.Between(smallest_Hz, peak_Hz, f => AtFlux(f).DevelopedTorque_Nm - breakaway.NewtonMetres);
        var flow = AtFlux(frequency_Hz);
        var voltage = PhaseVoltage.FromVolts(flow.Phase_V).Line;
        var lacking = voltage.Volts - (characteristic with { Boost = default }).At(frequency_Hz);
        var weight = characteristic.RatedVoltage.Volts * (1 - (frequency_Hz / characteristic.BaseFrequency.Hertz));
        var boost = lacking > 0 && weight > 0 ? lacking / weight : 0;
        return new Required(
            Fraction.FromRatio(boost), ElectricalFrequency.FromHertz(frequency_Hz), voltage, LineCurrent.FromAmperes(flow.Current_A));
    }
}
