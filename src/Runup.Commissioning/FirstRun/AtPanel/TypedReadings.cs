using System.Globalization;
using Runup.Commissioning.Entry;
using Runup.Commissioning.Records;
using Runup.Profiles;

namespace Runup.Commissioning.FirstRun.AtPanel;

/// <summary>Readings that a person reads from the drive's display, from an instrument or a watch, and types in.</summary>
internal sealed class TypedReadings(FirstRunTask task, StepBook book, IPersonAtPanel person, IRecords records) : IReadings
{
    private const string Display = "the drive's display";
    private const string Watch = "a watch";

    public async Task<StepEnding> AtStandstill(FirstRunStep step, CancellationToken cancellation)
    {
        var asked = StandstillStep.Expected(task).Select(e => new ToRead(ReadingNames.Of(e.Kind), e.Unit, e.Expected, Display, above => LookFirst.AtStandstill(e.Kind, above)));
        if (await Ask(step, [.. asked], cancellation) is { } tripped)
        {
            return tripped;
        }

        return Outside(book.Readings) is { Length: > 0 } outside ? new StepEnding.Failed($"at standstill outside what is expected: {outside}")
            : NotRead(book.Readings) is { Length: > 0 } blank ? new StepEnding.LeftOut($"not judged, not read: {blank}")
            : new StepEnding.Passed();
    }

