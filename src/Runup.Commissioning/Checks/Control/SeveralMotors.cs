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
            Explanation = $"{context.MotorCount} motors hang on the drive, which sees only the sum of their {Said.Number(context.MotorCount * context.Job.Motor.Plate.Current.Value.Amperes)} A and cannot protect the single one.",
            Remedy = "An overload relay for each, its contact in the run circuit; V/f control without auto-tune; all started together.",
            Value = context.MotorCount,
            Limit = 1,
            Unit = "1",
        };
}
