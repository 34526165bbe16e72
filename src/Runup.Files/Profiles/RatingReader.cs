using Runup.Files.Yaml;
using Runup.Quantities;

namespace Runup.Files.Profiles;

/// <summary>Reads the ratings that sizes share.</summary>
internal static class RatingReader
{
    internal static IReadOnlyDictionary<string, CommonRating?> Read(MapReader file)
    {
        var ratings = new Dictionary<string, CommonRating?>(StringComparer.Ordinal);
        foreach (var entry in file.Group("ratings", "the ratings that sizes share would do")?.Map.Entries ?? [])
        {
            ratings.Add(entry.Key, entry.Value.AsGroup(file.Problems) is { } map ? ReadOne(map) : null);
        }

        return ratings;
    }

    private static CommonRating? ReadOne(MapReader map)
    {
        var before = map.Problems.Count;
        var supply = map.Group("supply", "`{lowest: 380 V, highest: 480 V, phases: 3}` would do");
        var lowest = supply?.Positive<LineVoltage>("lowest", "the lowest nominal supply voltage would do");
        var highest = supply?.Positive<LineVoltage>("highest", "the highest nominal supply voltage would do");
        var phases = supply?.Whole("phases", 1, 3, "1 or 3 would do");
        supply?.Done();
        if (phases is 2)
        {
            supply!.Fault("phases", "`2`", "`1` or `3` would do");
        }

        var cycles = OverloadReader.ReadAll(map);
        var peak = map.Group("peak", "`{overload: 180 %, of: heavy, for: 2 s}` would do");
        var peakFor = peak?.Positive<Duration>("for", "how long the peak may flow would do");
        var peakOverload = OverloadReader.Read(peak, cycles, peakFor);
        var trip = map.Group("overcurrent-trip", "`{overload: 220 %, of: heavy}` would do");
        var tripOverload = OverloadReader.Read(trip, cycles, null);
        var overvoltage = map.Positive<DcVoltage>("overvoltage-trip", "the DC bus voltage at which it trips would do");
        var control = map.Positive<DcVoltage>("overvoltage-control", "the DC bus voltage at which deceleration is stretched would do");
        var chopper = map.Positive<DcVoltage>("chopper", "the DC bus voltage at which the chopper switches on would do");
        var undervoltage = map.Positive<DcVoltage>("undervoltage-trip", "the DC bus voltage at which it trips would do");
        var switching = DeratingReader.Switching(map);
        var ambient = DeratingReader.Linear<Temperature>(map, "ambient-derating", "1 K");
        var altitude = DeratingReader.Linear<Length>(map, "altitude-derating", "100 m");
        var rise = map.Positive<Duration>("rise-time");
        var shortCircuit = map.Positive<LineCurrent>("short-circuit-rating");
        map.Done();
        if (lowest is { } low && highest is { } high && low.Volts > high.Volts)
        {
            supply!.Fault("lowest", "it lies above the highest", "exchange the two");
        }

        if (map.Problems.Count == before)
        {
            Ascend(map, "undervoltage-trip", undervoltage!.Value, "chopper", chopper!.Value);
            Ascend(map, "chopper", chopper.Value, "overvoltage-trip", overvoltage!.Value);
            Ascend(map, "undervoltage-trip", undervoltage.Value, "overvoltage-control", control!.Value);
            Ascend(map, "overvoltage-control", control.Value, "overvoltage-trip", overvoltage.Value);
        }

        return map.Problems.Count > before ? null : new CommonRating
        {
            Supply = (lowest!.Value, highest!.Value),
            Phases = phases!.Value,
            Cycles = cycles,
            Peak = peakOverload!,
            Overcurrent = tripOverload!,
            OvervoltageTrip = overvoltage!.Value,
            OvervoltageControl = control!.Value,
            Chopper = chopper!.Value,
            UndervoltageTrip = undervoltage!.Value,
            Switching = switching,
            Ambient = ambient!,
            Altitude = altitude!,
            RiseTime = rise,
            ShortCircuit = shortCircuit,
        };
    }

    private static void Ascend(MapReader map, string lowKey, DcVoltage low, string highKey, DcVoltage high)
    {
        if (low.Volts >= high.Volts)
        {
            map.Fault(highKey, $"{high}, which is not above `{lowKey}`, {low}", "the DC bus trips low below, and high above, where it is controlled");
        }
    }
}
