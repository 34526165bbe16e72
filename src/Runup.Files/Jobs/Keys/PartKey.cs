using System.Text.Json.Nodes;
using Runup.Files.Yaml;

namespace Runup.Files.Jobs.Keys;

/// <summary>A group of keys under one key.</summary>
/// <typeparam name="T">What the group becomes.</typeparam>
/// <param name="name">The key.</param>
/// <param name="about">What it is.</param>
/// <param name="section">The keys beneath.</param>
/// <param name="need">Whether it must be there.</param>
/// <param name="isAlwaysMade">Whether it is made, of nothing if need be, where the key is missing.</param>
/// <param name="word">A word that may stand in place of the group.</param>
internal sealed class PartKey<T>(string name, string about, Section<T> section, Need need, bool isAlwaysMade, (string Word, T Value)? word) : Key<T>(name, about, need)
    where T : class
{
    internal override string Example => "{" + string.Join(", ", section.Keys.Select(k => $"{k.Name}: {k.Example}")) + "}";

    internal override Section Section => section;

    internal override string Wanted => "a group of keys";

    internal override object? Read(YamlNode node, Desk desk)
    {
        switch (node)
        {
            case YamlMap map:
                return section.Read(map, desk);
            case YamlScalar { IsEmpty: true }:
                // A heading whose keys are all still commented out.
                return Missing(new YamlMap(node.KeyPath, node.KeyPlace, node.Place, false, []), desk, isHeading: true);
            case YamlScalar scalar when word is { } w && string.Equals(scalar.Text.Trim(), w.Word, StringComparison.OrdinalIgnoreCase):
                return w.Value;
            default:
                desk.Problems.Add(node, node.Described, $"a group of keys would do, such as `{Name}: {Example}`" + (word is { } x ? $", or `{x.Word}`" : ""));
                return null;
        }
    }

    internal override object? Missing(YamlMap parent, Desk desk) =>
        Missing(new YamlMap(parent.KeyPath.Length == 0 ? Name : $"{parent.KeyPath}.{Name}", parent.KeyPlace, parent.Place, false, []), desk, isHeading: false);

    internal override JsonObject Schema()
    {
        var schema = section.Schema();
        if (word is { } w)
        {
            schema = new JsonObject { ["anyOf"] = new JsonArray(schema, new JsonObject { ["const"] = w.Word }) };
        }
        else if (!section.Keys.Any(k => k.Need is Need.Always))
        {
            schema["type"] = new JsonArray("object", "null");
        }

        schema.Insert(0, "description", About);
        return schema;
    }

    private T? Missing(YamlMap empty, Desk desk, bool isHeading) => isAlwaysMade || isHeading ? section.Read(empty, desk) : null;
}
