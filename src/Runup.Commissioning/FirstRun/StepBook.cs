using Runup.Commissioning.Records;

namespace Runup.Commissioning.FirstRun;

/// <summary>The step under way and its readings, each on record as it comes.</summary>
/// <param name="tag">The set.</param>
/// <param name="records">Where all is kept.</param>
/// <param name="runBy">Who runs the motor; null where Runup does, while a person holds.</param>
internal sealed class StepBook(string tag, IRecords records, string? runBy = null)
{
    private readonly List<RecordBody.ReadingTaken> readings = [];
    private bool goesOn;

    /// <summary>The step under way, or the last one; null before the first.</summary>
    public string? Step { get; private set; }

    /// <summary>Its readings, the last one of each quantity.</summary>
    public IReadOnlyList<RecordBody.ReadingTaken> Readings => readings;

    /// <summary>A step that was cut off keeps its readings; it goes on when it is begun next.</summary>
    public void GoesOn(string step, IEnumerable<RecordBody.ReadingTaken> taken)
    {
        (Step, goesOn) = (step, true);
        readings.AddRange(taken);
    }

    /// <summary>Begins a step, or goes on with it.</summary>
    public async Task Begin(FirstRunStep step)
    {
        if (goesOn && string.Equals(Step, step.Id, StringComparison.Ordinal))
        {
            goesOn = false;
            return;
        }

        (Step, goesOn) = (step.Id, false);
        readings.Clear();
        await records.Append(tag, new RecordBody.StepBegun(step.Id, runBy), CancellationToken.None);
    }

    /// <summary>The last reading of a quantity in this step; null where there is none.</summary>
    public RecordBody.ReadingTaken? Taken(string quantity) => readings.Find(r => string.Equals(r.Quantity, quantity, StringComparison.Ordinal));

    /// <summary>Keeps a reading held against what is expected; whether it lies outside.</summary>
    public async Task<bool> Take(RecordBody.ReadingTaken reading)
    {
        readings.RemoveAll(r => string.Equals(r.Quantity, reading.Quantity, StringComparison.Ordinal));
        readings.Add(reading);
        await records.Append(tag, reading, CancellationToken.None);
        return reading.Within == false;
    }
}