    public async Task<StepEnding?> At(FirstRunStep step, double frequencyHz, Rotation rotation, Coupling coupling, CancellationToken cancellation)
    {
        List<ToRead> asked = [];
        foreach (var (kind, name, unit, _) in ReadingNames.All)
        {
            // In reverse, people leave the sign of a speed out, and of a torque too unless the load drives the motor, as when a hoist lowers.
            var lowers = rotation == Rotation.Reverse && step is FirstRunStep.Watched;
            var expected = (lowers, kind) switch
            {
                (true, ReadingKind.Speed) => Mirrored(task.Predictions.Steady(kind, -frequencyHz, coupling)),
                (true, not ReadingKind.OutputFrequency) => task.Predictions.Steady(kind, -frequencyHz, coupling),
                _ => task.Predictions.Steady(kind, frequencyHz, coupling),
            };
            var unsigned = rotation == Rotation.Reverse && (kind == ReadingKind.Speed || (kind == ReadingKind.Torque && !lowers));
            asked.Add(new($"{name} at {frequencyHz.ToString("0.##", CultureInfo.InvariantCulture)} Hz", unit, expected, Display, above => LookFirst.At(kind, above, coupling), unsigned) { EndsAbove = kind is ReadingKind.OutputCurrent or ReadingKind.DcBusVoltage });
        }

        return await Ask(step, asked, cancellation) ?? Judged(asked);
    }

    public async Task<StepEnding> OfRamps(FirstRunStep.Ramps step, CancellationToken cancellation)
    {
        var hz = step.FrequencyHz.ToString("0.##", CultureInfo.InvariantCulture);
        person.Tell($"With a watch: set {hz} Hz at standstill, start, and take the time until the display shows {hz} Hz; then stop, and take the time until it shows 0 Hz.");
        var predicted = task.Predictions.Ramp(step.FrequencyHz, step.Coupling);
        var asked = RampReadings.All.Select(r => new ToRead(r.Name, r.Unit, r.Expected(predicted), r.Unit is "s" ? Watch : Display, above => LookFirst.OnRamps(r.Reading, above))).ToList();
        if (await Ask(step, asked, cancellation) is { } tripped)
        {
            return tripped;
        }

        var blank = NotRead(book.Readings);
        return Judged(asked) is { } failed ? failed
            : book.Readings.Any(r => r is { Unit: "s", Measured: null }) ? new StepEnding.LeftOut($"not judged, not read: {blank}")
            : new StepEnding.Passed(blank.Length > 0 ? $"not read: {blank}" : null);
    }

    public Task<string?> WhyNotStanding(FirstRunStep step, CancellationToken cancellation) =>
        Confirming.All([new("at-standstill", "The motor is stopped, and the shaft stands.", step.Id)], task.Tag, person, records, null, cancellation);

    public async Task<StepEnding> AsEntered(CancellationToken cancellation)
    {
        // It was confirmed of each; what the record said of them before no longer holds.
        foreach (var line in task.SourcesBesidePanel)
        {
            await records.Append(task.Tag, new RecordBody.ParameterSeen(Moments.AfterWrite, line.Number, line.Raw, person.Name, null), cancellation);
        }

        return new StepEnding.Passed();
    }

    /// <summary>Asks for readings one after another, back where the person wants to; those of a step that was cut off are not asked again. Its ending where the drive tripped, or where the motor should not run on.</summary>
    private async Task<StepEnding?> Ask(FirstRunStep step, IReadOnlyList<ToRead> asked, CancellationToken cancellation)
    {
        var (place, cameBack) = (0, false);
        while (place < asked.Count)
        {
            if (book.Taken(asked[place].Quantity) is not null && !cameBack)
            {
                place++;
                continue;
            }

            switch (await UntilClear(asked[place], place + 1, asked.Count, cancellation))
            {
                case ReadingAnswer.Tripped trip:
                    var why = $"the drive tripped, its display shows: {trip.Display}. Runup resets no trip: find its cause, and reset it at the drive";
                    return new StepEnding.Ends(new FirstRunEnding.Stopped(step.Id, why), why);
                case ReadingAnswer.Back:
                    (place, cameBack) = (Math.Max(place - 1, 0), true);
                    break;
                case ReadingAnswer.Shows shows:
                    await Keep(step, asked[place], shows.Value, shows.From);
                    if (asked[place].EndsAbove && shows.Value > asked[place].Expected.High)
                    {
                        return Judged(asked);
                    }

                    (place, cameBack) = (place + 1, false);
                    break;
                default:
                    await Keep(step, asked[place], null, null);
                    (place, cameBack) = (place + 1, false);
                    break;
            }
        }

        return null;
    }

    /// <summary>Asks until the answer is clear, and once more where it lies outside: a figure misread is more frequent than a motor that is wrong.</summary>
    private async Task<ReadingAnswer> UntilClear(ToRead reading, int place, int of, CancellationToken cancellation)
    {
        var question = new ReadingQuestion { Quantity = reading.Quantity, Unit = reading.Unit, Expected = reading.Expected, From = reading.From, Place = place, Of = of };
        ReadingAnswer.Shows? before = null;
        while (true)
        {
            cancellation.ThrowIfCancellationRequested();
            switch (Signed(reading, ReadingAnswer.Read(await person.Read(question, cancellation), reading.Unit, reading.From)))
            {
                case ReadingAnswer.Unclear unclear:
                    question = question with { Remark = unclear.Why };
                    break;
                case ReadingAnswer.NotRead when before is not null:
                    return before;
                case ReadingAnswer.Shows shows when reading.Expected.Within(shows.Value) == false && before?.Value != shows.Value:
                    before = shows;
                    var above = reading.Expected.High is { } high && shows.Value > high;
                    question = question with { Outside = shows.Value, Remark = $"Look first at {reading.LookAt(above)}." };
                    break;
                case var clear:
                    return clear;
            }
        }
    }

    private async Task Keep(FirstRunStep step, ToRead reading, double? measured, string? from)
    {
        var e = reading.Expected;
        var taken = new RecordBody.ReadingTaken(step.Id, reading.Quantity, reading.Unit, e.Value, e.Low, e.High, measured, e.Within(measured), person.Name, from);
        await book.Take(taken);
        person.Took(taken);
    }

    private StepEnding.Failed? Judged(IReadOnlyList<ToRead> asked) =>
        Outside([.. asked.Select(a => book.Taken(a.Quantity)).OfType<RecordBody.ReadingTaken>()]) is { Length: > 0 } outside ? new($"outside what is expected: {outside}") : null;

    private static string Outside(IReadOnlyList<RecordBody.ReadingTaken> taken) => string.Join(", ", taken.Where(r => r.Within == false).Select(r => r.Quantity));

    private static string NotRead(IReadOnlyList<RecordBody.ReadingTaken> taken) => string.Join(", ", taken.Where(r => r.Measured is null).Select(r => r.Quantity));

    private static ReadingAnswer Signed(ToRead reading, ReadingAnswer answer) =>
        reading.Unsigned && answer is ReadingAnswer.Shows shows ? shows with { Value = Math.Abs(shows.Value) } : answer;

    private static Expected Mirrored(Expected expected) => new(-expected.Value, -expected.High, -expected.Low);

    private sealed record ToRead(string Quantity, string Unit, Expected Expected, string From, Func<bool, string> LookAt, bool Unsigned = false)
    {
        /// <summary>Whether a motor should not run on, while more is read, where this is too high.</summary>
        public bool EndsAbove { get; init; }
    }
}
