using System.ComponentModel;
using Runup.Cli.Comparison;
using Runup.Cli.DriveProfiles;
using Runup.Cli.Entry;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Translation;
using Spectre.Console.Cli;

namespace Runup.Cli.Translation;

/// <summary><c>runup translate JOB --to PROFILE --size SIZE</c>: an old drive's settings in a new drive's parameters.</summary>
internal sealed class TranslateCommand : AsyncCommand<TranslateCommand.Settings>
{
    public override async Task<int> ExecuteAsync(Spectre.Console.Cli.CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var job = LoadedJob.From(settings.Job);
        var profile = NamedProfile.Read(settings.To, job.Folder, "runup: --to");
        profile = settings.Region is { } region ? NamedProfile.Region(profile, region, "runup: --region") : profile;
        var size = NamedProfile.Size(profile, settings.Size, "runup: --size");
        var old = await SideLoading.OfJob(job, await Latest(job, cancellationToken), cancellationToken);
        var translation = DriveTranslation.Of(old.State, profile, size, SettingsPlan.For(job.Context));
        if (settings.Json)
        {
            TranslateJson.Write(translation);
        }
        else
        {
            TranslatePage.Write(new Page(Console.Out), old, translation);
        }

        return (int)ExitStatus.Fine;
    }

    private static async Task<string> Latest(LoadedJob job, CancellationToken cancellation)
    {
        var story = await SiteRecords.StoryOf(job, cancellation);
        return story is { AsLeft.Count: > 0, Entry.Begun: not null } ? "as-left" : story.AsFound is not null ? "as-found" : "plan";
    }

    internal sealed class Settings : JobSettings
    {
        [CommandOption("--to <PROFILE>")]
        [Description("The new drive's profile, by its name")]
        public string To { get; set; } = "";

        [CommandOption("--size <SIZE>")]
        [Description("The new drive's size")]
        public string Size { get; set; } = "";

        [CommandOption("--region <REGION>")]
        [Description("The new drive's region, where its profile tells regions apart; without, the first")]
        public string? Region { get; set; }

        public override Spectre.Console.ValidationResult Validate() => (To, Size) switch
        {
            ("", _) => Spectre.Console.ValidationResult.Error("--to is missing; the name of the new drive's profile would do"),
            (_, "") => Spectre.Console.ValidationResult.Error($"--size is missing; `runup profile show {To}` lists the sizes"),
            _ => Spectre.Console.ValidationResult.Success(),
        };
    }
}
