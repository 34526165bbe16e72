using System.ComponentModel;
using Runup.Cli.Terminal;
using Runup.Files.Profiles;
using Spectre.Console.Cli;

namespace Runup.Cli.DriveProfiles;

/// <summary>What every verb on one profile takes.</summary>
internal class ProfileArgument : CommandSettings
{
    [CommandArgument(0, "<PROFILE>")]
    [Description("A file, or the name of a profile in this folder, its drives/ or the product's")]
    public string Profile { get; set; } = "";

    [CommandOption("--json")]
    [Description("One JSON document on standard output")]
    public bool Json { get; set; }

    /// <summary>The file that is meant.</summary>
    /// <exception cref="Complaint">There is no profile of this name.</exception>
    internal string File()
    {
        if (System.IO.File.Exists(Profile) || Profile.EndsWith(ProfileReader.Extension, StringComparison.Ordinal) || Profile.AsSpan().IndexOfAny('/', '\\') >= 0)
        {
            return Profile;
        }

        return ProfileFolders.Find("", Profile)
            ?? throw new Complaint(ExitStatus.BadInput, $"runup: there is no profile '{Profile}' in this folder, its drives/ or the product's; a file, or one of these would do: {string.Join(", ", ProfileFolders.Known(""))}");
    }
}
