using Runup.Files.Yaml;
using Runup.Quantities;

namespace Runup.Files.Profiles;

/// <summary>Reads overload cycles, and currents that are stated in per cent of one of them.</summary>
internal static class OverloadReader
{
    /// <summary>The overload cycles of a rating.</summary>
    internal static List<CommonCycle> ReadAll(MapReader map)
    {
        var cycles = new List<CommonCycle>();
        foreach (var entry in map.Group("overload-cycles", "`normal: {overload: 110 %, for: 60 s, every: 600 s}` would do")?.Map.Entries ?? [])
        {
            if (entry.Value.AsGroup(map.Problems) is not { } cycle)
            {
                continue;
            }

            var overload = cycle.Positive<Fraction>("overload", "the overload current in per cent of the continuous one would do");
            var lasts = cycle.Positive<Duration>("for", "how long would do");
            var every = cycle.Positive<Duration>("every", "once in how long would do");
            cycle.Done();
            if (overload is not null && lasts is not null && every is not null)
            {
                cycles.Add(new CommonCycle(entry.Key, overload.Value, lasts.Value, every.Value));
            }
        }

        if (cycles.Count == 0 && map.Map.Find("overload-cycles") is YamlMap { Entries.Count: 0 })
        {
            map.Fault("overload-cycles", "no overload cycle", "at least one, such as `normal: {overload: 110 %, for: 60 s, every: 600 s}`, would do");
        }

        return cycles;
    }

    /// <summary>So much of the continuous current of one of the cycles.</summary>
    internal static CommonCycle? Read(MapReader? map, List<CommonCycle> cycles, Duration? lasts)
    {
        if (map is null)
        {
            return null;
        }

        var overload = map.Positive<Fraction>("overload", "per cent of a continuous current would do");
        var of = map.Text("of", "the overload cycle whose continuous current is meant would do");
        map.Done();
        if (of is not null && cycles.TrueForAll(c => !string.Equals(c.Name, of, StringComparison.Ordinal)))
        {
            map.Fault("of", $"there is no overload cycle {Quote.Of(of)}", "one of " + Quote.List(cycles.Select(c => c.Name)) + " would do");
        }

        return overload is null || of is null ? null : new CommonCycle(of, overload.Value, lasts ?? default, default);
    }
}
