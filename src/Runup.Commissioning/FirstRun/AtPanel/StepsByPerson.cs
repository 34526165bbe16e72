using System.Globalization;
using Runup.Commissioning.Entry;
using Runup.Commissioning.Records;
using Runup.Profiles;

namespace Runup.Commissioning.FirstRun.AtPanel;

/// <summary>The steps as a person does them, at the panel or from the machine's own control, told in plain words what to do.</summary>
internal sealed class StepsByPerson(FirstRunTask task, FirstRunPlan plan, StepBook book, IReadings readings, IPersonAtPanel person, IRecords records) : IFirstRunWay
{
    private static readonly TimeSpan Least = TimeSpan.FromSeconds(10);

    /// <summary>Where the machine's real stop device is; null before it was said.</summary>
    public string? StopDevice { get; set; }

    public async Task<string?> LeavesOut(FirstRunStep step, CancellationToken cancellation)
    {
        var place = plan.Steps.Index().First(s => s.Item == step).Index + 1;
        var goesOn = book.Readings.Count > 0 && string.Equals(book.Step, step.Id, StringComparison.Ordinal);
        var mayBe = step is FirstRunStep.Steady or FirstRunStep.Ramps or FirstRunStep.Watched;
        return await person.Begin(new(step, place, plan.Steps.Count, mayBe, goesOn), cancellation);
    }

    public async Task<StepEnding> Do(FirstRunStep step, StepChecks checks, CancellationToken cancellation)
    {
        switch (step)
        {
            case FirstRunStep.Signals:
                StopDevice = checks.Notes[FirstRunPlan.StopTested];
                return new StepEnding.Passed();
            case FirstRunStep.Standstill:
                return await readings.AtStandstill(step, cancellation);
            case FirstRunStep.Couple or FirstRunStep.Watched when task.WhyNotCoupled is { } why:
                return StepEnding.Refused(why);
            case FirstRunStep.Couple:
                return await DirectionUnknown(cancellation) is { } unknown ? StepEnding.Refused(unknown) : new StepEnding.Passed();
            case FirstRunStep.Watched watched:
                return await readings.At(watched, watched.FrequencyHz, watched.Rotation, Coupling.Coupled, cancellation) ?? Read();
            case FirstRunStep.Steady steady:
                return await Steady(steady, cancellation);
            case FirstRunStep.Ramps ramps:
                Warn();
                return await Stopped(ramps, await readings.OfRamps(ramps, cancellation), cancellation);
            case FirstRunStep.AsEntered:
                return await readings.AsEntered(cancellation);
            default:
                throw new InvalidOperationException("Nothing is set and nothing proved of the bus where Runup does not run the motor.");
        }
    }

    private async Task<StepEnding> Steady(FirstRunStep.Steady step, CancellationToken cancellation)
    {
        Warn();
        StepEnding? ending = null;
        foreach (var hz in step.FrequenciesHz)
        {
            person.Tell(string.Create(CultureInfo.InvariantCulture, $"Run the motor at {hz:0.##} Hz{(step.Rotation == Rotation.Reverse ? ", in reverse" : "")}, {(step.Coupling == Coupling.Coupled ? "coupled" : "uncoupled")}, for {Least.TotalSeconds:0} s at least, until the display stands still.{Look(step, hz)}"));
            ending = await readings.At(step, hz, step.Rotation, step.Coupling, cancellation);
            if (ending is not null)
            {
                break;
            }
        }

        return await Stopped(step, ending ?? Read(), cancellation);
    }

    // At the first turn nobody knows yet which way it goes.
    private string Look(FirstRunStep step, double hz) => hz <= plan.Limits.LowestHz && step is FirstRunStep.Steady { Coupling: Coupling.Uncoupled }
        ? " First 3 s only, and stop: look which way the shaft turns, and listen. The wrong way: stop here (q), and see to it with the motor isolated."
        : "";

    private async Task<StepEnding> Stopped(FirstRunStep step, StepEnding ending, CancellationToken cancellation)
    {
        person.Tell("Stop the motor, and wait until the shaft stands.");
        return await readings.WhyNotStanding(step, cancellation) is { } why ? StepEnding.Refused(why) : ending;
    }

    /// <summary>All readings lie within; but of what nobody read, nothing can be said.</summary>
    private StepEnding Read()
    {
        var blank = book.Readings.Where(r => r.Measured is null).Select(r => r.Quantity).ToList();
        var current = ReadingNames.Of(ReadingKind.OutputCurrent);
        return blank.Where(q => q.StartsWith(current, StringComparison.Ordinal)).ToList() is { Count: > 0 } needed
            ? new StepEnding.LeftOut($"not judged, since without the current nothing tells how the motor does; not read: {string.Join(", ", needed)}")
            : new StepEnding.Passed(blank.Count == 0 ? null : $"not read: {string.Join(", ", blank)}");
    }

    private async Task<string?> DirectionUnknown(CancellationToken cancellation)
    {
        var history = StepHistory.Of(await records.Of(task.Tag, cancellation));
        return history.LeftOutUncoupled
            ? await Confirming.All([new("direction-known-otherwise", "Uncoupled steps were left out. Say how it is known that the motor turns the right way.", "couple", NeedsNote: true)], task.Tag, person, records, null, cancellation)
            : null;
    }

    private void Warn() => person.Tell(SafetyWords.BesideRunByPerson(StopDevice ?? "not said yet"));
}
