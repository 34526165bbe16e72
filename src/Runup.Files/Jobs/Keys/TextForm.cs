using System.Text.Json.Nodes;
using Runup.Files.Yaml;

namespace Runup.Files.Jobs.Keys;

/// <summary>Free text of one line.</summary>
internal sealed class TextForm : Form<string>
{
    private const int Longest = 200;

    internal override string Wanted => "text";

    internal override FormReading<string>? Read(YamlScalar scalar, Desk desk)
    {
        var text = scalar.Text.Trim();
        if (text.Length <= Longest && !text.Contains('\n', StringComparison.Ordinal))
        {
            return new FormReading<string>(text, 0);
        }

        desk.Problems.Add(scalar, Quote.Of(text), $"one line of at most {Longest} characters would do");
        return null;
    }

    internal override string Definition => "text";

    // An editor takes a tag such as 101 for a number, and one that reads YAML 1.1 takes a design letter N for false.
    internal override JsonObject Schema() => new() { ["$ref"] = "#/$defs/" + Definition };

    /// <summary>The definition that the schema writes once.</summary>
    internal static JsonObject Define() => new() { ["type"] = new JsonArray("string", "number", "boolean") };
}
