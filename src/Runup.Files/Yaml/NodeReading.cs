using System.Globalization;
using Runup.Quantities;

namespace Runup.Files.Yaml;

/// <summary>Reads a node as what a key calls for; null with a problem where it is something else.</summary>
public static class NodeReading
{
    private static readonly Choices<bool> Flags = Choices.Of(("yes", true), ("no", false), ("true", true), ("false", false));

    /// <summary>Text of one value.</summary>
    public static string? AsText(this YamlNode node, Problems problems, string wanted = "text")
    {
        if (node is YamlScalar { IsEmpty: false } scalar && scalar.Text.Trim() is { Length: > 0 } text)
        {
            return text;
        }

        problems.Add(node, node.Described, node is YamlScalar ? $"{wanted} would do, or leave the key out" : $"{wanted} would do");
        return null;
    }

    /// <summary>Yes or no.</summary>
    public static bool? AsFlag(this YamlNode node, Problems problems) => node.AsChoice(Flags, problems);

    /// <summary>A whole number within limits.</summary>
    public static int? AsWhole(this YamlNode node, int low, int high, Problems problems)
    {
        var wanted = $"a whole number from {low} to {high}";
        if (node.AsText(problems, wanted) is not { } text)
        {
            return null;
        }

        if (int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) && number >= low && number <= high)
        {
            return number;
        }

        problems.Add(node, Quote.Of(text), wanted + " would do");
        return null;
    }

    /// <summary>A pure number within limits.</summary>
    public static double? AsNumber(this YamlNode node, double low, double high, Problems problems)
    {
        var wanted = string.Create(CultureInfo.InvariantCulture, $"a number from {low} to {high}");
        if (node.AsText(problems, wanted) is not { } text)
        {
            return null;
        }

        switch (QuantityText.ReadSi(Dimension.PureNumber, text))
        {
            case Reading<double>.Value v when v.Quantity >= low && v.Quantity <= high:
                return v.Quantity;
            case Reading<double>.Problem p:
                problems.Add(node, p.Found, p.WouldDo);
                return null;
            default:
                problems.Add(node, Quote.Of(text), wanted + " would do");
                return null;
        }
    }

    /// <summary>A quantity with its unit.</summary>
    public static Reading<T>.Value? AsQuantity<T>(this YamlNode node, Problems problems)
        where T : struct, IQuantity<T>
    {
        if (node.AsText(problems, $"{T.Dimension.Name} with its unit") is not { } text)
        {
            return null;
        }

        switch (QuantityText.Read<T>(text))
        {
            case Reading<T>.Value value:
                return value;
            case Reading<T>.Problem p:
                problems.Add(node, p.Found, p.WouldDo);
                return null;
            default:
                throw new InvalidOperationException("A reading is a value or a problem.");
        }
    }

    /// <summary>A decimal number exactly as written, with a point.</summary>
    public static decimal? AsExact(this YamlNode node, Problems problems)
    {
        const string wanted = "a decimal number";
        if (node.AsText(problems, wanted) is not { } text)
        {
            return null;
        }

        if (decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number))
        {
            return number;
        }

        problems.Add(node, Quote.Of(text), wanted + ", such as `0.01`, would do");
        return null;
    }

    /// <summary>One of a list of words.</summary>
    public static T? AsChoice<T>(this YamlNode node, Choices<T> choices, Problems problems)
        where T : struct => node.TryChoice(choices, problems, out var value) ? value : null;

    /// <summary>One of a list of words, as the word itself.</summary>
    public static string? AsWord(this YamlNode node, Choices<string> choices, Problems problems) =>
        node.TryChoice(choices, problems, out var value) ? value : null;

    /// <summary>A group of keys.</summary>
    public static MapReader? AsGroup(this YamlNode node, Problems problems)
    {
        if (node is YamlMap map)
        {
            return new MapReader(map, problems);
        }

        problems.Add(node, node.Described, "a group of keys would do, indented beneath this one or in braces");
        return null;
    }

    /// <summary>The values of a list.</summary>
    public static IReadOnlyList<YamlNode>? AsList(this YamlNode node, Problems problems)
    {
        if (node is YamlList list)
        {
            return list.Items;
        }

        problems.Add(node, node.Described, "a list would do: lines that begin with `- `, or values in brackets");
        return null;
    }

    private static bool TryChoice<T>(this YamlNode node, Choices<T> choices, Problems problems, out T value)
    {
        value = default!;
        if (node is YamlScalar { IsEmpty: false } scalar && choices.TryFind(scalar.Text.Trim(), out value))
        {
            return true;
        }

        var wanted = "one of " + Quote.List(choices.Words);
        if (node.AsText(problems, wanted) is not { } text)
        {
            return false;
        }

        problems.Add(node, Quote.Of(text), Spelling.Nearest(text, choices.Words) is { } nearest
            ? $"`{nearest}` would do, if that is meant; {wanted}"
            : wanted + " would do");
        return false;
    }
}
