namespace Runup.Commissioning.Checks.Control;

/// <summary>Whether the sources of run command and reference exist.</summary>
internal sealed class RunSource() : Check("control.run-source", Stage.Coupled)
{
    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        var (control, bus) = (context.Job.Control, context.Job.Bus);
        if (control.RunFrom?.Value is not { } run)
        {
            return Unknown("where the run command comes from (control.run-from)", "who starts the machine, and what must be set last");
        }

        if (control.ReferenceFrom?.Value is not { } reference)
        {
            return Unknown("where the frequency comes from (control.reference-from)", "who sets the speed");
        }

        var noBus = bus.Kind?.Value is null or "none";
        if (noBus && (run == "bus" || reference == "bus"))
        {
            return new CheckResult.Violated(Id, bus.Kind is null ? Severity.Caution : Severity.Blocker, Blocks, new Basis.JobData("control against bus.kind"))
            {
                Title = "Run from a bus that is not there",
                Explanation = $"The {(run == "bus" ? "run command" : "frequency")} is to come from the bus, but the job names {(bus.Kind is null ? "no bus" : "bus: none")}.",
                Remedy = "Name the bus (bus.kind, bus.address), or another source.",
            };
        }

        return Fine($"run command from {run}, frequency from {reference}");
    }
}
