using System.Text;
using System.Text.Json.Nodes;
using Runup.Quantities;

namespace Runup.Files.Jobs.Keys;

/// <summary>Regular expressions (ECMA-262, as JSON Schema asks) that let an editor underline what is no quantity.</summary>
/// <remarks>They take every listed spelling; the reader takes more, such as other dots and cases, and knows what is ambiguous.</remarks>
internal static class QuantityPattern
{
    private const string Number = "[+−-]?[0-9.,][0-9.,' ]*([eE][+-]?[0-9]+)?";
    private const string Fraction = "([0-9]+[ -])?[0-9]+/[0-9]+";
    private const string Gauge = "(#?[0-9]+(/0)? ?AWG|AWG ?[0-9]+(/0)?)";

    internal static string For(Dimension dimension)
    {
        if (dimension == Dimension.PureNumber)
        {
            return $"^{Number}$";
        }

        var spellings = dimension.Units.SelectMany(u => u.Spellings.Prepend(u.Symbol)).Distinct(StringComparer.Ordinal).Select(Escape);
        var quantity = $"({Number}|{Fraction}) ?({string.Join('|', spellings)})";
        return dimension == Dimension.Area ? $"^({quantity}|{Gauge})$" : $"^{quantity}$";
    }

    /// <summary>The definition of a dimension's texts.</summary>
    internal static JsonObject Definition(Dimension dimension)
    {
        var text = new JsonObject { ["type"] = "string", ["pattern"] = For(dimension) };
        return dimension == Dimension.PureNumber
            ? new JsonObject { ["anyOf"] = new JsonArray(new JsonObject { ["type"] = "number" }, text) }
            : text;
    }

    private static string Escape(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            if (c is '\\' or '^' or '$' or '.' or '*' or '+' or '?' or '(' or ')' or '[' or ']' or '{' or '}' or '|' or '/')
            {
                escaped.Append('\\');
            }

            escaped.Append(c);
        }

        return escaped.ToString();
    }
}
