using Runup.Cli.Survey;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Entry;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Sheet;
using Runup.Profiles;
using Spectre.Console.Cli;

namespace Runup.Cli.Entry;

/// <summary><c>runup enter JOB --link LINK | --by-hand</c>: writes the sheet, reads it back and proves it; goes on where it was cut off.</summary>
internal sealed class EnterCommand : AsyncCommand<LinkSettings>
{
    public override async Task<int> ExecuteAsync(Spectre.Console.Cli.CommandContext context, LinkSettings settings, CancellationToken cancellationToken)
    {
        var job = LoadedJob.From(settings.Job);
        var plan = SettingsPlan.For(job.Context);
        var sheet = JobSheet.For(plan, job.Profile, job.Size, ParameterValues.Defaults(job.Profile, job.Size));
        var why = sheet.Where(r => r is { Line.Parameter: not null, Reason: not null }).ToDictionary(r => r.Line.Parameter!.Number, r => r.Reason!, StringComparer.Ordinal);
        return await EntryRun.Of(job, EntrySheet.From([.. sheet.Select(r => r.Line)]), CheckList.Judge(job.Context).Verdict, why, settings, cancellationToken);
    }
}
