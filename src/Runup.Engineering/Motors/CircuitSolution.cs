using System.Numerics;
using Runup.Quantities;

namespace Runup.Engineering.Motors;

/// <summary>The steady state of a motor at a voltage, a frequency and a slip.</summary>
/// <remarks>
/// <para>
/// Per phase of the star equivalent: I = V / (Rs + jXls + 1/(1/(Rr/s + jXlr) + 1/jXm + 1/Rfe)), E = V − I (Rs + jXls),
/// P_airgap = 3 E² Re(1/(Rr/s + jXlr)), T = P_airgap/ω_s, P_shaft = (1 − s) P_airgap − P_friction − P_stray.
/// V phase voltage (V), I stator current (A), E air-gap voltage (V), s slip, ω_s synchronous speed (rad/s), P power (W), T torque (N·m).
/// </para>
/// <para>Validity: sinusoidal supply, balanced, constant speed; any frequency above zero, any slip (motor, generator, against the field).</para>
/// <para>
/// Assumptions: reactances in proportion to frequency, no saturation, no skin effect in the bars; core-loss resistance the same at every frequency, so that
/// the core loss goes with the square of the air-gap voltage; friction loss by <see cref="FrictionLaw"/>; stray loss with the squares of
/// current and speed (P_s = P_sN (I/I_N)² (ω/ω_N)²), so that it makes no torque at standstill. ω_N is the circuit's rated speed, or the
/// synchronous speed at rated frequency where it has none.
/// </para>
/// </remarks>
[Source("fitzgerald", "chapter 6, equivalent circuit of the induction motor")]
[Source("iec-60034-2-1", "separate losses: friction, core, copper, additional load loss with the square of current")]
public sealed record CircuitSolution
{
    private CircuitSolution(EquivalentCircuit circuit, LineVoltage voltage, ElectricalFrequency frequency, in PhaseFlow flow)
    {
        Circuit = circuit;
        Voltage = voltage;
        Frequency = frequency;
        Slip = Slip.FromRatio(flow.Slip);
        StatorPhasor = new Complex(flow.Active_A, flow.Reactive_A);
        Current = LineCurrent.FromAmperes(flow.Current_A);
        RotorCurrent = LineCurrent.FromAmperes(flow.RotorCurrent_A);
        AirGapVoltage = PhaseVoltage.FromVolts(flow.AirGapEmf_V);
        Input = ElectricalPower.FromWatts(flow.Input_W);
        AirGapPower = ElectricalPower.FromWatts(flow.AirGap_W);
        DevelopedTorque = Torque.FromNewtonMetres(flow.DevelopedTorque_Nm);
        ShaftTorque = Torque.FromNewtonMetres(flow.ShaftTorque_Nm);
        Output = ShaftPower.FromWatts(flow.Shaft_W);
        var (friction, stray) = flow.Mechanical;
        Losses = new MotorLosses(
            ElectricalPower.FromWatts(flow.StatorCopper_W),
            ElectricalPower.FromWatts(flow.Core_W),
            ElectricalPower.FromWatts(flow.RotorCopper_W),
            ElectricalPower.FromWatts(friction),
            ElectricalPower.FromWatts(stray));
    }

    /// <summary>The circuit that was solved.</summary>
    public EquivalentCircuit Circuit { get; }

    /// <summary>Voltage at the terminals.</summary>
    public LineVoltage Voltage { get; }

    /// <summary>Frequency at the terminals.</summary>
    public ElectricalFrequency Frequency { get; }

    /// <summary>Slip; negative when the shaft outruns the field.</summary>
    public Slip Slip { get; }

    /// <summary>Speed of the shaft.</summary>
    public ShaftSpeed Speed => Frequency.SynchronousSpeed(Circuit.Poles).At(Slip);

    /// <summary>Frequency of the currents in the rotor: |s| f.</summary>
    public ElectricalFrequency RotorFrequency => ElectricalFrequency.FromHertz(Math.Abs(Slip.Ratio) * Frequency.Hertz);

    /// <summary>Stator current in A against the phase voltage, which is real; a negative imaginary part lags.</summary>
    public Complex StatorPhasor { get; }

    /// <summary>Line current.</summary>
    public LineCurrent Current { get; }

    /// <summary>Rotor current referred to the stator.</summary>
    public LineCurrent RotorCurrent { get; }

    /// <summary>Voltage across the magnetizing branch.</summary>
    public PhaseVoltage AirGapVoltage { get; }

    /// <summary>Electrical input; negative when the motor feeds back.</summary>
    public ElectricalPower Input { get; }

    /// <summary>Power across the air gap into the rotor.</summary>
    public ElectricalPower AirGapPower { get; }

    /// <summary>Torque at the air gap.</summary>
    public Torque DevelopedTorque { get; }

    /// <summary>Torque at the shaft: developed torque less friction and stray.</summary>
    public Torque ShaftTorque { get; }

    /// <summary>Power at the shaft; negative when the load drives the motor.</summary>
    public ShaftPower Output { get; }

    /// <summary>Losses by kind: input = output + losses.</summary>
    public MotorLosses Losses { get; }

    /// <summary>Displacement power factor |P| / (√3 U I); zero without current.</summary>
    public PowerFactor PowerFactor =>
        PowerFactor.FromRatio(StatorPhasor == Complex.Zero ? 0 : Math.Abs(StatorPhasor.Real) / StatorPhasor.Magnitude);

    /// <summary>Power that comes out over power that goes in, motor or generator; zero where both only heat the machine.</summary>
    public Efficiency Efficiency => Efficiency.FromRatio((Input.Watts, Output.Watts) switch
    {
        ( > 0, > 0) => Output.Watts / Input.Watts,
        ( < 0, < 0) => Input.Watts / Output.Watts,
        _ => 0,
    });

    /// <summary>The steady state at a slip.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is zero.</exception>
    /// <exception cref="ArgumentException">The circuit has a stray loss without the current at which it holds.</exception>
    public static CircuitSolution At(EquivalentCircuit circuit, LineVoltage voltage, ElectricalFrequency frequency, Slip slip) =>
        new(circuit, voltage, frequency, new PhaseCircuit(circuit, frequency.Hertz).At(voltage.Phase.Volts, slip.Ratio));

    /// <summary>The steady state at a speed of the shaft.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is zero.</exception>
    public static CircuitSolution AtSpeed(EquivalentCircuit circuit, LineVoltage voltage, ElectricalFrequency frequency, ShaftSpeed speed) =>
        At(circuit, voltage, frequency, frequency.SynchronousSpeed(circuit.Poles).SlipOf(speed));

    /// <summary>At synchronous speed: only the magnetizing and core-loss currents flow.</summary>
    public static CircuitSolution Synchronous(EquivalentCircuit circuit, LineVoltage voltage, ElectricalFrequency frequency) =>
        At(circuit, voltage, frequency, Slip.FromRatio(0));

    /// <summary>With the rotor held.</summary>
    public static CircuitSolution LockedRotor(EquivalentCircuit circuit, LineVoltage voltage, ElectricalFrequency frequency) =>
        At(circuit, voltage, frequency, Slip.FromRatio(1));
}
