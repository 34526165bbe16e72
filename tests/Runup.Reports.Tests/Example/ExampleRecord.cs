using Microsoft.Extensions.Time.Testing;
using Runup.Commissioning.Records;
using Runup.Profiles;

namespace Runup.Reports.Tests.Example;

/// <summary>What was recorded of the pump on an invented day.</summary>
internal sealed class ExampleRecord
{
    private readonly FakeTimeProvider time = new(new DateTimeOffset(2026, 5, 4, 6, 30, 0, TimeSpan.Zero));
    private readonly InMemoryRecords records;

    public ExampleRecord()
    {
        time.SetLocalTimeZone(TimeZoneInfo.CreateCustomTimeZone("site", TimeSpan.FromHours(2), "site", "site"));
        records = new(time);
    }

    public const string By = "N. Ostre (demo: the program plays the person)";

    /// <summary>From survey to the last step, all well.</summary>
    public static IReadOnlyList<Recorded> Whole()
    {
        var record = new ExampleRecord();
        record.Entered();
        record.FirstRun();
        record.Add(new RecordBody.ControlLeft("bus", "The drive takes its run command from the bus: whoever writes its command word has control."));
        return record.All;
    }

    /// <summary>Cut off in the middle of the entry, one write refused, the next of unknown end.</summary>
    public static IReadOnlyList<Recorded> CutOff()
    {
        var record = new ExampleRecord();
        record.Begin();
        foreach (var line in Lines.Take(6))
        {
            record.Write(line, refused: line.Parameter!.Number is "107");
        }

        record.Add(new RecordBody.WriteIntended(Lines[6].Parameter!.Number, 0, Lines[6].Raw!.Value));
        return record.All;
    }

    public IReadOnlyList<Recorded> All => records.Of("SWP-101", default).GetAwaiter().GetResult();

    private static List<SheetLine> Lines => [.. ExampleDrive.Sheet.Where(l => l is { Parameter: not null, Raw: not null, Changed: true })];

    public void Add(RecordBody body, double seconds = 1)
    {
        time.Advance(TimeSpan.FromSeconds(seconds));
        records.Append("SWP-101", body, default).GetAwaiter().GetResult();
    }

    public void Begin()
    {
        Add(new RecordBody.JobTaken("runup: 1\ntag: SWP-101\n", "5d0c0000000000000000000000000000000000000000000000000000000000aa"));
        Add(new RecordBody.Confirmed("safe-torque-off-open-or-motor-isolated", By, "before-first-write"));
        Add(new RecordBody.Confirmed("no-run-command-pending", By, "before-first-write"));
        Read("as-found", ParameterValues.Defaults(ExampleDrive.Tern, ExampleDrive.Size));
        Add(new RecordBody.EntryBegun(new string('7', 64), [.. Lines.Select(l => l.Parameter!.Number)], Resumed: false));
    }

    public void Entered()
    {
        Begin();
        Lines.ForEach(line => Write(line));
        Read("after-write", After);
        Add(new RecordBody.StoreAsked("accepted"));
        Add(new RecordBody.PowerCycleSeen(), 30);
        Read("after-power-cycle", After);
        Add(new RecordBody.EntryEnded(Lines.Count, new Dictionary<string, string>(StringComparer.Ordinal), ProvedAfterPowerCycle: true));
    }

    /// <summary>Entered, and then put back to as found, proved after power-off.</summary>
    public static IReadOnlyList<Recorded> PutBack()
    {
        var record = new ExampleRecord();
        record.Entered();
        var found = ParameterValues.Defaults(ExampleDrive.Tern, ExampleDrive.Size);
        record.Add(new RecordBody.EntryBegun(new string('8', 64), [.. Lines.Select(l => l.Parameter!.Number)], Resumed: false));
        record.Add(new RecordBody.PowerCycleSeen(), 30);
        record.Read("after-power-cycle", found);
        record.Add(new RecordBody.EntryEnded(Lines.Count, new Dictionary<string, string>(StringComparer.Ordinal), ProvedAfterPowerCycle: true));
        return record.All;
    }

    public void Write(SheetLine line, bool refused = false)
    {
        var before = line.Default!.Raw;
        Add(new RecordBody.WriteIntended(line.Parameter!.Number, before, line.Raw!.Value));
        Add(refused
            ? new RecordBody.WriteEnded(line.Parameter.Number, "refused", before, "exception 3, illegal data value")
            : new RecordBody.WriteEnded(line.Parameter.Number, "verified", line.Raw, null), 0.2);
    }

