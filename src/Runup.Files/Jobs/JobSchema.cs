using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Runup.Files.Jobs.Keys;
using Runup.Quantities;

namespace Runup.Files.Jobs;

/// <summary>The JSON Schema (draft 2020-12) of a job file, so that editors complete and check; made from the table that the reader reads by.</summary>
/// <remarks>
/// An editor sees YAML's own types, so that the schema is a little narrower than the reader in spellings (case, rarer dots) and
/// wider in what only the reader knows (ambiguous numbers, curves, what can't be below zero).
/// </remarks>
public static class JobSchema
{
    /// <summary>Where the shipped copy lies, from the checkout's root.</summary>
    public const string ShippedAt = "data/schema/runup-job.schema.json";

    private static readonly JsonSerializerOptions Layout = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes the schema.</summary>
    public static string Write()
    {
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["$id"] = "urn:runup:job-file:1",
            ["title"] = "Runup job file",
            ["description"] = "One motor-drive-machine set. Quantities carry their unit; any value may stand in braces with where it comes from.",
        };
        foreach (var (name, value) in JobKeys.Top.Schema().ToList())
        {
            schema[name] = value?.DeepClone();
        }

        schema["$defs"] = Definitions(schema.ToJsonString());
        return schema.ToJsonString(Layout).ReplaceLineEndings("\n") + "\n";
    }

    // Those that the keys refer to, and those that these refer to in turn.
    private static JsonObject Definitions(string body)
    {
        var known = Dimension.All.Select(d => (Name: QuantityWords.DefinitionName(d), Definition: QuantityPattern.Definition(d)))
            .Append(("flag", FlagForm.Define()))
            .Append(("text", TextForm.Define()))
            .ToList();
        var written = new JsonObject();
        foreach (var (name, definition) in Provenances.Definitions())
        {
            written[name] = definition;
        }

        foreach (var (name, definition) in known)
        {
            if (IsUsed(Provenances.DefinitionName(name)))
            {
                written[Provenances.DefinitionName(name)] = new JsonObject { ["anyOf"] = Provenances.Either(new JsonObject { ["$ref"] = "#/$defs/" + name }) };
            }

            if (IsUsed(name) || written.ContainsKey(Provenances.DefinitionName(name)) || name == QuantityWords.DefinitionName(Dimension.Fraction))
            {
                written[name] = definition;
            }
        }

        return written;

        bool IsUsed(string name) => body.Contains($"\"#/$defs/{name}\"", StringComparison.Ordinal);
    }
}
