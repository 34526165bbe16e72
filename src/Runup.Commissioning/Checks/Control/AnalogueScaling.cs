namespace Runup.Commissioning.Checks.Control;

/// <summary>Scaling of the analogue input that gives the frequency.</summary>
internal sealed class AnalogueScaling() : Check("control.analogue-scaling", Stage.Coupled)
{
    private const double Near = 0.01;

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        var control = context.Job.Control;
        var source = control.ReferenceFrom?.Value;
        if (source is not ("analogue-1" or "analogue-2"))
        {
            return Fine("no analogue input gives the frequency");
        }

        var input = source == "analogue-1" ? control.Analogue1 : control.Analogue2;
        if (input is not { Signal: { } signal, Low: { } low, High: { } high })
        {
            return Unknown($"signal, low and high of control.{source}", "whether the whole range is reached, and what a broken wire does");
        }

        return Scale(context, source, low.Value.Hertz, high.Value.Hertz) ?? Loss(source, signal.Value, input.OnLoss?.Value)
            ?? Fine($"{signal.Value} is {Said.Number(low.Value.Hertz)} Hz to {Said.Number(high.Value.Hertz)} Hz");
    }

    private CheckResult.Violated? Scale(JobContext context, string source, double low, double high)
    {
        var maximum = context.Job.Operation.MaximumFrequency.Value.Hertz;
        var title = high <= low ? "Analogue input scaled to nothing"
            : high < maximum * (1 - Near) ? "Analogue input does not reach the highest frequency"
            : high > maximum * (1 + Near) ? "Analogue input reaches beyond the highest frequency"
            : null;
        return title is null ? null : new(Id, high <= low ? Severity.Blocker : Severity.Caution, Blocks, new Basis.JobData($"control.{source} against operation.maximum-frequency"))
        {
            Title = title,
            Explanation = $"The full signal stands for {Said.Number(high)} Hz, the empty one for {Said.Number(low)} Hz, and the highest frequency is {Said.Number(maximum)} Hz.",
            Remedy = "Scale in one place only: the full signal to the highest frequency, here or in the control system.",
            Value = high,
            Limit = high <= low ? low : maximum,
            Unit = "Hz",
        };
    }

    private CheckResult.Violated? Loss(string source, string signal, string? onLoss) => (signal.StartsWith('4'), onLoss) switch
    {
        (true, null) => new(Id, Severity.Note, Blocks, Watched)
        {
            Title = "Nothing said of a broken wire",
            Explanation = "A 4 to 20 mA signal can be watched, and the job does not say what a lost one does.",
            Remedy = $"Set control.{source}.on-loss (stop, hold or fixed).",
        },
        (true, "hold") => new(Id, Severity.Caution, Blocks, Watched)
        {
            Title = "Keeps its speed when the signal is lost",
            Explanation = "With a broken wire the machine runs on at the last speed, and nothing but its run command stops it.",
            Remedy = "Stop, unless the process forbids it; then a relay or the bus must tell of the loss. Pull the wire at the first run and see what it does.",
        },
        (true, "off") => new(Id, Severity.Caution, Blocks, Watched)
        {
            Title = "A lost signal is not watched",
            Explanation = "With a broken wire 4 to 20 mA reads as less than nothing: the drive goes to its lowest frequency and reports no fault.",
            Remedy = $"Set control.{source}.on-loss (stop, hold or fixed), unless somebody else watches the signal.",
        },
        _ => null,
    };

    private static Basis.CommonPractice Watched => new("a 4 to 20 mA signal is watched for a broken wire");
}
