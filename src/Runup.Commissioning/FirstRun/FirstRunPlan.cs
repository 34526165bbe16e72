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
    private static readonly double[] Quarters = [0.25, 0.5, 0.75, 1];

    /// <summary>The plan for a set.</summary>
    public static FirstRunPlan For(FirstRunTask task)
    {
        var maximum = task.Plan.Number(Setting.MaximumFrequency) ?? task.Job.Operation.MaximumFrequency.Value.Hertz;
        var reverse = string.Equals(task.Plan.Choice(Setting.PermittedDirection), "both", StringComparison.Ordinal);
        var limits = new RunLimits(Math.Min(BumpHz, maximum), maximum, reverse);
        var why = FirstRun.OwnControlOnly.Why(task);
        IEnumerable<FirstRunStep> steps = why is null ? Guided(task, limits) : Watched(task, limits);
        return new([Signals(task), Standstill(), .. steps], limits, why);
    }

    private static FirstRunStep Signals(FirstRunTask task)
    {
        List<ToConfirm> checks =
        [
            new("machine-stop-tested", "The machine's real stop device was operated and stops it. Say where it is.", "signals", NeedsNote: true),
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

    private static IEnumerable<FirstRunStep> Guided(FirstRunTask task, RunLimits limits)
    {
        var text = CultureInfo.InvariantCulture;
        yield return new FirstRunStep.SetUp("set-up", "The bus becomes the source of run command and reference for the guided run, its time-out and action are set and read back.",
            Confirming.BeforeTheShaftMayMove("set-up"));
        yield return new FirstRunStep.LossProof("bus-loss-proof", string.Create(text, $"At {limits.LowestHz:0.##} Hz, uncoupled, renewals are withheld on purpose: the drive must begin to stop by itself within 1 s."),
            [Uncoupled("bus-loss-proof"), Closed("bus-loss-proof"), Clear("bus-loss-proof")]);
        yield return Step("uncoupled-5-hz", [limits.LowestHz], Coupling.Uncoupled, [Clear("uncoupled-5-hz")]);
        if (limits.ReversePermitted)
        {
            yield return Step("uncoupled-5-hz-reverse", [limits.LowestHz], Coupling.Uncoupled, [RightWay("uncoupled-5-hz-reverse"), Clear("uncoupled-5-hz-reverse")], Rotation.Reverse);
        }

        if (limits.MaximumHz > 10)
        {
            yield return Step("uncoupled-10-hz", [10], Coupling.Uncoupled, [RightWay("uncoupled-10-hz"), Clear("uncoupled-10-hz")]);
        }

        yield return Step("uncoupled-range", Range(limits), Coupling.Uncoupled, [Clear("uncoupled-range")]);
        yield return new FirstRunStep.Ramps("uncoupled-ramps", "Up to the highest frequency and down again on the drive's ramps, uncoupled.", [Clear("uncoupled-ramps")], limits.MaximumHz, Coupling.Uncoupled);
        yield return new FirstRunStep.Couple("couple", "The machine is coupled.", Couple());
        yield return new FirstRunStep.Ramps("coupled-ramps", "Up to the highest frequency and down again on the drive's ramps, coupled.", [Closed("coupled-ramps"), Clear("coupled-ramps")], limits.MaximumHz, Coupling.Coupled);
        yield return Step("coupled-range", Range(limits), Coupling.Coupled, [Clear("coupled-range")]);
    }

    private static IEnumerable<FirstRunStep> Watched(FirstRunTask task, RunLimits limits)
    {
        var lowest = task.Plan.Number(Setting.MinimumFrequency) ?? 0;
        var range = Range(limits).Where(hz => hz >= lowest).ToList();
        foreach (var hz in range)
        {
            yield return Watch(string.Create(CultureInfo.InvariantCulture, $"own-control-{hz:0.##}-hz"), "run", hz, Rotation.Forward);
        }

        // Down is the way in which a load drives its motor: it is not done with the hoist until that was seen too.
        if (limits.ReversePermitted && task.Job.Machine.Load.Value == LoadKind.Hoisting)
        {
            foreach (var hz in range)
            {
                yield return Watch(string.Create(CultureInfo.InvariantCulture, $"own-control-{hz:0.##}-hz-lowering"), "lowering its load", hz, Rotation.Reverse);
            }
        }
    }

    private static FirstRunStep.Watched Watch(string id, string how, double hz, Rotation rotation) =>
        new(id, string.Create(CultureInfo.InvariantCulture, $"The machine is {how} at {hz:0.##} Hz from its own control; Runup reads."),
            [Clear(id), new("steady-from-own-control", string.Create(CultureInfo.InvariantCulture, $"It is {(rotation == Rotation.Reverse ? how : "running")} steadily at {hz:0.##} Hz from its own control."), id)], hz, rotation);

    private static FirstRunStep.Steady Step(string id, IReadOnlyList<double> frequencies, Coupling coupling, IReadOnlyList<ToConfirm> checks, Rotation rotation = Rotation.Forward)
    {
        var list = string.Join(", ", frequencies.Select(f => f.ToString("0.##", CultureInfo.InvariantCulture)));
        return new(id, $"{list} Hz, {(coupling == Coupling.Coupled ? "coupled" : "uncoupled")}{(rotation == Rotation.Reverse ? ", reverse" : "")}, with readings at each.", checks, frequencies, coupling, rotation);
    }

    private static IReadOnlyList<double> Range(RunLimits limits) => [.. Quarters.Select(q => q * limits.MaximumHz)];

    private static IReadOnlyList<ToConfirm> Couple() =>
    [
        new("at-standstill", "The shaft stands still.", "couple"),
        new("safe-torque-off-open-or-motor-isolated", "Safe torque off is open, or the motor is isolated, while the coupling is worked on.", "couple"),
        new("coupled", "The machine is coupled.", "couple"),
        new("guards-on", "All guards are on.", "couple"),
    ];

    private static ToConfirm Uncoupled(string step) => new("uncoupled", "The motor is uncoupled, and its shaft end is guarded.", step);

    private static ToConfirm Closed(string step) => new("safe-torque-off-closed", "Safe torque off is closed again and the motor connected.", step);

    private static ToConfirm Clear(string step) => new("nobody-in-reach", "Nobody is in reach of anything that turns, and the person beside the machine sees it.", step);

    private static ToConfirm RightWay(string step) => new("direction-right", "In the step before, the shaft turned the right way, without odd noise.", step);
}
