using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Runup.Files.Yaml;

namespace Runup.Files.Jobs.Keys;

/// <summary>Free text of one line.</summary>
internal sealed class TextForm : Form<string>
{
    private const int Longest = 200;

    internal override string Wanted => "text";

    internal override bool Read(YamlScalar scalar, Desk desk, [MaybeNullWhen(false)] out string value, out double roundingSi)
    {
        roundingSi = 0;
        value = scalar.Text.Trim();
        if (value.Length is > 0 and <= Longest && value.IndexOfAny(['\n', '\t', '\uFFFD']) < 0)
        {
            return true;
        }

        desk.Problems.Add(scalar, Quote.Of(value), $"one line of 1 to {Longest} characters would do");
        return false;
    }

    internal override string Definition => "text";

    // An editor takes a tag such as 101 for a number, and one that reads YAML 1.1 takes a design letter N for false.
    internal override JsonObject Schema() => new() { ["$ref"] = "#/$defs/" + Definition };

    /// <summary>The definition that the schema writes once.</summary>
    internal static JsonObject Define() => new() { ["type"] = new JsonArray("string", "number", "boolean") };
}
