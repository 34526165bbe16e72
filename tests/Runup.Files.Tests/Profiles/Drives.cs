using Runup.Files.Profiles;
using Runup.Profiles;

namespace Runup.Files.Tests.Profiles;

/// <summary>The demo makes as the product ships them, and the repository around the tests.</summary>
internal static class Drives
{
    private static readonly Lazy<DriveProfile> ReadTern = new(() => Read("tern"));
    private static readonly Lazy<DriveProfile> ReadOsprey = new(() => Read("osprey"));

    internal static string Root { get; } = FindRoot();

    internal static DriveProfile Tern => ReadTern.Value;

    internal static DriveProfile Osprey => ReadOsprey.Value;

    internal static DriveProfile Of(string family) => family is "osprey" ? Osprey : Tern;

    internal static string PathOf(string family) => Path.Combine(Root, "data", "drives", family + ProfileReader.Extension);

    internal static DriveSize Size(string name) => Tern.FindSize(name)!;

    private static DriveProfile Read(string family)
    {
        var problems = new Problems(family + ProfileReader.Extension);
        var profile = ProfileReader.ReadFile(PathOf(family), problems);
        return profile ?? throw new InvalidOperationException(string.Join('\n', problems.InOrder()));
    }

    private static string FindRoot()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Runup.slnx")))
        {
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("No Runup.slnx above the tests.");
        }

        return folder;
    }
}
