using Runup.Engineering.Drives;
using Runup.Files.Yaml;
using Runup.Profiles;
using Runup.Quantities;

namespace Runup.Files.Profiles;

/// <summary>Reads the sizes of a family, each with its rating and its own defaults and ranges.</summary>
internal static class SizeReader
{
    internal static List<DriveSize> Read(MapReader file, ParameterRows rows)
    {
        var ratings = RatingReader.Read(file);
        var sizes = new List<DriveSize>();
        foreach (var map in file.Groups("sizes", "a list of the sizes would do"))
        {
            var name = map.Text("size", "the make's name of the size would do");
            if (name is not null && sizes.Any(s => string.Equals(s.Name, name, StringComparison.Ordinal)))
            {
                map.Fault("size", $"the size {Quote.Of(name)} stands twice", "each size once");
            }

            var rating = Rating(map, ratings);
            var defaults = Values(map, "defaults", rows);
            var ranges = Ranges(map, rows);
            map.Done();
            if (name is not null && rating is not null)
            {
                sizes.Add(new DriveSize(name, rating) { Defaults = defaults, Ranges = ranges });
            }
        }

        if (sizes.Count == 0 && !file.Problems.Any)
        {
            file.Fault("sizes", "no sizes", "at least one would do");
        }

        return sizes;
    }

    private static DriveRating? Rating(MapReader map, IReadOnlyDictionary<string, CommonRating?> ratings)
    {
        var name = map.Text("rating", "the name of one of the `ratings` would do");
        CommonRating? common = null;
        if (name is not null && !ratings.TryGetValue(name, out common))
        {
            map.Fault("rating", $"there is no rating {Quote.Of(name)}", Spelling.Nearest(name, ratings.Keys) is { } nearest ? $"`{nearest}` would do" : "add it under `ratings`");
        }

        var power = map.Positive<ShaftPower>("power", "the motor power that the maker prints for the size would do");
        var bus = map.Positive<Capacitance>("bus", "the capacitance of the DC bus would do");
        var lowest = map.Positive<Resistance>("lowest-resistor");
        var choke = map.Quantity<Fraction>("dc-choke") ?? Fraction.FromRatio(0);
        if (choke is { Ratio: < 0 or > 1 })
        {
            map.Fault("dc-choke", "no part of the base impedance", "from `0 %` to `100 %` would do, commonly 2 to 5 %");
        }

        var losses = map.Positive<ElectricalPower>("losses");
        var currents = Currents(map, common);
        return common is null || power is null || bus is null || currents is null
            ? null
            : common.Of(power.Value, bus.Value, lowest, choke, currents) with { Losses = losses };
    }

    private static LineCurrent[]? Currents(MapReader map, CommonRating? common)
    {
        if (map.Group("currents", "the continuous current of each overload cycle would do, such as `{normal: 17 A, heavy: 13.6 A}`") is not { } group || common is null)
        {
            return null;
        }

        var before = map.Problems.Count;
        var currents = new LineCurrent[common.Cycles.Count];
        for (var i = 0; i < currents.Length; i++)
        {
            currents[i] = group.Positive<LineCurrent>(common.Cycles[i].Name, "the continuous current of this overload cycle would do") ?? default;
        }

        group.Done();
        return map.Problems.Count == before ? currents : null;
    }

    internal static Dictionary<string, long> Values(MapReader map, string key, ParameterRows rows)
    {
        var values = new Dictionary<string, long>(StringComparer.Ordinal);
        foreach (var entry in map.Group(key)?.Map.Entries ?? [])
        {
            if (rows.Row(entry) is { } row && RawNumber.OfDisplay(entry.Value, row.PerCount, map.Problems) is { } raw)
            {
                values.Add(entry.Key, raw);
            }
        }

        return values;
    }

    private static Dictionary<string, ParameterRange> Ranges(MapReader map, ParameterRows rows)
    {
        var ranges = new Dictionary<string, ParameterRange>(StringComparer.Ordinal);
        foreach (var entry in map.Group("ranges")?.Map.Entries ?? [])
        {
            if (rows.Row(entry) is { } row && entry.Value.AsGroup(map.Problems) is { } range)
            {
                var low = range.Node("low", "the lowest value would do") is { } l ? RawNumber.OfDisplay(l, row.PerCount, map.Problems) : null;
                var high = range.Node("high", "the highest value would do") is { } h ? RawNumber.OfDisplay(h, row.PerCount, map.Problems) : null;
                range.Done();
                if (low > high)
                {
                    map.Problems.Add(entry.Value, "the lowest value lies above the highest", "exchange the two");
                }
                else if (low is not null && high is not null)
                {
                    ranges.Add(entry.Key, new ParameterRange(low.Value, high.Value));
                }
            }
        }

        return ranges;
    }
}
