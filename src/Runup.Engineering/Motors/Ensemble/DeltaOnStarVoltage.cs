using Runup.Engineering.Numerics;
using Runup.Quantities;

namespace Runup.Engineering.Motors.Ensemble;

/// <summary>A motor joined in delta for the lower of its voltages, and led on rated flux to the higher one: 230 V at 50 Hz to 400 V at 87 Hz.</summary>
/// <remarks>
/// <para>U and f both √3 times rated: U/f, flux and torque stay, the power at the shaft is √3 times as much. Losses of iron and fan grow with frequency, so that a little less torque is had at rated current.</para>
/// <para>Validity: up to √3 times rated frequency. Assumptions: as <see cref="CircuitSolution"/>; core loss as a fixed resistance, friction by its law; nothing is said of bearings, balance, fan and insulation.</para>
/// </remarks>
/// <param name="RatedCurrent">Of the delta connection.</param>
/// <param name="Voltage">√3 times that of the delta connection: the star column's.</param>
/// <param name="Frequency">√3 times rated.</param>
/// <param name="Torque">At the delta's rated current.</param>
/// <param name="Power">At the shaft, with that torque.</param>
/// <param name="Speed">With that torque.</param>
/// <param name="Current">At rated torque.</param>
/// <param name="Breakdown">Breakdown torque over rated torque.</param>
[Source("common-practice", "delta connection on the star's voltage at constant flux")]
public sealed record DeltaOnStarVoltage(
    LineCurrent RatedCurrent, LineVoltage Voltage, ElectricalFrequency Frequency, Band<Torque> Torque, Band<ShaftPower> Power, Band<ShaftSpeed> Speed, Band<LineCurrent> Current, Band<Ratio> Breakdown)
{
    private const double BeyondPeak = 0.999;

    /// <summary>What the ensemble does so.</summary>
    /// <param name="ensemble">The motors that the plate may stand for.</param>
    /// <param name="inUse">The connection that the plate's column is for; a star's currents are √3 times as large once it is joined in delta.</param>
    public static DeltaOnStarVoltage Of(MotorEnsemble ensemble, WindingConnection inUse)
    {
        var toDelta = inUse == WindingConnection.Star ? Math.Sqrt(3) : 1;
        var (phase_V, hertz, rated_A) = (Math.Sqrt(3) * ensemble.Plate.Voltage.Phase.Volts, Math.Sqrt(3) * ensemble.Plate.Frequency.Hertz, ensemble.Plate.Current.Amperes);
        PhaseFlow AtRatedCurrent(in MotorMember member)
        {
            var circuit = new PhaseCircuit(member.Values, hertz);
            var peak = Motors.Breakdown.Largest(circuit, phase_V, 1).Slip * BeyondPeak;
            return circuit.At(phase_V, Root.Between(0, peak, slip => circuit.At(phase_V, slip).Current_A - rated_A));
        }

        return new(
            LineCurrent.FromAmperes(toDelta * rated_A),
            LineVoltage.FromVolts(Math.Sqrt(3) * ensemble.Plate.Voltage.Volts / toDelta),
            ElectricalFrequency.FromHertz(hertz),
            MotorForecast.Over(ensemble, (in MotorMember member) => AtRatedCurrent(member).ShaftTorque_Nm).As(Quantities.Torque.FromNewtonMetres),
            MotorForecast.Over(ensemble, (in MotorMember member) => AtRatedCurrent(member).Shaft_W).As(ShaftPower.FromWatts),
            MotorForecast.Over(ensemble, (in MotorMember member) => AtRatedCurrent(member).Speed_radPerS).As(ShaftSpeed.FromRadiansPerSecond),
            MotorForecast.Over(ensemble, (in MotorMember member) => toDelta * Running.At(new PhaseCircuit(member.Values, hertz), phase_V, member.RatedTorque_Nm).Current_A).As(LineCurrent.FromAmperes),
            MotorForecast.Over(ensemble, (in MotorMember member) => Motors.Breakdown.Largest(new PhaseCircuit(member.Values, hertz), phase_V, 1).Torque_Nm / member.RatedTorque_Nm).As(Ratio.FromValue));
    }
}
