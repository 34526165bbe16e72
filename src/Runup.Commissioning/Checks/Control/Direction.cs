using Runup.Commissioning.Survey;

namespace Runup.Commissioning.Checks.Control;

/// <summary>Permitted directions against the machine and its cycle.</summary>
internal sealed class Direction() : Check("control.direction", Stage.Coupled)
{
    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        var operation = context.Job.Operation;
        var both = string.Equals(operation.Directions?.Value, "both", StringComparison.Ordinal);
        if (!both && operation.Cycle.Any(part => part.Speed.Value.RadiansPerSecond < 0))
        {
            return new CheckResult.Violated(Id, Severity.Caution, Blocks, new Basis.JobData("operation.directions against operation.cycle"))
            {
                Title = "The cycle runs backwards, which is not permitted",
                Explanation = "A part of the cycle has a negative speed, and only forward is permitted: the drive would refuse it.",
                Remedy = "Permit both directions (operation.directions: both), or correct the cycle.",
            };
        }

        return both && context.Job.Machine.Load.Value == LoadKind.Quadratic
            ? new CheckResult.Violated(Id, Severity.Note, Blocks, new Basis.CommonPractice("pumps and fans turn one way"))
            {
                Title = "Both directions on a pump or fan",
                Explanation = "The load is that of a pump or fan, and both directions are permitted; backwards it moves little, and some impellers come off.",
                Remedy = "Permit forward only unless the process needs the other way.",
            }
            : Fine(both ? "both directions" : "forward only");
    }
}
