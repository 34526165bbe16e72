using Runup.Commissioning.Survey;
using Runup.Engineering.Standards;

namespace Runup.Commissioning.Checks.Motor;

/// <summary>Whether the machine asks no more of the motor than the duty that its plate's output is for.</summary>
internal sealed class Duty() : Check("motor.duty", Stage.Coupled)
{
    private const double Rounding = 1.02;
    private const double UsualCycleSeconds = 600;

    // Stops in an hour (common practice, no source).
    private const double OftenStopped = 4;

    private static readonly Basis Rule = new Basis.Standard("IEC 60034-1, duty types", Recalled: true);

    /// <inheritdoc/>
    public override CheckResult Judge(JobContext context)
    {
        if (context.Job.Motor.Plate.Duty?.Value is not { } mark)
        {
            return Fine("no duty is marked: S1, continuous");
        }

        var cycle = context.Job.Operation.Cycle;
        return DutyType.Of(mark) switch
        {
            DutyType.Continuous => Fine($"{mark}: the output may be given without end"),
            DutyType.ShortTime limited when cycle.Count == 0 => WithoutCycle(context, mark, limited.Time is { } time ? $"for {Said.Number(time.Seconds / 60)} min from cold" : "for a short time from cold"),
            DutyType.ShortTime { Time: { } time } => LongestRun(cycle) is var run && run > time.Seconds * Rounding
                ? Finding(mark, $"the cycle has the motor run for {Said.Number(run / 60)} min without rest", run / 60, time.Seconds / 60, "min")
                : Unknown("whether it is cold again after each rest (a thermal sensor in the winding, or the maker)", $"whether runs of {Said.Number(run / 60)} min suit duty {mark}"),
            DutyType.ShortTime => Unknown("for how many minutes the plate's output is (motor.plate.duty, as S2 30 min)", "whether the machine's runs are short enough"),
            DutyType.Periodic when cycle.Count == 0 => WithoutCycle(context, mark, "for a part of every cycle"),
            DutyType.Periodic { Part: { } part } periodic => OfCycle(mark, part.Ratio, periodic.Idles, cycle),
            DutyType.Periodic => Unknown("the part of each cycle that the plate's output is for (motor.plate.duty, as S3 40 %)", "whether the cycle suits the motor"),
            DutyType.Unreadable => Unknown("a duty that can be read (motor.plate.duty, as S1 or S3 40 %)", "whether the plate's output is a continuous one"),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    /// <summary>A machine that stops often, or hoists, has a cycle that nobody put down; any other is taken to run without end.</summary>
    private CheckResult WithoutCycle(JobContext context, string mark, string when)
    {
        var rests = context.Job.Operation.StopsPerHour?.Value.Value >= OftenStopped || context.Job.Machine.Load.Value == LoadKind.Hoisting;
        return rests
            ? Unknown("how it runs and rests (operation.cycle)", $"whether that suits duty {mark}")
            : new CheckResult.Violated(Id, Severity.Caution, Blocks, Rule)
            {
                Title = "The plate's output is not a continuous one",
                Explanation = $"{Said.Kilowatts(context.Plate.Figures.Output_W)} is for duty {mark}, {when}; without a cycle the machine is taken to run without end.",
                Remedy = "Say how it runs by operation.cycle; else ask the motor's maker for its output in S1 and enter that.",
            };
    }

    private CheckResult OfCycle(string mark, double allowed, bool idles, IReadOnlyList<CyclePart> cycle)
    {
        var whole = cycle.Sum(Seconds);
        var loaded = cycle.Where(part => idles ? IsLoaded(part) : Runs(part)).Sum(Seconds);
        if (!(whole > 0))
        {
            return Unknown("parts of the cycle that take time (operation.cycle)", "whether the cycle suits the motor");
        }

        return loaded / whole > allowed * Rounding
            ? Finding(mark, $"the cycle has the motor {(idles ? "loaded" : "run")} for {Said.Percent(loaded / whole)} of the time", loaded / whole * 100, allowed * 100, "%")
            : whole > UsualCycleSeconds * Rounding
                ? Unknown($"the maker's word for a cycle of {Said.Number(whole / 60)} min: {mark} counts on ten minutes unless the plate says another", "whether the motor stays cool enough")
                : Fine($"{Said.Percent(loaded / whole)} of a cycle of {Said.Number(whole / 60)} min; the plate allows {Said.Percent(allowed)}");
    }

    private CheckResult.Violated Finding(string mark, string what, double value, double limit, string unit) => new(Id, Severity.Caution, Blocks, Rule)
    {
        Title = "More than the motor's duty",
        Explanation = $"The plate's output is for duty {mark}, and {what}.",
        Remedy = "Less load or longer rests, or a motor for this duty; the maker can say what it gives in S1.",
        Value = value,
        Limit = limit,
        Unit = unit,
    };

    /// <summary>The longest time of running without rest, over the end of the cycle too.</summary>
    private static double LongestRun(IReadOnlyList<CyclePart> cycle)
    {
        if (cycle.All(Runs))
        {
            return double.PositiveInfinity;
        }

        var (longest, run) = (0.0, 0.0);
        foreach (var part in cycle.Concat(cycle))
        {
            run = Runs(part) ? run + Seconds(part) : 0;
            longest = Math.Max(longest, run);
        }

        return longest;
    }

    private static double Seconds(CyclePart part) => part.Time.Value.Seconds;

    private static bool Runs(CyclePart part) => part.Speed.Value.Rpm != 0 || part.Torque.Value.NewtonMetres != 0;

    private static bool IsLoaded(CyclePart part) => part.Torque.Value.NewtonMetres != 0;
}
