using System.ComponentModel;
using Runup.Cli.Terminal;
using Runup.Files;
using Runup.Files.Profiles;
using Spectre.Console.Cli;

namespace Runup.Cli.DriveProfiles;

/// <summary><c>runup profile show PROFILE</c>: what a profile says, for a person who is about to rely on it.</summary>
internal sealed class ShowCommand : Command<ShowCommand.Settings>
{
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var path = settings.File();
        var problems = new Problems(path);
        var profile = ProfileReader.ReadFile(path, problems) ?? throw new Complaint(ExitStatus.BadInput, problems.InOrder().Select(p => p.ToString()));
        profile = settings.Region is { } region ? NamedProfile.Region(profile, region, "runup: --region") : profile;
        var size = settings.Size is null ? profile.Sizes[0] : profile.FindSize(settings.Size)
            ?? throw new Complaint(ExitStatus.BadInput, $"runup: {profile.Title} has no size '{settings.Size}'; one of these would do: {string.Join(", ", profile.Sizes.Select(s => s.Name))}");
        if (settings.Json)
        {
            JsonOut.Write(json => ProfileJson.Write(json, profile, size));
        }
        else
        {
            ProfilePage.Write(new Page(Console.Out), profile, size, settings.All);
        }

        return (int)ExitStatus.Fine;
    }

    internal sealed class Settings : ProfileArgument
    {
        [CommandOption("--size <SIZE>")]
        [Description("The size whose factory values and ranges are shown; without, the first")]
        public string? Size { get; set; }

        [CommandOption("--region <REGION>")]
        [Description("The region whose factory values are shown; without, the first")]
        public string? Region { get; set; }

        [CommandOption("--all")]
        [Description("Every parameter, also those without a meaning")]
        public bool All { get; set; }
    }
}
