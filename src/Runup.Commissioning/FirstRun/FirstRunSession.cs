using Runup.Commissioning.Entry;
using Runup.Commissioning.Records;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.FirstRun;

/// <summary>What the steps of a first run share.</summary>
internal sealed class FirstRunSession(FirstRunTask task, FirstRunPlan plan, IDriveLink link, string identity, IRecords records, IFirstRunPerson person, TimeProvider time, StepBook? book = null)
{
    public FirstRunTask Task => task;

    public FirstRunPlan Plan => plan;

    public IDriveLink Link => link;

    public string Identity => identity;

    public IRecords Records => records;

    public IFirstRunPerson Person => person;

    public TimeProvider Time => time;

    /// <summary>What the drive held of all that it keeps when last read.</summary>
    public ParameterValues Held { get; set; } = ParameterValues.Empty;

    /// <summary>The job's own values of what the guided run changes.</summary>
    public ParameterValues Own { get; set; } = ParameterValues.Empty;

    /// <summary>Bus time-out in force while Runup runs the motor.</summary>
    public TimeSpan BusTimeout { get; set; }

    /// <summary>That the drive stops by itself.</summary>
    public BusLossProof? Proof { get; set; }

    /// <summary>Where the machine's real stop device is.</summary>
    public string StopDevice { get; set; } = "";

    /// <summary>The step under way.</summary>
    public StepBook Book { get; } = book ?? new(task.Tag, records);

    /// <summary>Keeps a reading held against what is expected; whether it lies outside.</summary>
    public Task<bool> Take(string step, string quantity, string unit, Expected expected, double? measured) =>
        Book.Take(new(step, quantity, unit, expected.Value, expected.Low, expected.High, measured, expected.Within(measured)));

    /// <summary>Keeps the trend of a run.</summary>
    public async Task Keep(string step, IReadOnlyList<RunSample> samples)
    {
        if (samples.Count > 0)
        {
            var (columns, rows) = RunTrend.Of(samples);
            await records.Append(task.Tag, new RecordBody.Trend(step, columns, rows, Predicted: false), CancellationToken.None);
        }
    }

    /// <summary>Asks the person to take hold for a step. Cancelling ends the hold.</summary>
    public async Task<RunHold?> Hold(FirstRunStep step, double limitHz, CancellationToken cancellation)
    {
        var hold = await person.Hold(new(step.Id, step.Title, limitHz, SafetyWords.BesideRunControl(StopDevice)), cancellation);
        if (hold is not null)
        {
            var ends = cancellation.Register(() => hold.Release(HoldEnd.Released));
            hold.Lost.Register(() => ends.Unregister());
        }

        return hold;
    }

    /// <summary>The longest that a run up or down over this much of the range may take: three times the ramp, and 10 s.</summary>
    public TimeSpan RampLimit(double overHz)
    {
        var ramp = Math.Max(task.Plan.Number(Setting.AccelerationTime) ?? 10, task.Plan.Number(Setting.DecelerationTime) ?? 10);
        return TimeSpan.FromSeconds((3 * ramp * overHz / plan.Limits.MaximumHz) + 10);
    }

    /// <summary>How a step ends for how its run ended.</summary>
    public StepEnding Ending(FirstRunStep step, RunEnding ending) => ending switch
    {
        RunEnding.HoldEnded held => new StepEnding.Stopped($"the hold ended ({held.Why}); the motor was stopped"),
        RunEnding.NotReached not => new StepEnding.Failed($"{not.What}; the motor was stopped"),
        RunEnding.Refused refused => new StepEnding.Ends(new FirstRunEnding.Stopped(step.Id, refused.Why), refused.Why),
        RunEnding.Tripped tripped => new StepEnding.Ends(new FirstRunEnding.Tripped(step.Id, tripped.Cause), $"the drive tripped: {tripped.Cause.Name()}"),
        RunEnding.FellSilent silent => new StepEnding.Ends(new FirstRunEnding.FellSilent(step.Id, silent.Why), $"{silent.Why}; nothing more is sent: use the machine's stop device"),
        _ => throw new InvalidOperationException("The set of endings is closed."),
    };
}
