using System.Text.Json.Nodes;

namespace Runup.Files.Profiles;

/// <summary>The few forms that the schema of a profile is made of.</summary>
internal static class SchemaParts
{
    internal static JsonObject Text(string description) => new() { ["type"] = "string", ["description"] = description };

    internal static JsonObject Scalar(string description) => new() { ["type"] = new JsonArray("string", "number"), ["description"] = description };

    internal static JsonObject Number(string description) => new() { ["type"] = new JsonArray("string", "integer"), ["description"] = description };

    internal static JsonObject Flag(string description) => new() { ["enum"] = new JsonArray(true, false, "yes", "no"), ["description"] = description };

    internal static JsonObject Words(string description, params IEnumerable<string> words) => new() { ["enum"] = new JsonArray([.. words.Select(w => (JsonNode)w)]), ["description"] = description };

    internal static JsonObject List(string description, JsonObject items) => new() { ["type"] = "array", ["items"] = items, ["description"] = description };

    internal static JsonObject Map(string description, JsonObject values, string keys = ".+") => new()
    {
        ["type"] = "object",
        ["patternProperties"] = new JsonObject { [keys] = values },
        ["additionalProperties"] = false,
        ["description"] = description,
    };

    internal static JsonObject Object(IEnumerable<string> required, params IEnumerable<(string Key, JsonObject Schema)> properties)
    {
        var known = new JsonObject();
        foreach (var (key, schema) in properties)
        {
            known[key] = schema;
        }

        var schemaOfObject = new JsonObject { ["type"] = "object", ["additionalProperties"] = false, ["properties"] = known };
        if (required.Any())
        {
            schemaOfObject["required"] = new JsonArray([.. required.Select(r => (JsonNode)r)]);
        }

        return schemaOfObject;
    }
}
