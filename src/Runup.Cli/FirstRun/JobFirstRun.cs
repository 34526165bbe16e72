using Runup.Cli.Survey;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Entry;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Records;
using Runup.Profiles;

namespace Runup.Cli.FirstRun;

/// <summary>A job's first run.</summary>
internal static class JobFirstRun
{
    /// <summary>What the first run of a job is about.</summary>
    internal static FirstRunTask Of(LoadedJob job, SettingsPlan plan, IReadOnlyList<SheetLine> sheet, CheckReport checks, IFirstRunPredictions predictions) => new()
    {
        Job = job.Job,
        Profile = job.Profile,
        Size = job.Size,
        Plan = plan.Values,
        Sheet = EntrySheet.From(sheet),
        Predictions = predictions,
        Verdict = checks.Verdict,
        LoadDrivesMotor = checks.LoadDrivesMotor,
    };

    /// <summary>The steps as they were done last: by a person who runs the motor, or by Runup; the latter where none is done.</summary>
    internal static FirstRunPlan Plan(FirstRunTask task, IReadOnlyList<Recorded> record) =>
        record.Select(r => r.Body).OfType<RecordBody.StepBegun>().LastOrDefault() is { RunBy: not null } ? FirstRunPlan.RunByPerson(task) : FirstRunPlan.For(task);
}
