using Runup.Engineering.Loads;
using Runup.Quantities;

namespace Runup.Commissioning.Checks;

/// <summary>The job's duty cycle as the motor's shaft feels it.</summary>
internal static class DutyAtMotor
{
    /// <summary>What part of a rest counts as cooling with the fan on the shaft: common practice, no source.</summary>
    internal const double FanOnShaftAtRest = 1.0 / 3;

    private const double SmallestRatio = 1e-4;
    private const double LargestOfAnything = 1e9;

    /// <summary>The root mean square of the torque at the motor's shaft; null where the cycle takes no time.</summary>
    internal static Torque? RmsTorque(JobContext context, double coolingAtRest)
    {
        var machine = context.Job.Machine;
        if (context.Job.Operation.Cycle.Any(part => !IsBuilt(part)) || machine.GearRatio?.Value.Value < SmallestRatio)
        {
            return null;
        }

        var ratio = machine.GearRatio?.Value.Value is > 0 and var stated ? stated : 1;
        var forward = context.Meant.Machine.Machine?.GearEfficiency.Ratio ?? 1;
        var back = context.Meant.Machine.Machine?.GearEfficiencyBack.Ratio ?? 1;
        var segments = context.Job.Operation.Cycle.Select(part => new DutySegment(part.Time.Value, AtMotor(part.Torque.Value.NewtonMetres, part.Speed.Value.RadiansPerSecond))
        {
            IsRest = part.Speed.Value.RadiansPerSecond == 0 && part.Torque.Value.NewtonMetres == 0,
        }).ToList();
        return segments.Sum(segment => segment.Time.Seconds) > 0 && segments.Any(segment => segment.Time.Seconds > 0 && !segment.IsRest)
            ? DutyCycle.RmsTorque(segments, Fraction.FromRatio(coolingAtRest))
            : null;

        Torque AtMotor(double torque, double speed) =>
            Torque.FromNewtonMetres((torque * speed >= 0 ? torque / forward : torque * back) / ratio);
    }

    /// <summary>The parts of the cycle in which the load drives the motor, with the power that the motor's shaft receives; without the motor's losses.</summary>
    internal static IEnumerable<(double Time_s, double Power_W)> DrivenParts(JobContext context) =>
        from part in context.Job.Operation.Cycle
        where IsBuilt(part)
        let power_W = -part.Torque.Value.NewtonMetres * part.Speed.Value.RadiansPerSecond
        where power_W > 0
        select (part.Time.Value.Seconds, power_W * (context.Meant.Machine.Machine?.GearEfficiencyBack.Ratio ?? 1));

    /// <summary>Mean over the cycle of the power that a driving load gives to the motor's shaft; null where the cycle names no such part.</summary>
    internal static double? MeanDriven_W(JobContext context)
    {
        var (driven, whole_s) = (DrivenParts(context).ToList(), context.Job.Operation.Cycle.Sum(part => part.Time.Value.Seconds));
        return driven.Count > 0 && whole_s > 0 ? driven.Sum(part => part.Time_s * part.Power_W) / whole_s : null;
    }

    private static bool IsBuilt(Survey.CyclePart part) =>
        part.Time.Value.Seconds < LargestOfAnything && Math.Abs(part.Torque.Value.NewtonMetres) < LargestOfAnything && Math.Abs(part.Speed.Value.RadiansPerSecond) < LargestOfAnything;
}
