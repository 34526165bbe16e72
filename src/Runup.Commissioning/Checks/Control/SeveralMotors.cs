namespace Runup.Commissioning.Checks.Control;

/// <summary>Several motors on one drive.</summary>
internal sealed class SeveralMotors() : Check("control.several-motors", Stage.Coupled)
{
    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context) => context.MotorCount == 1
        ? Fine("one motor")
        : new CheckResult.Violated(Id, Severity.Caution, Blocks, new Basis.Physics("the drive sees only the sum of the currents"))
        {
            Title = "Several motors on one drive",
            Explanation = $"{context.MotorCount} motors, each with its machine, hang on the drive, which sees only the sum of their {Said.Number(context.Meant.RatedCurrent.Amperes)} A: it cannot tell one that is overloaded, blocked or cut off from the rest.{OutOfStep(context)}",
            Remedy = $"An overload relay for each, set to {Said.Number(context.Meant.RatedCurrent.Amperes / context.MotorCount)} A, its contact in the run circuit; V/f control without auto-tune; all started together, none switched in while the drive runs.{Cables(context)}",
            Value = context.MotorCount,
            Limit = 1,
            Unit = "1",
        };

    private static string OutOfStep(JobContext context) => context.Plate.IsSynchronous
        ? " Motors without slip need vector control, which one drive has for one motor only: on V/f they fall out of step."
        : string.Empty;

    // What charges the cables is the drive's; the lengths add up.
    private static string Cables(JobContext context) => context.Job.Cable.Length?.Value.Metres is { } metres
        ? $" The maker's longest cable holds for all of them together: {context.MotorCount} of {Said.Number(metres)} m are {Said.Number(context.MotorCount * metres)} m."
        : string.Empty;
}
