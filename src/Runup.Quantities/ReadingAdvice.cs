using System.Globalization;

namespace Runup.Quantities;

/// <summary>Words what is wrong with a quantity, and what would do.</summary>
internal static class ReadingAdvice
{
    /// <summary>What a dimension asks for.</summary>
    internal static string For(Dimension dimension) => dimension == Dimension.PureNumber
        ? "a number without a unit would do"
        : $"a number with {Units(dimension)} would do";

    /// <summary>What would do in place of a number that is none.</summary>
    internal static string For(Dimension dimension, NumberFault fault) =>
        fault == NumberFault.TwoValues ? "write the one in use" : For(dimension);

    /// <summary>What was found in place of a number.</summary>
    internal static string Explain(NumberFault fault, string written) => fault switch
    {
        NumberFault.None => $"`{written}` does not begin with a number",
        NumberFault.Malformed => $"the points and commas of `{written}` make no number",
        NumberFault.TooLarge => $"`{written}` is beyond all measure",
        NumberFault.TwoValues => $"`{written}` holds two values",
        _ => $"`{written}` can be read in two ways",
    };

    /// <summary>A unit is missing, belongs to something else, or is unknown.</summary>
    internal static Reading<double>.Problem NoSuchUnit(Dimension dimension, string written, string symbol)
    {
        if (symbol.Length == 0)
        {
            return new($"`{written}` has no unit", $"{Units(dimension)} would do");
        }

        if (UnitText.OtherDimension(dimension, symbol) is { } other)
        {
            return new($"`{written}` is {WithArticle(other.Name)}", dimension == Dimension.PureNumber
                ? For(dimension)
                : $"{WithArticle(dimension.Name)} is wanted here: {Units(dimension)} would do");
        }

        return new($"`{symbol}` is no unit of {dimension.Name}", UnitText.Nearest(dimension, symbol) is { } nearest
            ? $"`{nearest}` would do, if that is meant, or another of {Units(dimension)}"
            : dimension == Dimension.PureNumber ? For(dimension) : $"{Units(dimension)} would do");
    }

    /// <summary>Both readings of an ambiguous number, as the person may write them without doubt.</summary>
    internal static Reading<double>.Problem Ask(string written, NumberText number, string symbol)
    {
        var larger = Clear(number.Other, symbol);
        var smaller = Clear(number.Value, symbol);
        return new($"`{written}` can be {larger} or {smaller}", $"which is meant? Write `{larger}` or `{smaller}`");
    }

    private static string Clear(double value, string symbol) =>
        string.Create(CultureInfo.InvariantCulture, $"{value:0.###} {symbol}").TrimEnd();

    private static string Units(Dimension dimension)
    {
        var symbols = dimension.Units.Select(u => u.Symbol).ToList();
        if (dimension == Dimension.Area)
        {
            symbols.Insert(1, WireGauge.Unit.Symbol);
        }

        return symbols.Count == 1 ? symbols[0] : string.Join(", ", symbols.SkipLast(1)) + " or " + symbols[^1];
    }

    private static string WithArticle(string name) => (name[0] is 'a' or 'e' or 'i' or 'o' or 'u' ? "an " : "a ") + name;
}
