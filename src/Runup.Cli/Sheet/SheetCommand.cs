using System.Globalization;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Sheet;
using Spectre.Console.Cli;

namespace Runup.Cli.Sheet;

/// <summary><c>runup sheet JOB</c>: the settings in this drive's own parameters, in order of entry.</summary>
internal sealed class SheetCommand : Command<SheetSettings>
{
    public override int Execute(Spectre.Console.Cli.CommandContext context, SheetSettings settings, CancellationToken cancellationToken)
    {
        var job = LoadedJob.From(settings.Job);
        var sheet = SheetModel.Of(job.Job, SettingsPlan.For(job.Context), job.Profile, job.Size, settings.Extent, TimeProvider.System.GetLocalNow());
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
