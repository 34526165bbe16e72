using Runup.Settings;

namespace Runup.Commissioning.Checks.Control;

/// <summary>Whether the sources of run command and reference exist.</summary>
internal sealed class RunSource() : Check("control.run-source", Stage.Coupled)
{
    private const double Near = 0.001;

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

        return Fixed(context, reference) ?? Started(context, run) ?? Fine($"run command from {run}, frequency from {reference}");
    }

    private CheckResult? Fixed(JobContext context, string reference)
    {
        if (reference is not "fixed")
        {
            return null;
        }

        var operation = context.Job.Operation;
        if (context.Job.Control.FixedFrequencies.FirstOrDefault(f => f.Setting == Setting.FixedFrequency1) is not { Frequency.Value.Hertz: var hertz })
        {
            return Unknown("at which fixed frequency it runs (control.fixed-frequency-1)", "what the machine does once it is started: from the factory the drive has a frequency of its own there");
        }

        var (low, high) = (operation.MinimumFrequency?.Value.Hertz ?? 0, operation.MaximumFrequency.Value.Hertz);
        return hertz >= low * (1 - Near) && hertz <= high * (1 + Near) && hertz > 0 ? null : new CheckResult.Violated(Id, Severity.Caution, Blocks, new Basis.JobData("control.fixed-frequency-1 against operation"))
        {
            Title = "Fixed frequency out of the range asked for",
            Explanation = $"It is to run at {Said.Number(hertz)} Hz, and {Said.Number(low)} to {Said.Number(high)} Hz are asked for.",
            Remedy = "Correct control.fixed-frequency-1, or the lowest and highest frequency under operation.",
            Value = hertz,
            Limit = hertz > high ? high : low,
            Unit = "Hz",
        };
    }

    private CheckResult.Violated? Started(JobContext context, string run) =>
        run is not "terminals" || context.Job.Control.Terminals?.Functions is not { } functions || functions.Any(f => f.Function.Value is "run-forward" or "run-reverse" or "jog")
            ? null
            : new(Id, Severity.Caution, Blocks, new Basis.JobData("control.run-from against control.terminals"))
            {
                Title = "No terminal starts it",
                Explanation = "The run command is to come from the terminals, and none of those that are stated is for running.",
                Remedy = "State the digital input that the run contact is wired to: control.terminals.digital-input-1: run-forward.",
            };
}
