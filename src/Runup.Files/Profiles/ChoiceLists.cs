using Runup.Files.Yaml;

namespace Runup.Files.Profiles;

/// <summary>Choices that several parameters share, by the name that their rows give instead of writing them out.</summary>
internal sealed class ChoiceLists
{
    private readonly Dictionary<string, YamlMap> lists = new(StringComparer.Ordinal);

    internal static ChoiceLists Read(MapReader? map)
    {
        var known = new ChoiceLists();
        foreach (var entry in map?.Map.Entries ?? [])
        {
            if (entry.Value is YamlMap list)
            {
                known.lists.Add(entry.Key, list);
            }
            else
            {
                map!.Problems.Add(entry.Value, entry.Value.Described, "choices would do: `{0: text, 1: text}`");
            }
        }

        return known;
    }

    /// <summary>The choices of a row: its own, or those of the list that it names.</summary>
    internal YamlMap? Find(YamlNode node, Problems problems)
    {
        if (node is YamlMap own)
        {
            return own;
        }

        if (node.AsText(problems, "choices, `{0: text, 1: text}`, or the name of one of the `lists`") is not { } name)
        {
            return null;
        }

        if (lists.TryGetValue(name, out var list))
        {
            return list;
        }

        problems.Add(node, $"there is no list {Quote.Of(name)}", Runup.Quantities.Spelling.Nearest(name, lists.Keys) is { } nearest ? $"`{nearest}` would do" : "add it under `lists`");
        return null;
    }
}
