using Runup.Engineering.Drives;
using Runup.Files.Yaml;
using Runup.Quantities;

namespace Runup.Files.Profiles;

/// <summary>What sizes of one voltage class have in common; a size adds its currents and its bus.</summary>
internal sealed record CommonRating
{
    internal required (LineVoltage Low, LineVoltage High) Supply { get; init; }

    internal required int Phases { get; init; }

    internal required IReadOnlyList<CommonCycle> Cycles { get; init; }

    internal required CommonCycle Peak { get; init; }

    internal required CommonCycle Overcurrent { get; init; }

    internal required DcVoltage OvervoltageTrip { get; init; }

    internal required DcVoltage OvervoltageControl { get; init; }

    internal required DcVoltage Chopper { get; init; }

    internal required DcVoltage UndervoltageTrip { get; init; }

    internal required IReadOnlyList<(SwitchingFrequency Frequency, Fraction Current)> Switching { get; init; }

    internal required LinearDerating<Temperature> Ambient { get; init; }

    internal required LinearDerating<Length> Altitude { get; init; }

    internal required Duration? RiseTime { get; init; }

    /// <summary>The rating of a size with its continuous currents in the order of the cycles.</summary>
    internal DriveRating Of(ShaftPower power, Capacitance bus, Resistance? lowest, Fraction choke, LineCurrent[] currents) => new()
    {
        NominalPower = power,
        SupplyVoltage = Supply,
        SupplyPhases = Phases,
        Overloads = [.. Cycles.Select((c, i) => new OverloadCycle(c.Name, currents[i], c.Overload, c.For, c.Every))],
        PeakCurrent = Times(Peak, currents),
        PeakTime = Peak.For,
        OvercurrentTrip = Times(Overcurrent, currents),
        BusCapacitance = bus,
        DcChoke = choke,
        LowestBrakingResistance = lowest,
        OvervoltageTrip = OvervoltageTrip,
        OvervoltageControl = OvervoltageControl,
        ChopperLevel = Chopper,
        UndervoltageTrip = UndervoltageTrip,
        OutputRiseTime = RiseTime,
        SwitchingDerating = Switching,
        AmbientDerating = Ambient,
        AltitudeDerating = Altitude,
    };

    private LineCurrent Times(CommonCycle overload, LineCurrent[] currents)
    {
        for (var i = 0; i < currents.Length; i++)
        {
            if (string.Equals(Cycles[i].Name, overload.Name, StringComparison.Ordinal))
            {
                return LineCurrent.FromAmperes(currents[i].Amperes * overload.Overload.Ratio);
            }
        }

        throw new InvalidOperationException("The reader refuses an overload cycle that is not there.");
    }
}

