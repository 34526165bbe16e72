using System.Text.Json.Nodes;
using Runup.Commissioning.Survey;
using Runup.Files.Jobs.Photos;
using Runup.Files.Yaml;
using Runup.Quantities;

namespace Runup.Files.Jobs.Keys;

/// <summary>Reads where a datum comes from: <c>{value: 7.5 kW, from: plate, error: 2 %, note: "...", photo: plate.jpg}</c>.</summary>
internal static class Provenances
{
    private static readonly Choices<Provenance> Words = Choices.Of(
        ("plate", Provenance.Plate),
        ("drawing", Provenance.Drawing),
        ("measured", Provenance.Measured),
        ("told", Provenance.Told),
        ("assumed", Provenance.Assumed));

    /// <summary>Where a plain value comes from.</summary>
    internal static Origin Plain { get; } = new(Provenance.Unstated, null, null, null);

    /// <summary>The value's node and its origin; either is null with a problem where it can't be read.</summary>
    internal static (YamlNode? Value, Origin? Origin) Read(YamlMap map, string wanted, Desk desk)
    {
        var before = desk.Problems.Count;
        var reader = new MapReader(map, desk.Problems);
        var value = reader.Node("value", wanted + " would do");
        var from = reader.Choice("from", Words) ?? Provenance.Unstated;
        var error = reader.Node("error") is { } node ? Error(node, desk) : null;
        var note = reader.Text("note");
        var photo = reader.Node("photo") is { } named ? PhotoName.Read(named, desk) : null;
        reader.Done();
        return (value, desk.Problems.Count == before ? new Origin(from, error, note, photo) : null);
    }

    /// <summary>What the plain value with its long form is called among the schema's definitions.</summary>
    internal static string DefinitionName(string value) => value + "-datum";

    /// <summary>The plain value or its long form, for an editor.</summary>
    internal static JsonArray Either(JsonObject value) => new(value, new JsonObject
    {
        ["type"] = "object",
        ["additionalProperties"] = false,
        ["required"] = new JsonArray("value"),
        ["properties"] = new JsonObject
        {
            ["value"] = value.DeepClone(),
            ["from"] = new JsonObject { ["$ref"] = "#/$defs/from" },
            ["error"] = new JsonObject { ["$ref"] = "#/$defs/error" },
            ["note"] = new JsonObject { ["$ref"] = "#/$defs/note" },
            ["photo"] = new JsonObject { ["$ref"] = "#/$defs/photo" },
        },
    });

    /// <summary>The definitions that the long form refers to.</summary>
    internal static IEnumerable<(string Name, JsonObject Definition)> Definitions() =>
    [
        ("from", new JsonObject { ["description"] = "where the value comes from", ["enum"] = new JsonArray([.. Words.Words.Select(w => (JsonNode)w)]) }),
        ("error", new JsonObject { ["description"] = "how far it may be wrong, as a part of the value", ["$ref"] = "#/$defs/" + QuantityWords.DefinitionName(Dimension.Fraction) }),
        ("note", new JsonObject { ["description"] = "a remark", ["type"] = "string" }),
        ("photo", new JsonObject { ["description"] = "a photo that shows it: a JPEG or PNG in the job's folder", ["type"] = "string" }),
    ];

    private static Fraction? Error(YamlNode node, Desk desk)
    {
        if (node is not YamlScalar { IsEmpty: false } scalar)
        {
            desk.Problems.Add(node, node.Described, "a part of the value, such as `2 %`, would do");
            return null;
        }

        return QuantityWords.Read(scalar, Dimension.Fraction, Bound.AboveZero, desk, out var ratio, out _) ? Fraction.FromRatio(ratio) : null;
    }

    /// <summary>Where a datum comes from, and how far it may be wrong.</summary>
    internal sealed record Origin(Provenance From, Fraction? Error, string? Note, string? Photo);
}
