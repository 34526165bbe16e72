using Runup.Commissioning.Checks;
using Runup.Engineering.Drives;
using Runup.Engineering.Motors.Ensemble;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Commissioning.Plan;

/// <summary>The mechanical brake, where a relay of the drive opens it: the motor carries the load first, then the brake lets go.</summary>
/// <remarks>
/// It opens at the output frequency at which the motor, held by the brake, has the torque to break its load away at rated flux; where none is known, at that of its rated slip. Current
/// below four fifths of what flows there then says that no torque has built up, and the brake stays closed; of the motors that the plate may stand for the one counts with the least current of
/// 95 of 100, since a brake that a sound motor does not open holds the set for good. It closes at four fifths of the frequency. Delay 0.2 s, common practice, no source.
/// </remarks>
internal static class MechanicalBrake
{
    private const double OfPrediction = 0.8;
    private const double Delay_s = 0.2;

    private static readonly Setting[] Relays = [Setting.Relay1, Setting.Relay2, Setting.Relay3];

    internal static void Plan(PlanBuilder plan, JobContext context)
    {
        if (context.Job.Control.BrakeRelay?.Value is not (>= 1 and <= 3 and var relay) || context.Job.Motor.Brake?.Value != true)
        {
            return;
        }

        plan.Choice(Relays[relay - 1], "brake-open", Rank.Must, "the motor's brake is wired to it", PlanBuilder.JobSource);
        plan.Number(Setting.BrakeOpenDelay, Delay_s, Rank.Must, "both levels must have stood so long before the brake lets go", PlanBuilder.Practice);
        if (context.Printed is not { Boost: { } boost, Nameplate: { } plate, Circuit: { } circuit })
        {
            return;
        }

        var slip_Hz = plate.RatedSlip.Ratio * plate.Frequency.Hertz;
        var (open_Hz, current_A, why) = boost is { Frequency: { } letsGo, Current: { } flows }
            ? (letsGo.Hertz, flows.Amperes, "the motor has the torque to break its load away")
            : (slip_Hz, Engineering.Motors.CircuitSolution.Synchronous(circuit, plate.Voltage, plate.Frequency).Current.Amperes, "of rated slip: the motor has about its rated torque");
        var open = Math.Ceiling(open_Hz * 10) / 10;
        plan.Number(Setting.BrakeOpenFrequency, open, Rank.Must, $"held by the brake, {why} at {Said.Number(open_Hz)} Hz with rated flux", "motor's circuit at standstill", open_Hz, null);
        var least_A = Math.Min(current_A, LeastAtRest(context, plate.Voltage, boost.Boost, open) ?? current_A);
        var best = least_A < current_A ? $" in the most sparing of the motors that the plate may stand for ({Said.Number(current_A * context.MotorCount)} A in the one that fits it best)" : "";
        plan.Number(
            Setting.BrakeOpenCurrent,
            OfPrediction * least_A * context.MotorCount,
            Rank.Must,
            $"four fifths of the {Said.Number(least_A * context.MotorCount)} A that flow there{best}: with less, no torque has built up and the brake stays closed",
            "motor's circuit at standstill",
            null,
            least_A * context.MotorCount);
        plan.Number(Setting.BrakeCloseFrequency, OfPrediction * open, Rank.Must, $"four fifths of the opening frequency, while the motor still carries the load", PlanBuilder.Practice, null, open);
    }

    private static double? LeastAtRest(JobContext context, LineVoltage rated, Fraction boost, double open_Hz) => context.Printed.Known?.Now is { } motors
        ? MotorForecast.CurrentAtRest(motors, context.Output.Characteristic(VoltageShape.Linear, boost, rated), ElectricalFrequency.FromHertz(open_Hz)).P05.Amperes
        : null;
}
