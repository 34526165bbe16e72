using Runup.Cli.Terminal;
using Runup.Files;
using Runup.Files.Profiles;
using Runup.Profiles;

namespace Runup.Cli.DriveProfiles;

/// <summary>A profile and a size of it by their names, as a job, a file or a person states them.</summary>
internal static class NamedProfile
{
    /// <summary>The profile of a name.</summary>
    /// <param name="name">The name.</param>
    /// <param name="folder">The site's folder.</param>
    /// <param name="where">Where the name stands, for the message.</param>
    /// <exception cref="Complaint">There is none, or its file is wrong.</exception>
    internal static DriveProfile Read(string name, string folder, string where)
    {
        if (name.AsSpan().IndexOfAny('/', '\\') >= 0 || name.Contains("..", StringComparison.Ordinal))
        {
            throw new Complaint(ExitStatus.BadInput, $"{where}: '{name}' is not a name; the name of a profile, without a folder, would do");
        }

        var found = ProfileFolders.Find(folder, name)
            ?? throw new Complaint(ExitStatus.BadInput, $"{where}: there is no profile '{name}' in the site's folder, its drives/ or the product's; one of these would do: {string.Join(", ", ProfileFolders.Known(folder))}");
        var problems = new Problems(found);
        return ProfileReader.ReadFile(found, problems) ?? throw new Complaint(ExitStatus.BadInput, problems.InOrder().Select(p => p.ToString()));
    }

    /// <summary>The family as it is sold in a region.</summary>
    /// <param name="profile">The profile.</param>
    /// <param name="name">The region's name.</param>
    /// <param name="where">Where the name stands, for the message.</param>
    /// <exception cref="Complaint">The family has none of this name.</exception>
    internal static DriveProfile Region(DriveProfile profile, string name, string where) => profile.In(name)
        ?? throw new Complaint(ExitStatus.BadInput, profile.Regions.Count == 0
            ? $"{where}: the profile of {profile.Title} tells no regions apart; leave it out"
            : $"{where}: {profile.Title} has no region '{name}'; one of its regions would do: {string.Join(", ", profile.Regions)}");

    /// <summary>The size of a name.</summary>
    /// <param name="profile">The profile.</param>
    /// <param name="name">The name.</param>
    /// <param name="where">Where the name stands, for the message.</param>
    /// <exception cref="Complaint">The family has none of this name.</exception>
    internal static DriveSize Size(DriveProfile profile, string name, string where) => profile.FindSize(name)
        ?? throw new Complaint(ExitStatus.BadInput, $"{where}: {profile.Title} has no size '{name}'; one of its sizes would do: {string.Join(", ", profile.Sizes.Select(s => s.Name))}");
}
