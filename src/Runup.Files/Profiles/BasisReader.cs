using System.Globalization;
using Runup.Files.Yaml;
using Runup.Profiles;

namespace Runup.Files.Profiles;

/// <summary>Reads what a part is a part of, or what a ramp counts to: a parameter's number, a quantity with its unit, or the size's current.</summary>
internal static class BasisReader
{
    internal static Basis? Read(YamlNode node, Problems problems)
    {
        if (node is YamlMap map)
        {
            var reader = new MapReader(map, problems);
            var cycle = reader.Text("current", "the overload cycle of the size's current, as in `{current: normal}`, would do");
            reader.Done();
            return cycle is null ? null : new Basis.SizeCurrent(cycle);
        }

        return node.AsText(problems, "a parameter's number, a quantity such as `50 Hz`, or `{current: normal}`") is { } text ? Quantity(text) is { } always ? always : new Basis.Of(text) : (Basis?)null;
    }

    // A number of a parameter has no unit behind it.
    private static Basis.Always? Quantity(string text) =>
        text.Split(' ', 2) is [var digits, var symbol]
        && double.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value)
        && symbol.Length > 0 && ProfileUnit.Find(symbol) is { } found
            ? new Basis.Always(found.Unit.ToSi(value), found.Dimension, text)
            : null;
}
