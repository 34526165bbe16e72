using Runup.Engineering.Motors;
using Runup.Engineering.Numerics;
using Runup.Quantities;

namespace Runup.Engineering.Drives;

/// <summary>A motor on a drive that follows its voltage characteristic and never puts out more than a current.</summary>
/// <remarks>
/// <para>
/// At a speed of the shaft the drive may choose its frequency, and holds its voltage down to the current limit and to the air-gap flux that the motor has at
/// rated voltage and frequency without load: U = U(f) · min(1, I_lim/I, Φ_0/Φ).
/// </para>
/// <para>Validity: as <see cref="CircuitSolution"/>; speeds forward.</para>
/// <para>
/// Assumption: the flux beyond that at no load is not counted upon. Above it the iron saturates and current rises faster than torque, which a linear circuit
/// does not show.
/// </para>
/// </remarks>
/// <param name="Circuit">The motor.</param>
/// <param name="Characteristic">Voltage against frequency.</param>
/// <param name="CurrentLimit">Largest output current.</param>
[Source("common-practice", "torque at a drive's current limit, from the motor's circuit")]
public sealed record MotorOnDrive(EquivalentCircuit Circuit, VoltsPerHertz Characteristic, LineCurrent CurrentLimit)
{
    private const int ScanSteps = 48;

    /// <summary>The largest torque that the shaft gives at a speed.</summary>
    public TorqueAtLimit LargestTorque(ShaftSpeed speed)
    {
        var electrical_Hz = Electrical_Hz(speed.RadiansPerSecond);
        var widest_Hz = WidestSlip_Hz();
        var flux_VPerHz = NoLoadFlux_VPerHz();
        PhaseFlow At(double slip_Hz) => Held(electrical_Hz + slip_Hz, electrical_Hz, flux_VPerHz);
        double Torque_Nm(double slip_Hz) => At(slip_Hz).ShaftTorque_Nm;

        // The largest of three curves (voltage, current, flux) need not have one peak only, so that a coarse scan goes first; it is finer towards small slips.
        var best = 1;
        var bestTorque = double.NegativeInfinity;
        for (var step = 1; step <= ScanSteps; step++)
        {
            if (Torque_Nm(Scanned(step)) is var torque && torque > bestTorque)
            {
                (best, bestTorque) = (step, torque);
            }
        }

        double Scanned(int step) => widest_Hz * step * step / (ScanSteps * ScanSteps);
        var slip_Hz = Peak.Between(Scanned(best - 1), Scanned(Math.Min(ScanSteps, best + 1)), Torque_Nm);
        return TorqueAtLimit.From(At(slip_Hz), electrical_Hz + slip_Hz);
    }

    /// <summary>The largest torque against which the shaft can be braked at a speed, while the drive takes no more than a power from the motor.</summary>
    /// <remarks>
    /// From the point without slip on, slip is made more negative until the power fed back, the current or the generator's peak sets an end. A drive that
    /// stretches its deceleration comes from that side and stays there; the second solution, with the motor wasting the power at a large current, is not used.
    /// </remarks>
    /// <param name="speed">Speed of the shaft, above standstill.</param>
    /// <param name="absorbed">Power that the drive's own losses and its resistor take from the bus.</param>
    /// <returns>The operating point; its torque is negative.</returns>
    public TorqueAtLimit LargestBrakingTorque(ShaftSpeed speed, ElectricalPower absorbed)
    {
        var electrical_Hz = Electrical_Hz(speed.RadiansPerSecond);
        var widest_Hz = Math.Min(WidestSlip_Hz(), electrical_Hz * (1 - 1e-3));
        var flux_VPerHz = NoLoadFlux_VPerHz();
        PhaseFlow At(double slip_Hz) => Held(electrical_Hz - slip_Hz, electrical_Hz, flux_VPerHz);
        double Excess_W(double slip_Hz) => -At(slip_Hz).Input_W - absorbed.Watts;
        var (before, inside) = (0.0, 0.0);
        for (var step = 1; step <= ScanSteps; step++)
        {
            var outside = widest_Hz * step * step / (ScanSteps * ScanSteps);
            var turns = At(outside).ShaftTorque_Nm >= At(inside).ShaftTorque_Nm;
            var end_Hz = turns ? Peak.Between(before, outside, slip => -At(slip).ShaftTorque_Nm) : outside;
            if (Excess_W(end_Hz) > 0)
            {
                end_Hz = Root.Between(before, end_Hz, Excess_W);
                return TorqueAtLimit.From(At(end_Hz), electrical_Hz - end_Hz);
            }

            if (turns)
            {
                return TorqueAtLimit.From(At(end_Hz), electrical_Hz - end_Hz);
            }

            (before, inside) = (inside, outside);
        }

        return TorqueAtLimit.From(At(inside), electrical_Hz - inside);
    }

