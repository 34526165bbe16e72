using Runup.Files.Yaml;
using Runup.Profiles;
using Runup.Quantities;

namespace Runup.Files.Profiles;

/// <summary>Reads the regions for which drives leave the factory with values of their own.</summary>
internal static class RegionReader
{
    internal static IReadOnlyList<Region> Read(MapReader? map, IReadOnlyList<DriveSize> sizes, ParameterRows rows)
    {
        var regions = new List<Region>();
        foreach (var entry in map?.Map.Entries ?? [])
        {
            if (entry.Value.AsGroup(map!.Problems) is { } group)
            {
                var defaults = SizeReader.Values(group, "defaults", rows);
                var ofSizes = OfSizes(group, sizes, rows);
                group.Done();
                regions.Add(new(entry.Key) { Defaults = defaults, OfSizes = ofSizes });
            }
        }

        return regions;
    }

    private static Dictionary<string, IReadOnlyDictionary<string, long>> OfSizes(MapReader group, IReadOnlyList<DriveSize> sizes, ParameterRows rows)
    {
        var all = new Dictionary<string, IReadOnlyDictionary<string, long>>(StringComparer.Ordinal);
        if (group.Group("sizes") is not { } map)
        {
            return all;
        }

        foreach (var entry in map.Map.Entries)
        {
            if (sizes.All(s => !string.Equals(s.Name, entry.Key, StringComparison.Ordinal)))
            {
                map.Problems.Add(entry.Value.KeyPlace, entry.Value.KeyPath, $"there is no size {Quote.Of(entry.Key)}", Spelling.Nearest(entry.Key, sizes.Select(s => s.Name)) is { } nearest ? $"`{nearest}` would do" : "the name of one of the `sizes` would do");
            }

            all[entry.Key] = SizeReader.Values(map, entry.Key, rows);
        }

        map.Done();
        return all;
    }
}
