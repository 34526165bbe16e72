using System.Text.Json.Nodes;
using Runup.Files.Jobs.Keys;
using Runup.Files.Yaml;

namespace Runup.Files.Jobs.Sections;

/// <summary>The version of the format that a file says it has.</summary>
/// <param name="Number">The version.</param>
internal sealed record FormatVersion(int Number)
{
    /// <summary>The version that this program writes, and the newest that it reads.</summary>
    internal const int Known = 1;
}

/// <summary>The key of the format's version.</summary>
internal sealed class VersionKey() : Key<FormatVersion>("runup", "version of this file's format", Need.Yes)
{
    internal override string Example => "1";

    internal override string Wanted => "`runup: 1`";

    internal override string WouldDo => Wanted + " would do";

    internal override object? Read(YamlNode node, Desk desk) =>
        node.AsWhole(1, FormatVersion.Known, desk.Problems) is { } number ? new FormatVersion(number) : null;

    internal override JsonObject Schema() => new() { ["description"] = About, ["const"] = FormatVersion.Known };

    /// <summary>Whether the file is of a newer format, so that nothing else in it can be judged; then it is said.</summary>
    internal static bool IsNewer(YamlMap map, Desk desk)
    {
        if (map.Find("runup") is not YamlScalar scalar || !int.TryParse(scalar.Text, out var number) || number <= FormatVersion.Known)
        {
            return false;
        }

        desk.Problems.Add(scalar, $"format {number}, and this program knows formats up to {FormatVersion.Known}", "a newer runup would do");
        return true;
    }
}
