namespace Runup.Commissioning.Checks.Control;

/// <summary>What the drive does when the bus that runs it falls silent.</summary>
internal sealed class BusLoss() : Check("control.bus-loss", Stage.Coupled)
{
    private const double LongSilence_s = 5;

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        var (control, bus) = (context.Job.Control, context.Job.Bus);
        var runs = string.Equals(control.RunFrom?.Value, "bus", StringComparison.Ordinal);
        var refers = string.Equals(control.ReferenceFrom?.Value, "bus", StringComparison.Ordinal);
        if (!runs && !refers)
        {
            return Fine("neither run command nor reference comes from a bus");
        }

        var seconds = bus.TimeOut?.Value.Seconds;
        var action = bus.OnLoss?.Value;
        var off = seconds == 0 || string.Equals(action, "none", StringComparison.Ordinal);
        if (seconds is null || off)
        {
            return NoTimeOut(runs, statedOff: off);
        }

        if (runs && string.Equals(action, "hold", StringComparison.Ordinal))
        {
            return Holds();
        }

        return seconds > LongSilence_s
            ? new CheckResult.Violated(Id, Severity.Note, Blocks, new Basis.CommonPractice("a silence of a few seconds at most"))
            {
                Title = "Long bus time-out",
                Explanation = $"The drive runs on for {Said.Number(seconds.Value)} s after the bus has fallen silent.",
                Remedy = "As short as the control system's own cycle allows, a second or two.",
                Value = seconds,
                Limit = LongSilence_s,
                Unit = "s",
            }
            : Fine($"after {Said.Number(seconds.Value)} s of silence: {action ?? "ramp, as planned"}");
    }

    private CheckResult.Violated NoTimeOut(bool runs, bool statedOff) =>
        new(Id, runs && statedOff ? Severity.Blocker : Severity.Caution, Blocks, new Basis.SafetyRule("a drive that is run over a bus stops by itself when the bus falls silent"))
        {
            Title = "No time-out on the bus",
            Explanation = runs
                ? "The bus runs the drive, and without a time-out the last command is held: the shaft turns on when the control system dies."
                : "The bus gives the reference, and without a time-out the last one is held when the control system dies.",
            Remedy = "Set bus.time-out and bus.on-loss (ramp or coast), and prove it by pulling the plug while running.",
            Value = statedOff ? 0 : null,
            Limit = null,
            Unit = statedOff ? "s" : null,
        };

    private CheckResult.Violated Holds() =>
        new(Id, Severity.Caution, Blocks, new Basis.SafetyRule("a drive that is run over a bus stops by itself when the bus falls silent"))
        {
            Title = "Runs on when the bus falls silent",
            Explanation = "On a silent bus the drive holds its speed: nothing stops it but power or its terminals.",
            Remedy = "Ramp or coast, unless the process forbids it and a wired stop is there.",
        };
}