    /// <summary>The steady state in which the shaft has a speed and gives a torque; null where the motor cannot.</summary>
    internal PhaseFlow? AtSpeedAndTorque(double speed_radPerS, double torque_Nm)
    {
        var electrical_Hz = Electrical_Hz(speed_radPerS);
        var widest_Hz = torque_Nm < 0 ? -Math.Min(WidestSlip_Hz(), electrical_Hz * (1 - 1e-3)) : WidestSlip_Hz();
        PhaseFlow At(double slip_Hz) => Free(electrical_Hz + slip_Hz, electrical_Hz);
        var peak_Hz = torque_Nm < 0
            ? Peak.Between(widest_Hz, 0, slip => -At(slip).ShaftTorque_Nm)
            : Peak.Between(0, widest_Hz, slip => At(slip).ShaftTorque_Nm);
        if (Math.Abs(At(peak_Hz).ShaftTorque_Nm) < Math.Abs(torque_Nm))
        {
            return null;
        }

        // Down to the no-load slip on either side: a small braking torque is had from friction with a positive slip.
        var other_Hz = torque_Nm < 0 ? Math.Min(WidestSlip_Hz(), electrical_Hz) : 0;
        return At(Root.Between(Math.Min(peak_Hz, other_Hz), Math.Max(peak_Hz, other_Hz), slip => At(slip).ShaftTorque_Nm - torque_Nm));
    }

    /// <summary>How far the shaft lags the field at the rated point; 2 % of synchronous speed where the circuit does not say.</summary>
    internal double RatedSlipSpeed_radPerS
    {
        get
        {
            var synchronous_radPerS = Circuit.RatedFrequency.SynchronousSpeed(Circuit.Poles).RadiansPerSecond;
            return synchronous_radPerS - (Circuit.RatedSpeed?.RadiansPerSecond ?? (0.98 * synchronous_radPerS));
        }
    }

    internal double Electrical_Hz(double speed_radPerS) => speed_radPerS * Circuit.Poles.Pairs / (2 * Math.PI);

    /// <summary>Beyond this slip frequency the torque falls, whatever the frequency.</summary>
    private double WidestSlip_Hz()
    {
        if (Circuit.SecondCage is not null)
        {
            return Circuit.RatedFrequency.Hertz * Math.Min(1.5, 2 * Breakdown.Of(Circuit, Circuit.RatedVoltage, Circuit.RatedFrequency).Slip.Ratio);
        }

        var leakage = Circuit.StatorLeakage.Ohms + Circuit.RotorLeakage.Ohms;
        var ofRated = (Circuit.StatorResistance.Ohms + Circuit.RotorResistance.Ohms) / leakage;
        return 1.5 * Circuit.RatedFrequency.Hertz * Math.Min(1, ofRated);
    }

    /// <summary>With the voltage held down to the current limit and the no-load flux.</summary>
    private PhaseFlow Held(double frequency_Hz, double electrical_Hz, double flux_VPerHz)
    {
        var phases = new PhaseCircuit(Circuit, frequency_Hz);
        var slip = (frequency_Hz - electrical_Hz) / frequency_Hz;
        var phase_V = Characteristic.At(frequency_Hz) / Math.Sqrt(3);
        var free = phases.At(phase_V, slip);
        var held = Math.Min(1, Math.Min(CurrentLimit.Amperes / free.Current_A, flux_VPerHz * frequency_Hz / free.AirGapEmf_V));
        return held < 1 ? phases.At(phase_V * held, slip) : free;
    }

    private PhaseFlow Free(double frequency_Hz, double electrical_Hz) =>
        new PhaseCircuit(Circuit, frequency_Hz).At(Characteristic.At(frequency_Hz) / Math.Sqrt(3), (frequency_Hz - electrical_Hz) / frequency_Hz);

    private double NoLoadFlux_VPerHz() =>
        new PhaseCircuit(Circuit, Circuit.RatedFrequency.Hertz).At(Circuit.RatedVoltage.Phase.Volts, 0).AirGapEmf_V / Circuit.RatedFrequency.Hertz;
}

/// <summary>What a motor gives at a speed when its drive goes to a limit.</summary>
/// <param name="Torque">Torque at the shaft; negative brakes.</param>
/// <param name="Frequency">Output frequency.</param>
/// <param name="Voltage">Output voltage.</param>
/// <param name="Current">Output current.</param>
/// <param name="Input">Power from the drive into the motor; negative feeds back.</param>
public sealed record TorqueAtLimit(Torque Torque, ElectricalFrequency Frequency, LineVoltage Voltage, LineCurrent Current, ElectricalPower Input)
{
    internal static TorqueAtLimit From(in PhaseFlow flow, double frequency_Hz) => new(
        Torque.FromNewtonMetres(flow.ShaftTorque_Nm),
        ElectricalFrequency.FromHertz(frequency_Hz),
        PhaseVoltage.FromVolts(flow.Phase_V).Line,
        LineCurrent.FromAmperes(flow.Current_A),
        ElectricalPower.FromWatts(flow.Input_W));
}
