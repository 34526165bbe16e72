using Runup.Files.Yaml;
using Runup.Profiles;

namespace Runup.Files.Profiles;

/// <summary>Reads the conversion that a row declares: at most one.</summary>
internal static class ConversionReader
{
    /// <summary>The keys that declare a conversion.</summary>
    internal static IReadOnlyList<string> Keys { get; } = ["counted-over", "part-of", "absolute-of", "at-no-slip", "speed-change-in", "change-of"];

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

    private static Conversion? Of(MapReader map, string key, YamlNode node)
    {
        if (key is "at-no-slip")
        {
            var flag = node.AsFlag(map.Problems);
            return flag is null ? null : flag.Value ? Conversion.NoSlipSpeed.Instance : Conversion.Direct.Instance;
        }

        return node.AsText(map.Problems, "a parameter's number") is not { } number ? null : key switch
        {
            "counted-over" => new Conversion.CountedOver(number),
            "part-of" => new Conversion.PartOf(number),
            "absolute-of" => new Conversion.Absolute(number),
            "speed-change-in" => new Conversion.SpeedChange(number),
            "change-of" => new Conversion.ChangeTime(number),
            _ => throw new InvalidOperationException("Every key is told apart."),
        };
    }
}
