using Runup.Engineering.Braking;
using Runup.Engineering.Mechanics;

namespace Runup.Commissioning.Checks;

/// <summary>The figures of the driven machine that a check states; null where not computed for want of data.</summary>
/// <param name="TotalInertiaKgm2">At the motor's shaft.</param>
/// <param name="RmsTorqueNm">Over the duty cycle, at the motor's shaft.</param>
/// <param name="ShortestAccelerationS">Along the current limit.</param>
/// <param name="ShortestDecelerationS">Without a resistor if none is named.</param>
/// <param name="BrakingEnergyJ">At the DC bus, for the stop asked for.</param>
/// <param name="BrakingPeakW">As before.</param>
/// <param name="BrakingMeanW">As before.</param>
/// <param name="BrakingResistorOhmMin">The drive's lowest.</param>
/// <param name="BrakingResistorOhmMax">For the peak.</param>
public sealed record MachineFigures(
    double? TotalInertiaKgm2,
    double? RmsTorqueNm,
    double? ShortestAccelerationS,
    double? ShortestDecelerationS,
    double? BrakingEnergyJ,
    double? BrakingPeakW,
    double? BrakingMeanW,
    double? BrakingResistorOhmMin,
    double? BrakingResistorOhmMax)
{
    /// <summary>The figures of a job.</summary>
    public static MachineFigures Of(JobContext context)
    {
        var motion = context.Meant.Motion;
        var braking = motion?.Braking;
        var resistor = braking is null ? null : BrakingResistor.For(context.Rating, braking);
        return new(
            context.Meant.Machine is { InertiaIsKnown: true, Machine: { } machine } ? machine.TotalInertia.KilogramSquareMetres : null,
            context.Job.Operation.Cycle.Count > 0 ? DutyAtMotor.RmsTorque(context, coolingAtRest: 1)?.NewtonMetres : null,
            (motion?.Acceleration as Acceleration.Reached)?.Shortest.Seconds,
            (motion?.DecelerationAsEquipped as Deceleration.Stops)?.Shortest.Seconds,
            braking?.Energy.Joules,
            braking?.Peak.Watts,
            braking?.Mean.Watts,
            (resistor?.Lowest ?? context.Rating.LowestBrakingResistance)?.Ohms,
            resistor?.Highest?.Ohms);
    }
}