/// <summary>So much of the continuous current of a named cycle, for so long, once in so long; zero where that is not said.</summary>
internal sealed record CommonCycle(string Name, Fraction Overload, Duration For, Duration Every);

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
        var lowest = supply?.Quantity<LineVoltage>("lowest", "the lowest nominal supply voltage would do");
        var highest = supply?.Quantity<LineVoltage>("highest", "the highest nominal supply voltage would do");
        var phases = supply?.Whole("phases", 1, 3, "1 or 3 would do");
        supply?.Done();
        if (phases is 2)
        {
            supply!.Fault("phases", "`2`", "`1` or `3` would do");
        }

        var cycles = Cycles(map);
        var peak = map.Group("peak", "`{overload: 180 %, of: heavy, for: 2 s}` would do");
        var peakFor = peak?.Quantity<Duration>("for", "how long the peak may flow would do");
        var peakOverload = Overload(peak, cycles, peakFor);
        var trip = map.Group("overcurrent-trip", "`{overload: 220 %, of: heavy}` would do");
        var tripOverload = Overload(trip, cycles, null);
        var overvoltage = map.Quantity<DcVoltage>("overvoltage-trip", "the DC bus voltage at which it trips would do");
        var control = map.Quantity<DcVoltage>("overvoltage-control", "the DC bus voltage at which deceleration is stretched would do");
        var chopper = map.Quantity<DcVoltage>("chopper", "the DC bus voltage at which the chopper switches on would do");
        var undervoltage = map.Quantity<DcVoltage>("undervoltage-trip", "the DC bus voltage at which it trips would do");
        var switching = Switching(map);
        var ambient = Derating<Temperature>(map, "ambient-derating", "1 K");
        var altitude = Derating<Length>(map, "altitude-derating", "100 m");
        var rise = map.Quantity<Duration>("rise-time");
        map.Done();
        if (lowest is { } low && highest is { } high && low.Volts > high.Volts)
        {
            supply!.Fault("lowest", "it lies above the highest", "exchange the two");
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
        };
    }

    private static List<CommonCycle> Cycles(MapReader map)
    {
        var cycles = new List<CommonCycle>();
        foreach (var entry in map.Group("overload-cycles", "`normal: {overload: 110 %, for: 60 s, every: 600 s}` would do")?.Map.Entries ?? [])
        {
            if (entry.Value.AsGroup(map.Problems) is not { } cycle)
            {
                continue;
            }

            var overload = cycle.Quantity<Fraction>("overload", "the overload current in per cent of the continuous one would do");
            var lasts = cycle.Quantity<Duration>("for", "how long would do");
            var every = cycle.Quantity<Duration>("every", "once in how long would do");
            cycle.Done();
            if (overload is not null && lasts is not null && every is not null)
            {
                cycles.Add(new CommonCycle(entry.Key, overload.Value, lasts.Value, every.Value));
            }
        }

        return cycles;
    }

    private static CommonCycle? Overload(MapReader? map, List<CommonCycle> cycles, Duration? lasts)
    {
        if (map is null)
        {
            return null;
        }

        var overload = map.Quantity<Fraction>("overload", "per cent of a continuous current would do");
        var of = map.Text("of", "the overload cycle whose continuous current is meant would do");
        map.Done();
        if (of is not null && cycles.TrueForAll(c => !string.Equals(c.Name, of, StringComparison.Ordinal)))
        {
            map.Fault("of", $"there is no overload cycle {Quote.Of(of)}", "one of " + Quote.List(cycles.Select(c => c.Name)) + " would do");
        }

        return overload is null || of is null ? null : new CommonCycle(of, overload.Value, lasts ?? default, default);
    }

    private static (SwitchingFrequency Frequency, Fraction Current)[] Switching(MapReader map)
    {
        var entries = map.Group("switching-derating", "`{2 kHz: 100 %, 4 kHz: 100 %, 8 kHz: 85 %}` would do")?.Map.Entries ?? [];
        var points = new (SwitchingFrequency Frequency, Fraction Current)[entries.Count];
        for (var i = 0; i < points.Length; i++)
        {
            var node = entries[i].Value;
            if (QuantityText.Read<SwitchingFrequency>(entries[i].Key) is not Reading<SwitchingFrequency>.Value at)
            {
                map.Problems.Add(node.KeyPlace, node.KeyPath, $"{Quote.Of(entries[i].Key)} is not a frequency", "a frequency such as `4 kHz` would do");
            }
            else if (node.AsQuantity<Fraction>(map.Problems) is { } current)
            {
                points[i] = (at.Quantity, current.Quantity);
                if (i > 0 && points[i].Frequency.Hertz <= points[i - 1].Frequency.Hertz)
                {
                    map.Problems.Add(node.KeyPlace, node.KeyPath, "a frequency that is not above the one before", "from the lowest to the highest, each once");
                }
            }
        }

        if (points.Length == 0 && map.Map.Find("switching-derating") is YamlMap)
        {
            map.Fault("switching-derating", "no frequency", "at least one, such as `4 kHz: 100 %`, would do");
        }

        return points;
    }

    private static LinearDerating<T>? Derating<T>(MapReader map, string key, string per)
        where T : struct, IQuantity<T>
    {
        if (map.Group(key, $"`{{full-up-to: ..., loss: 1 %, per: {per}, highest: ...}}` would do") is not { } group)
        {
            return null;
        }

        var full = group.Quantity<T>("full-up-to", "up to where the full current may flow would do");
        var loss = group.Quantity<Fraction>("loss", "how much less current would do");
        var step = group.Quantity<T>("per", $"for how much more, such as `{per}`, would do");
        var highest = group.Quantity<T>("highest", "the highest permitted would do");
        group.Done();
        if (step is { Si: <= 0 })
        {
            group.Fault("per", "a step of nothing", $"`{per}` would do");
            return null;
        }

        return full is null || loss is null || step is null || highest is null ? null : new LinearDerating<T>(full.Value, loss.Value.Ratio / step.Value.Si, highest.Value);
    }
}
