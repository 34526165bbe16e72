namespace Runup.Commissioning.Checks.Control;

/// <summary>Starting by itself when power returns.</summary>
internal sealed class Restart() : Check("control.restart", Stage.Coupled)
{
    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        if (context.Job.Operation.RestartAfterPowerLoss?.Value != true)
        {
            return Fine("it stays stopped when power returns");
        }

        var maintained = string.Equals(context.Job.Control.RunContact?.Value, "maintained", StringComparison.Ordinal);
        return new CheckResult.Violated(Id, Severity.Caution, Blocks, new Basis.Standard("ISO 14118, unexpected start-up", Recalled: true))
        {
            Title = "It starts by itself when power returns",
            Explanation = $"Restart after a loss of power is asked for{(maintained ? " and the run contact is maintained" : string.Empty)}: the machine starts with nobody at it.",
            Remedy = "Leave it off unless the risk assessment of the machine allows it; else guard, warning label, delay, and a test with a power dip.",
        };
    }
}
