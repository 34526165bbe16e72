using Runup.Engineering.Drives;
using Runup.Files.Yaml;
using Runup.Quantities;

namespace Runup.Files.Profiles;

/// <summary>Reads by how much the continuous current is reduced.</summary>
internal static class DeratingReader
{
    /// <summary>Continuous current against switching frequency.</summary>
    internal static (SwitchingFrequency Frequency, Fraction Current)[] Switching(MapReader map)
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
                if (current.Quantity.Ratio is <= 0 or > 1)
                {
                    map.Problems.Add(node, Quote.Of(((YamlScalar)node).Text), "more than 0 % and at most 100 % of the continuous current would do");
                }

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

    /// <summary>Reduction of current beyond a limit.</summary>
    internal static LinearDerating<T>? Linear<T>(MapReader map, string key, string per)
        where T : struct, IQuantity<T>
    {
        if (map.Group(key, $"`{{full-up-to: ..., loss: 1 %, per: {per}, highest: ...}}` would do") is not { } group)
        {
            return null;
        }

        var full = group.Quantity<T>("full-up-to", "up to where the full current may flow would do");
        var loss = group.Quantity<Fraction>("loss", "how much less current would do");
        var step = group.Positive<T>("per", $"for how much more, such as `{per}`, would do");
        var highest = group.Quantity<T>("highest", "the highest permitted would do");
        group.Done();
        if (loss is { Ratio: < 0 })
        {
            group.Fault("loss", "less than nothing", "so many per cent less would do, `0 %` for none");
            return null;
        }

        return full is null || loss is null || step is null || highest is null ? null : new LinearDerating<T>(full.Value, loss.Value.Ratio / step.Value.Si, highest.Value);
    }
}
