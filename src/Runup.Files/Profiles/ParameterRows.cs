using Runup.Files.Yaml;
using Runup.Profiles;

namespace Runup.Files.Profiles;

/// <summary>The rows of a profile, found by the numbers that other parts of the file name.</summary>
internal sealed class ParameterRows(Problems problems)
{
    private readonly List<ParameterRow> rows = [];
    private readonly Dictionary<string, ParameterRow> byNumber = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> firstLine = new(StringComparer.Ordinal);

    /// <summary>The parameters in the order of the file.</summary>
    internal IReadOnlyList<Parameter> Parameters => [.. rows.Select(r => r.Parameter)];

    /// <summary>Takes a row; null for one that is wrong, whose number is remembered so that nothing complains of it a second time.</summary>
    internal void Add(string? number, MapReader map, ParameterRow? row)
    {
        if (number is null)
        {
            return;
        }

        if (!firstLine.TryAdd(number, map.Map.Place.Line))
        {
            map.Fault("number", $"{Quote.Of(number)} stands twice, first in line {firstLine[number]}", "each number once");
        }
        else if (row is not null)
        {
            rows.Add(row);
            byNumber.Add(number, row);
        }
    }

    /// <summary>Settles the defaults that rows leave to the sizes.</summary>
    internal void SettleDefaults(IReadOnlyList<DriveSize> sizes, IReadOnlyList<Region> regions) => rows.ForEach(r => r.SettleDefault(sizes, regions));

    /// <summary>The row of a number, or null.</summary>
    internal ParameterRow? Row(string number) => byNumber.GetValueOrDefault(number);

    /// <summary>The row of the number that is a key; null with a problem where there is none.</summary>
    internal ParameterRow? Row(YamlEntry entry) => Row(entry.Key, entry.Value.KeyPlace, entry.Value.KeyPath);

    /// <summary>The parameter of the number that a key holds; null with a problem where there is none.</summary>
    internal Parameter? Find(MapReader map, string key, string? needed = null) => map.Node(key, needed) is { } node ? Find(node) : null;

    /// <summary>The parameter of the number that a node holds; null with a problem where there is none.</summary>
    internal Parameter? Find(YamlNode node) =>
        node.AsText(problems, "a parameter's number") is { } number ? Row(number, node.Place, node.KeyPath)?.Parameter : null;

    private ParameterRow? Row(string number, Place place, string keyPath)
    {
        if (byNumber.TryGetValue(number, out var row))
        {
            return row;
        }

        if (!firstLine.ContainsKey(number))
        {
            problems.Add(place, keyPath, $"there is no parameter {Quote.Of(number)}", "give the number of a parameter of this profile");
        }

        return null;
    }
}
