using System.Globalization;
using Runup.Commissioning.Entry;
using Runup.Commissioning.Survey;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.FirstRun;

/// <summary>The steps of a first run, in order.</summary>
/// <param name="Steps">The steps.</param>
/// <param name="Limits">Between what the motor may be run at all.</param>
/// <param name="OwnControlOnly">Why Runup sends no run command and only reads; null where it guides.</param>
public sealed record FirstRunPlan(IReadOnlyList<FirstRunStep> Steps, RunLimits Limits, string? OwnControlOnly)
{
    private const double BumpHz = 5;
    private const double TrialHz = 10;
    private static readonly double[] Quarters = [0.25, 0.5, 0.75, 1];

    /// <summary>The check of the machine's real stop device, whose remark says where it is.</summary>
    public const string StopTested = "machine-stop-tested";

    /// <summary>The check of where the motor is run from, whose remark says it.</summary>
    public const string RunFrom = "run-from";

    /// <summary>The plan for a set that Runup runs over a link, where it may.</summary>
    public static FirstRunPlan For(FirstRunTask task)
    {
        var limits = LimitsOf(task);
        var why = FirstRun.OwnControlOnly.Why(task);
        IEnumerable<FirstRunStep> steps = why is null ? Guided(limits) : Watched(task, limits, []);
        return new([Signals(task), Standstill(), .. steps], limits, why);
    }

    /// <summary>The plan for a set whose motor a person runs: at the drive's panel, or from the machine's own control where its load demands that. Runup sends nothing, so that nothing is set for it and there is no loss of the bus to prove.</summary>
    public static FirstRunPlan RunByPerson(FirstRunTask task)
    {
        var any = LimitsOf(task);
        var limits = any with { LowestHz = Math.Clamp(task.Plan.Number(Setting.MinimumFrequency) ?? 0, any.LowestHz, any.MaximumHz) };
        var why = FirstRun.OwnControlOnly.ByMachine(task);
        IEnumerable<FirstRunStep> steps = why is null ? AtPanel(task, limits) : Watched(task, limits, [FromWhere("")]);
        return new([Signals(task), Standstill(), .. steps, .. why is null ? AsEntered(task) : []], limits, why);
    }

    private static RunLimits LimitsOf(FirstRunTask task)
    {
        var maximum = task.Plan.Number(Setting.MaximumFrequency) ?? task.Job.Operation.MaximumFrequency.Value.Hertz;
        var reverse = string.Equals(task.Plan.Choice(Setting.PermittedDirection), "both", StringComparison.Ordinal);
        return new RunLimits(Math.Min(BumpHz, maximum), maximum, reverse);
    }

    private static FirstRunStep Signals(FirstRunTask task)
    {
        List<ToConfirm> checks =
        [
            new(StopTested, "The machine's real stop device was operated and stops it. Say where it is.", "signals", NeedsNote: true),
            new("safe-torque-off-blocks", "Safe torque off was opened, and the drive's display showed that it blocks.", "signals"),
            new("interlocks-rung-out", "Each guard switch, limit switch and external trip was operated and seen at the drive's terminals.", "signals"),
            new("direction-known", "The direction in which the machine must turn is known and marked.", "signals"),
        ];
        if (task.Job.Motor.Kind.Value == MotorKind.PermanentMagnet)
        {
            checks.Add(new("shaft-lock-known", SafetyWords.Magnets, "signals"));
        }

        return new FirstRunStep.Signals("signals", "Signals are rung out, nothing turns.", checks);
    }

    private static FirstRunStep.Standstill Standstill() =>
        new("standstill", "The drive is read at standstill: state, DC bus, no current.", []);

    private static IEnumerable<FirstRunStep> Guided(RunLimits limits) =>
    [
        new FirstRunStep.SetUp("set-up", "The bus becomes the source of run command and reference for the guided run, its time-out and action are set and read back.",
            Confirming.BeforeTheShaftMayMove("set-up")),
        new FirstRunStep.LossProof("bus-loss-proof", string.Create(CultureInfo.InvariantCulture, $"At {limits.LowestHz:0.##} Hz, uncoupled, renewals are withheld on purpose: the drive must begin to stop by itself within 1 s."),
            [Uncoupled("bus-loss-proof"), Closed("bus-loss-proof"), Clear("bus-loss-proof")]),
        .. Turned(limits, _ => [], []),
    ];

    private static IEnumerable<FirstRunStep> AtPanel(FirstRunTask task, RunLimits limits)
    {
        var set = task.SourcesBesidePanel is { Count: > 0 } sources
            ? $" As entered the drive shows {string.Join(" and ", sources.Select(s => $"{s.Parameter}: {task.Shown(s)}"))}; to run it at its panel, set that there first, at the end it is put back."
            : "";
        return Turned(limits, step => [Uncoupled(step)], [FromWhere(set), Closed("")]);
    }

