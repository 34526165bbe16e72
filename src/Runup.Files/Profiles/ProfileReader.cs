using Runup.Files.Yaml;
using Runup.Profiles;

namespace Runup.Files.Profiles;

/// <summary>Reads a drive profile (<c>*.drive.yaml</c>) strictly: every problem of the file at once, each with its place.</summary>
public static class ProfileReader
{
    /// <summary>The version of the format that this program reads and writes.</summary>
    public const int Format = 1;

    /// <summary>How the files of profiles end.</summary>
    public const string Extension = ".drive.yaml";

    /// <summary>Reads a file; null with problems where it is not a profile that may be used.</summary>
    /// <param name="path">The file.</param>
    /// <param name="problems">Where problems go.</param>
    /// <param name="cautions">Where that goes which does not stand in the way of using it; null where nobody wants to know.</param>
    public static DriveProfile? ReadFile(string path, Problems problems, Problems? cautions = null)
    {
        var before = problems.Count;
        return YamlTree.ReadFile(path, problems) is { } root ? Read(root, before, problems, cautions) : null;
    }

    /// <summary>Reads a text; null with problems where it is not a profile that may be used.</summary>
    public static DriveProfile? Read(string text, Problems problems, Problems? cautions = null)
    {
        var before = problems.Count;
        return YamlTree.Read(text, problems) is { } root ? Read(root, before, problems, cautions) : null;
    }

    /// <summary>As <see cref="ReadFile"/>, and every value of every parameter goes through display and registers and must come back.</summary>
    public static DriveProfile? LintFile(string path, Problems problems, Problems cautions)
    {
        var before = problems.Count;
        return YamlTree.ReadFile(path, problems) is { } root ? Read(root, before, problems, cautions, everyValue: true) : null;
    }

    private static DriveProfile? Read(YamlMap root, int before, Problems problems, Problems? cautions, bool everyValue = false)
    {
        var file = new MapReader(root, problems);
        if (!IsKnownFormat(file))
        {
            return null;
        }

        var family = file.Text("family", "a name for job files, such as `tern`, would do");
        var title = file.Text("title") ?? family;
        var identity = IdentityReader.Read(file.Group("identity"));
        var width = ParameterReader.ReadWidth(file) ?? 16;
        var defaults = new RowDefaults(width, file.Flag("signed") ?? false, ParameterReader.ReadWordOrder(file) ?? WordOrder.LowFirst);
        var lists = ChoiceLists.Read(file.Group("lists"));
        var rows = ParameterReader.ReadGroups(file, defaults, lists);
        var sizes = SizeReader.Read(file, rows);
        var regions = RegionReader.Read(file.Group("regions"), sizes, rows);
        rows.SettleDefaults(sizes, regions);
        var command = CommandReader.Read(file.Group("command"), rows);
        var readings = CommandReader.ReadReadings(file.Group("readings"), rows);
        var trips = TripReader.Read(file.Group("trips"), readings.FirstOrDefault(r => r.Kind == ReadingKind.LastTrip)?.Parameter);
        var store = CommandReader.ReadStore(file.Group("store"), rows);
        file.Done();
        if (problems.Count > before)
        {
            return null;
        }

        var profile = new DriveProfile(rows.Parameters)
        {
            Family = family!,
            Title = title!,
            Format = Format,
            Identity = identity,
            Sizes = regions.Count == 0 ? sizes : [.. sizes.Select(s => s with { Region = regions[0] })],
            Regions = regions,
            Command = command,
            Readings = readings,
            Trips = trips,
            Store = store,
        };
        LintPlaces.Report(ProfileLint.Check(profile), rows, problems, cautions);
        if (everyValue && problems.Count == before)
        {
            LintPlaces.Report(RoundTrip.Check(profile), rows, problems, cautions);
        }

        return problems.Count == before ? profile : null;
    }

    private static bool IsKnownFormat(MapReader file)
    {
        var version = file.Whole("drive-profile", 1, int.MaxValue, $"the version of the format, `drive-profile: {Format}`, would do; is this a drive profile?");
        if (version > Format)
        {
            file.Fault("drive-profile", $"format version {version}, which is newer than this program", $"a newer Runup reads it; this one reads up to version {Format}");
        }

        return version is >= 1 and <= Format;
    }
}
