using System.Globalization;
using Runup.Files.Yaml;
using Runup.Profiles;

namespace Runup.Files.Profiles;

/// <summary>Reads the rows of a profile's parameters.</summary>
internal static class ParameterReader
{
    private static readonly Choices<string> WordOrders = Choices.Words("low-first", "high-first");

    // In the order of the access levels.
    private static readonly string[] AccessWords = ["any-time", "stopped-only", "read-only", "action", "command"];

    private static readonly Choices<string> Accesses = Choices.Words(AccessWords);

    /// <summary>The word of an access level in a profile's file.</summary>
    internal static string WordOf(ParameterAccess access) => AccessWords[(int)access];

    /// <summary>The order of words that a key gives, or null.</summary>
    internal static WordOrder? ReadWordOrder(MapReader map) => map.Word("word-order", WordOrders) switch
    {
        null => null,
        "high-first" => WordOrder.HighFirst,
        _ => WordOrder.LowFirst,
    };

    /// <summary>The number of bits that a key gives, or null.</summary>
    internal static int? ReadWidth(MapReader map)
    {
        var width = map.Whole("width", 16, 32);
        if (width is null or 16 or 32)
        {
            return width;
        }

        map.Fault("width", $"`{width}`", "`16` or `32` would do");
        return null;
    }

    internal static ParameterRows ReadGroups(MapReader file, RowDefaults defaults, ChoiceLists lists)
    {
        var rows = new ParameterRows(file.Problems);
        foreach (var group in file.Groups("groups", "`groups:` with the parameters of each menu or group would do"))
        {
            var name = group.Text("group", "the name of the menu or group would do") ?? "";
            foreach (var map in group.Groups("parameters", "a list of rows would do"))
            {
                var number = map.Text("number", "the make's number or index of the parameter would do");
                rows.Add(number, map, Read(map, number, name, defaults, lists));
            }

            group.Done();
        }

        return rows;
    }

    private static ParameterRow? Read(MapReader map, string? number, string group, RowDefaults defaults, ChoiceLists lists)
    {
        var before = map.Problems.Count;
        var name = map.Text("name", "the name on the make's list would do");
        var access = map.Word("access", Accesses) is { } word ? (ParameterAccess)Array.IndexOf(AccessWords, word) : ParameterAccess.StoppedOnly;
        var register = Register(map, number);
        var width = ReadWidth(map) ?? defaults.Width;
        var signed = map.Flag("signed") ?? defaults.Signed;
        var order = ReadWordOrder(map) ?? defaults.WordOrder;
        var isVolatile = map.Flag("volatile") ?? access is not (ParameterAccess.AnyTime or ParameterAccess.StoppedOnly);
        var needsRestart = map.Flag("needs-restart") ?? false;
        var after = map.List("after").Select(n => n.AsText(map.Problems)).OfType<string>().ToList();
        var settings = MeaningReader.Settings(map);
        var perhaps = MeaningReader.Perhaps(map);
        var (form, meaning) = FormReader.Read(map, settings, lists, isGuessed: perhaps.Count > 0);
        var below = DependentReader.Limit(map, "not-below", form);
        var above = DependentReader.Limit(map, "not-above", form);
        var resets = map.Flag("resets") ?? false;
        var (raw, from, bySize) = Default(map, form);
        map.Done();
        if (map.Problems.Count > before || number is null || name is null || register is null || form is null || raw is null)
        {
            return null;
        }

        var parameter = new Parameter
        {
            Number = number,
            Name = name,
            Group = group,
            Form = form,
            Register = register.Value,
            Width = width,
            Signed = signed,
            WordOrder = order,
            Access = access,
            Stored = !isVolatile,
            NeedsRestart = needsRestart,
            Default = raw.Value,
            DefaultFrom = from,
            NotBelow = below,
            NotAbove = above,
            Resets = resets,
            Meaning = meaning,
            Perhaps = perhaps,
            After = after,
        };
        return new ParameterRow(parameter, map.Map, bySize, map.Problems);
    }

    private static ushort? Register(MapReader map, string? number)
    {
        if (map.Whole("register", 0, ushort.MaxValue) is { } register)
        {
            return (ushort)register;
        }

        if (map.Map.Find("register") is not null || number is null)
        {
            return null;
        }

        if (ushort.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var same))
        {
            return same;
        }

        map.Fault("register", "it is missing", "the PDU address from 0 would do; only where the number is the register may it be left out");
        return null;
    }

    private static (long? Raw, Dependent? From, bool BySize) Default(MapReader map, ParameterForm? form)
    {
        var node = map.Node("default", "the factory value, or `by-size`, would do");
        return node switch
        {
            YamlScalar { Text: "by-size" } => (0, null, true),
            YamlMap group when DependentReader.Read(group, map.Problems, form) is { } from => (0, from, false),
            null or YamlMap => (null, null, false),
            _ when form is not null => (DependentReader.Value(node, form, map.Problems), null, false),
            _ => (null, null, false),
        };
    }
}
