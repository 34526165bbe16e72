using Runup.Commissioning.Survey;
using Runup.Quantities;

namespace Runup.Commissioning.Checks.Machine;

/// <summary>Torque to set the machine in motion against what the motor has at standstill at the drive's current limit.</summary>
internal sealed class Breakaway() : Check("machine.breakaway", Stage.Coupled)
{
    private const double Margin = 0.02;

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        if (JobCheck.MissingForMotion(context) is { } missing)
        {
            return Unknown(missing, "whether it starts at all");
        }

        var stated = context.Job.Machine.BreakawayTorque is not null || context.Job.Machine.Load.Value == LoadKind.Hoisting;
        if (context.Meant.BreakawayAtMotor is not { } needed)
        {
            return stated
                ? Fine("the machine breaks away by itself")
                : Unknown("the torque to break it away (machine.breakaway-torque): a torque wrench at the shaft tells", "whether it starts at all, and how much torque boost it needs");
        }

        var available = Available(context);
        if (needed.NewtonMetres > available.NewtonMetres * (1 + Margin))
        {
            return Finding(context, needed.NewtonMetres, available.NewtonMetres);
        }

        return stated
            ? Fine($"{Said.Torque(needed.NewtonMetres)} at the motor's shaft of the {Said.Torque(available.NewtonMetres)} that it has at {Said.Number(context.Meant.CurrentLimit.Amperes)} A")
            : Unknown("the torque to break it away (machine.breakaway-torque); it starts if it needs no more than its running torque", "whether it starts, and how much torque boost it needs");
    }

    /// <summary>With the boost that the breakaway needs; without enough of it at any boost, what the motor has at rated flux.</summary>
    private static Torque Available(JobContext context)
    {
        var atLimit = context.Meant.OnDrive!.LargestTorque(default).Torque;
        return context.Meant.Boost is { IsEnough: false } ? Torque.FromNewtonMetres(Math.Min(atLimit.NewtonMetres, AtRatedFlux(context))) : atLimit;
    }

    private static double AtRatedFlux(JobContext context) =>
        Engineering.Drives.TorqueBoost.For(context.Meant.Circuit!, context.Meant.OnDrive!.Characteristic, context.Meant.BreakawayAtMotor!.Value) is Engineering.Drives.TorqueBoost.NotAttainable not
            ? not.Largest.NewtonMetres
            : double.PositiveInfinity;

    private CheckResult.Violated Finding(JobContext context, double needed, double available) =>
        new(Id, Severity.Blocker, Blocks, new Basis.Physics("torque at standstill from the motor's circuit at the drive's current limit"))
        {
            Title = "It will not break away",
            Explanation = $"The machine needs {Said.Torque(needed)} at the motor's shaft to start, and motor and drive have {Said.Torque(available)} at the limit of {Said.Number(context.Meant.CurrentLimit.Amperes)} A: it would stand in current limit.",
            Remedy = "A drive with more overload current (heavy rating or a larger size), a larger motor or gear ratio, or a start without load.",
            Value = needed,
            Limit = available,
            Unit = "N·m",
        };
}