    public void FirstRun()
    {
        Step("signals", s =>
        {
            Add(new RecordBody.Confirmed("machine-stop-tested", By, "signals: red mushroom button at the pump's platform"));
            Add(new RecordBody.Confirmed("safe-torque-off-blocks", By, "signals"));
            Add(new RecordBody.Confirmed("direction-known", By, "signals"));
        });
        Step("standstill", s =>
        {
            Reading(s, "DC bus voltage", "V", 565.7, 544, 572, 561.3);
            Reading(s, "output current", "A", 0, null, 0.72, 0);
            Reading(s, "output frequency", "Hz", 0, null, 0.05, 0);
        });
        Step("bus-loss-proof", s => Reading(s, "last renewal to stop reaction", "s", 0.4, null, 1, 0.412));
        Step("uncoupled-5-hz", s => At(s, 5, 6.4, 0));
        Step("uncoupled-range", s => Range(s, 0));
        Step("coupled-ramps", Ramps);
        Step("coupled-range", s => Range(s, 1));
    }

    public void Step(string id, Action<string> during, string outcome = "passed", string? remark = null)
    {
        Add(new RecordBody.StepBegun(id), 20);
        during(id);
        Add(new RecordBody.StepEnded(id, outcome, remark));
    }

    public void Reading(string step, string quantity, string unit, double? expected, double? low, double? high, double? measured) =>
        Add(new RecordBody.ReadingTaken(step, quantity, unit, expected, low, high, measured,
            measured is not { } m || (low is null && high is null) ? null : (low is null || m >= low) && (high is null || m <= high)), 0.1);

    private static ParameterValues After => Sheet.After(ExampleDrive.Tern, ExampleDrive.Size, ExampleDrive.Sheet, ParameterValues.Defaults(ExampleDrive.Tern, ExampleDrive.Size));

    private void Read(string moment, ParameterValues values) => Add(new RecordBody.ParametersRead(moment, "Invented make Tern 1.0",
        ExampleDrive.Tern.Parameters.Where(p => p.IsKept).ToDictionary(p => p.Number, p => values[p.Number], StringComparer.Ordinal)));

    private void Range(string step, double load)
    {
        foreach (var hz in (double[])[12.5, 25, 37.5, 50])
        {
            At(step, hz, 6.3 + (load * 6.1 * hz * hz / 2500), load * hz * hz / 2500);
        }
    }

    private void At(string step, double hz, double amperes, double load)
    {
        var at = FormattableString.Invariant($" at {hz:0.##} Hz");
        Reading(step, "output frequency" + at, "Hz", hz, hz - 0.1, hz + 0.1, hz);
        Reading(step, "output current" + at, "A", amperes, 0.8 * amperes, 1.2 * amperes, 1.03 * amperes);
        Reading(step, "DC bus voltage" + at, "V", 560 - (8 * load), 530, 575, 558 - (9 * load));
        Reading(step, "output voltage" + at, "V", Math.Max(8, 400 * hz * hz / 2500), 0.9 * Math.Max(8, 400 * hz * hz / 2500), 1.1 * Math.Max(8, 400 * hz * hz / 2500), 1.01 * Math.Max(8, 400 * hz * hz / 2500));
        Reading(step, "speed" + at, "rpm", (30 * hz) - (load * 36), (30 * hz) - 50, 30 * hz, (30 * hz) - (load * 34));
        Reading(step, "torque" + at, "%", 86 * load, (86 * load) - 12, (86 * load) + 12, 84 * load);
    }

    private void Ramps(string step)
    {
        Add(new RecordBody.Trend(step, Columns, Curve(0, 1), Predicted: true));
        Add(new RecordBody.Trend(step, Columns, Curve(0.35, 1.04), Predicted: false));
        Reading(step, "highest output current", "A", 13.1, null, 15.7, 13.6);
        Reading(step, "highest DC bus voltage", "V", 574, null, 640, 581);
        Reading(step, "time to speed", "s", 8, 7.5, 9, 8.1);
        Reading(step, "time to stop", "s", 12, 11, 13.5, 12.2);
    }

    private static IReadOnlyList<string> Columns { get; } = ["time_s", "output_frequency_Hz", "output_current_A", "dc_bus_V"];

    // Up in 8 s, three seconds at 50 Hz, down in 12 s, with a small ripple on what is measured.
    private static IReadOnlyList<IReadOnlyList<double>> Curve(double ripple, double scale) => [.. Enumerable.Range(0, 231).Select(i =>
    {
        var t = i * 0.1;
        var hz = t < 8 ? 50 * t / 8 : t < 11 ? 50 : Math.Max(0, 50 * (23 - t) / 12);
        var load = 6.1 * hz * hz / 2500;
        var acceleration = t < 8 ? 0.7 : t < 11 ? 0 : -0.5;
        var wave = ripple * Math.Sin(9 * t);
        return (IReadOnlyList<double>)[t, hz, hz < 0.01 ? 0 : Math.Max(0, (6.3 + load + acceleration) * scale) + wave, 560 - (1.3 * load * scale) + (t >= 11 && hz > 5 ? 14 * scale : 0) + (4 * wave)];
    })];
}
