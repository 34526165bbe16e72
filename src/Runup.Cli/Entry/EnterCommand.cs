using Runup.Cli.Survey;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Entry;
using Runup.Commissioning.Plan;
using Runup.Profiles;
using Spectre.Console.Cli;

namespace Runup.Cli.Entry;

/// <summary><c>runup enter JOB --link LINK</c>: writes the sheet, reads it back and proves it; goes on where it was cut off.</summary>
internal sealed class EnterCommand : AsyncCommand<LinkSettings>
{
    public override async Task<int> ExecuteAsync(Spectre.Console.Cli.CommandContext context, LinkSettings settings, CancellationToken cancellationToken)
    {
        var job = LoadedJob.From(settings.Job);
        var plan = SettingsPlan.For(job.Context);
        var sheet = Profiles.Sheet.For(job.Profile, job.Size, plan.Values, ParameterValues.Defaults(job.Profile, job.Size));
        return await EntryRun.Of(job, EntrySheet.From(sheet), CheckList.Judge(job.Context).Verdict, settings, cancellationToken);
    }
}
