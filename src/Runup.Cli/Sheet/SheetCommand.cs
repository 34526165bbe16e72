using System.Globalization;
using Runup.Cli.Entry;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Handover;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Sheet;
using Runup.Profiles;
using Spectre.Console.Cli;

namespace Runup.Cli.Sheet;

/// <summary><c>runup sheet JOB</c>: the settings in this drive's own parameters, in order of entry.</summary>
internal sealed class SheetCommand : AsyncCommand<SheetSettings>
{
    public override async Task<int> ExecuteAsync(Spectre.Console.Cli.CommandContext context, SheetSettings settings, CancellationToken cancellationToken)
    {
        var job = LoadedJob.From(settings.Job);
        var plan = SettingsPlan.For(job.Context);
        var found = (await SiteRecords.StoryOf(job, cancellationToken)).AsFound is { } read && ReadOf.Family(read.Body, job.Profile)
            ? new SheetFound(ParameterValues.From(read.Body.Values.Where(v => v.Value is not null).Select(v => KeyValuePair.Create(v.Key, v.Value!.Value))), read.Time)
            : null;
        var effects = SheetEffects.Of(job.Context, plan, job.Profile, job.Size, cancellationToken);
        var sheet = SheetModel.Of(job.Job, plan, job.Profile, job.Size, settings.Extent, TimeProvider.System.GetLocalNow(), found, effects);
        var files = SheetFiles.Write(sheet, settings);
        if (settings.Json)
        {
            SheetJson.Write(sheet);
            return (int)ExitStatus.Fine;
        }

        var page = new Page(Console.Out);
        if (files.Count == 0)
        {
            SheetText.Write(page, sheet);
            return (int)ExitStatus.Fine;
        }

        page.Line(string.Create(CultureInfo.InvariantCulture, $"{sheet.Tag}: {sheet.Entries.Count} lines, {sheet.ExtentWords}; sheet {sheet.Checksum}"));
        foreach (var file in files)
        {
            page.Line($"{file} is written.");
        }

        return (int)ExitStatus.Fine;
    }
}
