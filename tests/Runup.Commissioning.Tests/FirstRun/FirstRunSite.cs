using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Records;
using Runup.Commissioning.Survey;
using Runup.Commissioning.Tests.Bench;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Tests.FirstRun;

/// <summary>The bench with the sheet entered, ready for the first run.</summary>
internal sealed class FirstRunSite
{
    internal FirstRunSite(SettingSet? plan = null, LoadKind load = LoadKind.Quadratic)
    {
        Plan = plan ?? BenchSite.Plan;
        var sheet = BenchSite.Sheet(Plan);
        var held = sheet.Lines.Aggregate(ParameterValues.Defaults(BenchMake.Profile, BenchMake.Size), (values, line) => values.With(line.Number, line.Raw));
        Bench.Drive.Held = Bench.Drive.Kept = held;
        Task = new()
        {
            Job = BenchJob.Of(load),
            Profile = BenchMake.Profile,
            Size = BenchMake.Size,
            Plan = Plan,
            Sheet = sheet,
            Predictions = Predictions,
        };
    }

    internal BenchSite Bench { get; } = new();

    internal SettingSet Plan { get; }

    internal BenchPredictions Predictions { get; } = new();

    internal FirstRunTask Task { get; set; }

    internal BenchDrive Drive => Bench.Drive;

    internal BenchPerson Person => Bench.Person;

    internal BenchRecords Records => Bench.Records;

    internal List<(TimeSpan At, BenchOp Op)> Log => Bench.Log;

    internal IEnumerable<(TimeSpan At, double Hz)> Runs => Log.Where(l => l.Op is { Kind: "command", What: "Run" }).Select(l => (l.At, l.Op.Raw / 100.0));

    internal FirstRunReport Run(TimeSpan? step = null, CancellationToken cancellation = default)
    {
        var report = Pump.Run(Bench.Time, () => new GuidedFirstRun(Task, Bench, Records, Person, Bench.Time).Run(cancellation), step);
        Drive.Pass();
        return report;
    }

    /// <summary>Lets time pass after the run, and shows what the drive does alone.</summary>
    internal void Later(TimeSpan time)
    {
        Bench.Time.Advance(time);
        Drive.Pass();
    }

    internal IEnumerable<string> StepsBegun => Records.Bodies.OfType<RecordBody.StepBegun>().Select(s => s.Step);
}
