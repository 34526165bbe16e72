using Runup.Files.Yaml;
using Runup.Profiles;

namespace Runup.Files.Profiles;

/// <summary>Reads the conversion that a row declares: at most one.</summary>
internal static class ConversionReader
{
    /// <summary>The keys that declare a conversion.</summary>
    internal static IReadOnlyList<string> Keys { get; } = ["counted-over", "part-of", "absolute-of", "at-no-slip", "below-synchronous", "of-rated-slip", "speed-change-in", "change-of"];

    /// <summary>The conversion, direct where none is declared; null with a problem where it is wrong.</summary>
    internal static Conversion? Read(MapReader map)
    {
        Conversion? declared = null;
        foreach (var key in Keys)
        {
            if (map.Node(key) is not { } node)
            {
                continue;
            }

            if (declared is not null)
            {
                map.Fault(key, $"a second conversion beside `{ConversionNames.Key(declared)}`", "one of the two would do");
                return null;
            }

            if (Of(map, key, node) is not { } conversion)
            {
                return null;
            }

            declared = conversion;
        }

        return declared ?? Conversion.Direct.Instance;
    }

    /// <summary>The keys that are answered with yes.</summary>
    internal static bool IsFlag(string key) => Flagged(key) is not null;

    private static Conversion? Flagged(string key) => key switch
    {
        "at-no-slip" => Conversion.NoSlipSpeed.Instance,
        "below-synchronous" => Conversion.BelowSynchronous.Instance,
        "of-rated-slip" => Conversion.OfRatedSlip.Instance,
        _ => null,
    };

    private static Conversion? Of(MapReader map, string key, YamlNode node)
    {
        if (Flagged(key) is { } flagged)
        {
            var flag = node.AsFlag(map.Problems);
            return flag is null ? null : flag.Value ? flagged : Conversion.Direct.Instance;
        }

        if (key is "speed-change-in" or "change-of")
        {
            return node.AsText(map.Problems, "a parameter's number") is not { } number ? null : key is "change-of" ? new Conversion.ChangeTime(number) : new Conversion.SpeedChange(number);
        }

        return BasisReader.Read(node, map.Problems) is not { } basis ? null : key switch
        {
            "counted-over" => new Conversion.CountedOver(basis),
            "part-of" => new Conversion.PartOf(basis),
            "absolute-of" => new Conversion.Absolute(basis),
            _ => throw new InvalidOperationException("Every key is told apart."),
        };
    }
}
