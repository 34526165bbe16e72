using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Runup.Files.Yaml;

namespace Runup.Files.Tests.Profiles;

/// <summary>Holds a YAML tree against the part of JSON Schema that our schemas use: kinds of values, keys, lists of words, alternatives.</summary>
internal static class SchemaWalk
{
    internal static IEnumerable<string> Misfits(JsonNode schema, YamlNode node)
    {
        if (schema["anyOf"] is JsonArray alternatives)
        {
            return alternatives.Any(a => !Misfits(a!, node).Any()) ? [] : [$"{node.KeyPath}: fits none of the alternatives"];
        }

        return node switch
        {
            YamlMap map => OfMap(schema, map),
            YamlList list when schema["items"] is { } items => list.Items.SelectMany(i => Misfits(items, i)),
            YamlList when Allows(schema, "array") => [],
            YamlScalar scalar => OfScalar(schema, scalar),
            _ => [$"{node.KeyPath}: a list is not expected"],
        };
    }

    private static IEnumerable<string> OfMap(JsonNode schema, YamlMap map)
    {
        if (!Allows(schema, "object"))
        {
            return [$"{map.KeyPath}: a group is not expected"];
        }

        var missing = (schema["required"]?.AsArray() ?? []).Select(r => r!.GetValue<string>()).Where(r => map.Find(r) is null).Select(r => $"{map.KeyPath}: {r} is missing");
        return missing.Concat(map.Entries.SelectMany(e => Of(schema, e.Key) is { } known ? Misfits(known, e.Value) : [$"{e.Value.KeyPath}: not in the schema"]));
    }

    private static JsonNode? Of(JsonNode schema, string key) =>
        schema["properties"]?[key] ?? (schema["patternProperties"] as JsonObject)?.FirstOrDefault(p => Regex.IsMatch(key, p.Key, RegexOptions.None, TimeSpan.FromSeconds(1))).Value;

    private static IEnumerable<string> OfScalar(JsonNode schema, YamlScalar scalar)
    {
        if (schema["const"] is { } only)
        {
            return only.ToString() == scalar.Text ? [] : [$"{scalar.KeyPath}: {scalar.Text} is not {only}"];
        }

        if (schema["enum"] is JsonArray words)
        {
            return words.Any(w => string.Equals(w!.ToString(), scalar.Text, StringComparison.OrdinalIgnoreCase)) ? [] : [$"{scalar.KeyPath}: {scalar.Text} is not in the list"];
        }

        return Allows(schema, "string") || Allows(schema, "number") || Allows(schema, "integer") ? [] : [$"{scalar.KeyPath}: a single value is not expected"];
    }

    private static bool Allows(JsonNode schema, string kind) =>
        schema["type"] is JsonArray kinds ? kinds.Any(k => k!.GetValue<string>() == kind) : schema["type"]?.GetValue<string>() == kind;
}