    /// <summary>The steps in which the motor turns, uncoupled first.</summary>
    /// <param name="limits">Between what.</param>
    /// <param name="uncoupled">What is confirmed before every uncoupled step.</param>
    /// <param name="first">What is confirmed before the first of them, too.</param>
    private static IEnumerable<FirstRunStep> Turned(RunLimits limits, Func<string, IReadOnlyList<ToConfirm>> uncoupled, IReadOnlyList<ToConfirm> first)
    {
        var bump = $"uncoupled-{Hz(limits.LowestHz)}-hz";
        yield return Step(bump, [limits.LowestHz], Coupling.Uncoupled, [.. first.Select(c => c with { Step = bump }), .. uncoupled(bump), Clear(bump)]);
        if (limits.ReversePermitted)
        {
            var reverse = $"{bump}-reverse";
            yield return Step(reverse, [limits.LowestHz], Coupling.Uncoupled, [.. uncoupled(reverse), RightWay(reverse), Clear(reverse)], Rotation.Reverse);
        }

        var more = limits is { MaximumHz: > TrialHz, LowestHz: < TrialHz };
        if (more)
        {
            yield return Step("uncoupled-10-hz", [TrialHz], Coupling.Uncoupled, [.. uncoupled("uncoupled-10-hz"), RightWay("uncoupled-10-hz"), Clear("uncoupled-10-hz")]);
        }

        yield return Step("uncoupled-range", Range(limits), Coupling.Uncoupled,
            [.. uncoupled("uncoupled-range"), .. more || limits.LowestHz < TrialHz ? (ToConfirm[])[] : [RightWay("uncoupled-range")], Clear("uncoupled-range")]);
        yield return new FirstRunStep.Ramps("uncoupled-ramps", "Up to the highest frequency and down again on the drive's ramps, uncoupled.", [.. uncoupled("uncoupled-ramps"), Clear("uncoupled-ramps")], limits.MaximumHz, Coupling.Uncoupled);
        yield return new FirstRunStep.Couple("couple", "The machine is coupled.", Couple());
        yield return new FirstRunStep.Ramps("coupled-ramps", "Up to the highest frequency and down again on the drive's ramps, coupled.", [Closed("coupled-ramps"), Clear("coupled-ramps")], limits.MaximumHz, Coupling.Coupled);
        yield return Step("coupled-range", Range(limits), Coupling.Coupled, [Clear("coupled-range")]);
    }

    private static IEnumerable<FirstRunStep> Watched(FirstRunTask task, RunLimits limits, IReadOnlyList<ToConfirm> first)
    {
        var lowest = task.Plan.Number(Setting.MinimumFrequency) ?? 0;
        var range = Quarters.Select(q => q * limits.MaximumHz).Where(hz => hz >= lowest).ToList();
        foreach (var hz in range)
        {
            yield return Watch($"own-control-{Hz(hz)}-hz", "run", hz, Rotation.Forward, hz == range[0] ? first : []);
        }

        // Down is the way in which a load drives its motor: it is not done with the hoist until that was seen too.
        if (limits.ReversePermitted && task.Job.Machine.Load.Value == LoadKind.Hoisting)
        {
            foreach (var hz in range)
            {
                yield return Watch($"own-control-{Hz(hz)}-hz-lowering", "lowering its load", hz, Rotation.Reverse, []);
            }
        }
    }

    private static FirstRunStep.Watched Watch(string id, string how, double hz, Rotation rotation, IReadOnlyList<ToConfirm> first) =>
        new(id, $"The machine is {how} at {Hz(hz)} Hz from its own control, with readings.",
            [.. first.Select(c => c with { Step = id }), Clear(id), new("steady-from-own-control", $"It is {(rotation == Rotation.Reverse ? how : "running")} steadily at {Hz(hz)} Hz from its own control.", id)], hz, rotation);

    private static FirstRunStep.Steady Step(string id, IReadOnlyList<double> frequencies, Coupling coupling, IReadOnlyList<ToConfirm> checks, Rotation rotation = Rotation.Forward)
    {
        var list = string.Join(", ", frequencies.Select(Hz));
        return new(id, $"{list} Hz, {(coupling == Coupling.Coupled ? "coupled" : "uncoupled")}{(rotation == Rotation.Reverse ? ", reverse" : "")}, with readings at each.", checks, frequencies, coupling, rotation);
    }

    private static string Hz(double frequency) => frequency.ToString("0.##", CultureInfo.InvariantCulture);

    // What lies below the lowest can't be run.
    private static IReadOnlyList<double> Range(RunLimits limits) => [.. Quarters.Select(q => Math.Max(q * limits.MaximumHz, limits.LowestHz)).Distinct()];

    private static IEnumerable<FirstRunStep> AsEntered(FirstRunTask task)
    {
        const string Id = GuidedSettings.PutBackStep;
        if (task.SourcesBesidePanel is { Count: > 0 } sources)
        {
            yield return new FirstRunStep.AsEntered(Id, "What was set so that the motor could be run at the panel is as entered again.",
                [
                    .. Confirming.BeforeTheShaftMayMove(Id, byHand: true),
                    .. sources.Select(s => new ToConfirm($"as-entered-{s.Number}", $"The display shows {s.Parameter}: {task.Shown(s)}, as it was entered.", Id)),
                ]);
        }
    }

    private static IReadOnlyList<ToConfirm> Couple() =>
    [
        new("at-standstill", "The shaft stands still.", "couple"),
        new("safe-torque-off-open-or-motor-isolated", "Safe torque off is open, or the motor is isolated, while the coupling is worked on.", "couple"),
        new("coupled", "The machine is coupled.", "couple"),
        new("guards-on", "All guards are on.", "couple"),
    ];

    private static ToConfirm Uncoupled(string step) => new("uncoupled", "The motor is uncoupled, and its shaft end is guarded.", step);

    private static ToConfirm FromWhere(string set) =>
        new(RunFrom, $"Somebody beside the machine runs and stops the motor in all steps, nobody else can start it, and Runup sends nothing.{set} Say from where it is run, such as: the drive's panel.", "", NeedsNote: true);

    private static ToConfirm Closed(string step) => new("safe-torque-off-closed", "Safe torque off is closed again and the motor connected.", step);

    private static ToConfirm Clear(string step) => new("nobody-in-reach", "Nobody is in reach of anything that turns, and the person beside the machine sees it.", step);

    private static ToConfirm RightWay(string step) => new("direction-right", "In the step before, the shaft turned the right way, without odd noise.", step);
}
