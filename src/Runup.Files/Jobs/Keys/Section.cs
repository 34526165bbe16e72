using System.Text.Json.Nodes;
using Runup.Files.Yaml;
using Runup.Quantities;

namespace Runup.Files.Jobs.Keys;

/// <summary>A group of keys.</summary>
/// <param name="keys">Its keys, in the order of the template.</param>
internal abstract class Section(KeyList keys)
{
    /// <summary>The keys, in the order of the template.</summary>
    internal IReadOnlyList<Key> Keys { get; } = keys.All;

    /// <summary>Reads every key of the map, tells of those that do not belong or are missing.</summary>
    protected Values ReadKeys(YamlMap map, Desk desk)
    {
        var values = new Values();
        foreach (var entry in map.Entries)
        {
            if (Keys.FirstOrDefault(k => string.Equals(k.Name, entry.Key, StringComparison.Ordinal)) is not { } key)
            {
                TellUnknown(entry, desk);
            }
            else if (key.Read(entry.Value, desk) is { } value)
            {
                values.Set(key, value);
            }
        }

        foreach (var key in Keys.Where(k => map.Find(k.Name) is null))
        {
            if (key.Missing(map, desk) is { } value)
            {
                values.Set(key, value);
            }

            var path = PathIn(map, key.Name);
            if (key.Section is null && IsNeeded(key, map) && desk.IsNeededHere(path))
            {
                desk.Problems.Add(map.KeyPlace, path, "it is missing", key.WouldDo);
            }
        }

        return values;
    }

    /// <summary>The path of a key of a map.</summary>
    protected static string PathIn(YamlMap map, string key) => map.KeyPath.Length == 0 ? key : $"{map.KeyPath}.{key}";

    /// <summary>What the group must look like, for an editor.</summary>
    internal JsonObject Schema()
    {
        var properties = new JsonObject();
        foreach (var key in Keys)
        {
            properties[key.Name] = key.Schema();
        }

        var schema = new JsonObject { ["type"] = "object", ["additionalProperties"] = false, ["properties"] = properties };
        var needed = Keys.Where(k => k.Need is Need.Always).Select(k => (JsonNode)k.Name).ToArray();
        if (needed.Length > 0)
        {
            schema["required"] = new JsonArray(needed);
        }

        var conditions = Keys.Select(k => (Key: k, When: k.Need as Need.Conditional)).Where(c => c.When is not null)
            .GroupBy(c => (c.When!.Key, Words: string.Join('|', c.When.Words)))
            .Select(g => Condition(g.First().When!, g.Select(c => c.Key.Name))).ToArray();
        if (conditions.Length > 0)
        {
            schema["allOf"] = new JsonArray(conditions);
        }

        return schema;
    }

    private static JsonNode Condition(Need.Conditional condition, IEnumerable<string> needed) => new JsonObject
    {
        ["if"] = new JsonObject
        {
            ["properties"] = new JsonObject { [condition.Key] = new JsonObject { ["enum"] = new JsonArray([.. condition.Words.Select(w => (JsonNode)w)]) } },
            ["required"] = new JsonArray(condition.Key),
        },
        ["then"] = new JsonObject { ["required"] = new JsonArray([.. needed.Select(n => (JsonNode)n)]) },
    };

    private static bool IsNeeded(Key key, YamlMap map) => key.Need switch
    {
        Need.Always => true,
        Need.Conditional condition => WordOf(map.Find(condition.Key)) is { } word && condition.Words.Contains(word, StringComparer.OrdinalIgnoreCase),
        _ => false,
    };

    private static string? WordOf(YamlNode? node) => node switch
    {
        YamlScalar scalar => scalar.Text.Trim(),
        YamlMap datum => WordOf(datum.Find("value")),
        _ => null,
    };

    private void TellUnknown(YamlEntry entry, Desk desk)
    {
        var names = Keys.Select(k => k.Name).ToList();
        // A key spelled right and put elsewhere is likelier than another one misspelled.
        var wouldDo = desk.Problems.AreTooMany ? "leave it out" : JobKeys.PlaceOf(entry.Key) is { } elsewhere
            ? $"it belongs at `{elsewhere}`"
            : Spelling.Nearest(entry.Key, names) is { } nearest
                ? $"`{nearest}` would do, if that is meant"
                : $"one of {Quote.List(names)} would do";
        desk.Problems.Add(entry.Value.KeyPlace, entry.Value.KeyPath, "there is no such key here", wouldDo);
    }
}

/// <summary>A group of keys that becomes a record.</summary>
/// <typeparam name="T">The record.</typeparam>
/// <inheritdoc/>
internal abstract class Section<T>(KeyList keys) : Section(keys)
    where T : class
{
    /// <summary>Reads the group; null with problems where anything is wrong.</summary>
    internal T? Read(YamlMap map, Desk desk)
    {
        var before = desk.Problems.Count;
        var values = ReadKeys(map, desk);
        Check(values, map, desk);
        return desk.Problems.Count == before && Keys.All(k => k.Need is not Need.Always || values.Has(k)) ? Build(values) : null;
    }

    /// <summary>Makes the record; every needed value is there.</summary>
    protected abstract T Build(Values v);

    /// <summary>What keys demand of one another.</summary>
    protected virtual void Check(Values v, YamlMap map, Desk desk)
    {
    }
}
