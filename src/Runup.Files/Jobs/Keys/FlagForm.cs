using System.Text.Json.Nodes;
using Runup.Files.Yaml;

namespace Runup.Files.Jobs.Keys;

/// <summary>Yes or no.</summary>
internal sealed class FlagForm : Form<bool>
{
    internal override string Wanted => "`yes` or `no`";

    internal override bool Read(YamlScalar scalar, Desk desk, out bool value, out double roundingSi)
    {
        roundingSi = 0;
        var flag = scalar.AsFlag(desk.Problems);
        value = flag ?? false;
        return flag is not null;
    }

    internal override string Definition => "flag";

    // An editor that reads YAML 1.1 takes yes for a boolean, one that reads 1.2 for a word.
    internal override JsonObject Schema() => new() { ["$ref"] = "#/$defs/" + Definition };

    /// <summary>The definition that the schema writes once.</summary>
    internal static JsonObject Define() => new() { ["enum"] = new JsonArray("yes", "no", true, false) };
}
