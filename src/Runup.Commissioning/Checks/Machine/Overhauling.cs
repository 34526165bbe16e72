using Runup.Commissioning.Survey;

namespace Runup.Commissioning.Checks.Machine;

/// <summary>A load that drives its motor.</summary>
internal sealed class Overhauling() : Check("machine.overhauling", Stage.Coupled)
{
    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        var machine = context.Job.Machine;
        var overhauls = machine.Load.Value == LoadKind.Hoisting
            || machine.Curve?.Any(point => point.Torque.NewtonMetres < 0) == true
            || context.Job.Operation.Cycle.Any(part => part.Torque.Value.NewtonMetres * part.Speed.Value.RadiansPerSecond < 0);
        if (!overhauls)
        {
            return Fine("the load never drives the motor");
        }

        var fitted = context.Job.Drive.BrakingResistor is not null;
        var power = Regenerated_W(context);
        return new CheckResult.Violated(Id, fitted ? Severity.Caution : Severity.Blocker, Blocks, new Basis.Physics("P = T_load·ω·η_back, continuously while the load drives"))
        {
            Title = fitted ? "The load drives the motor" : "The load drives the motor and nothing takes its power",
            Explanation = $"While the load drives, up to {(power is { } watts ? Said.Kilowatts(watts) : "its whole power")} comes back to the DC bus for as long as it lasts{(fitted ? string.Empty : ", and there is no braking resistor")}.",
            Remedy = fitted
                ? "Size the resistor by the longest stretch that the load drives, not by a stop; no run command is sent over the bus for such a load."
                : "A braking resistor sized for the longest stretch that the load drives, or a drive that feeds back.",
            Value = power,
            Limit = fitted ? null : 0,
            Unit = "W",
        };
    }

    private static double? Regenerated_W(JobContext context)
    {
        if (context.Meant.Motion is not { } motion || context.Job.Machine.Load.Value != LoadKind.Hoisting)
        {
            return null;
        }

        var omega = motion.MaximumFrequency.SynchronousSpeed(motion.Motor.Circuit.Poles).RadiansPerSecond;
        var atMotor = motion.Machine.Load.At(Quantities.ShaftSpeed.FromRadiansPerSecond(1)).NewtonMetres * motion.Machine.GearEfficiencyBack.Ratio / motion.Machine.GearRatio;
        return atMotor * omega;
    }
}
