using System.Text.Json.Nodes;
using Runup.Files.Yaml;

namespace Runup.Files.Jobs.Keys;

/// <summary>A list of groups.</summary>
/// <typeparam name="T">What each group becomes.</typeparam>
/// <param name="name">The key.</param>
/// <param name="about">What it is.</param>
/// <param name="section">The keys of each group.</param>
/// <param name="emptyWord">A word that may stand in place of an empty list.</param>
internal sealed class ListKey<T>(string name, string about, Section<T> section, string? emptyWord = null) : Key<IReadOnlyList<T>>(name, about, Need.No)
    where T : class
{
    private const int Longest = 1000;

    internal override string Example => "[{" + string.Join(", ", section.Keys.Select(k => $"{k.Name}: {k.Example}")) + "}]";

    internal override string Wanted => "a list of groups";

    /// <summary>The keys of each group, for those who look for a key by its path.</summary>
    internal Section Item => section;

    internal override object? Read(YamlNode node, Desk desk)
    {
        if (emptyWord is not null && node is YamlScalar scalar && string.Equals(scalar.Text.Trim(), emptyWord, StringComparison.OrdinalIgnoreCase))
        {
            return Array.Empty<T>();
        }

        if (node is not YamlList list)
        {
            desk.Problems.Add(node, node.Described, $"a list would do, such as `{Name}: {Example}`{(emptyWord is null ? "" : $", or `{emptyWord}`")}");
            return null;
        }

        if (list.Items.Count > Longest)
        {
            desk.Problems.Add(node, $"{list.Items.Count} entries", $"at most {Longest} would do");
            return null;
        }

        var items = new List<T>();
        foreach (var item in list.Items)
        {
            if (item is not YamlMap map)
            {
                desk.Problems.Add(item, item.Described, "a group of keys would do, in braces");
            }
            else if (section.Read(map, desk) is { } read)
            {
                items.Add(read);
            }
        }

        return items.Count == list.Items.Count ? items : null;
    }

    internal override JsonObject Schema()
    {
        var list = new JsonObject { ["type"] = "array", ["items"] = section.Schema() };
        var schema = emptyWord is null ? list : new JsonObject { ["anyOf"] = new JsonArray(list, new JsonObject { ["const"] = emptyWord }) };
        schema.Insert(0, "description", About);
        return schema;
    }
}
