using System.Globalization;
using System.Text;

namespace Runup.Reports.Html;

/// <summary>Makes any text harmless in a page.</summary>
internal static class Escape
{
    /// <summary>Text for content and attributes of HTML and SVG. What can't be seen, or turns the direction of reading, becomes a visible mark.</summary>
    public static string Text(string text)
    {
        var escaped = new StringBuilder(text.Length + 16);
        foreach (var rune in text.EnumerateRunes())
        {
            switch (rune.Value)
            {
                case '&':
                    escaped.Append("&amp;");
                    break;
                case '<':
                    escaped.Append("&lt;");
                    break;
                case '>':
                    escaped.Append("&gt;");
                    break;
                case '"':
                    escaped.Append("&quot;");
                    break;
                case '\'':
                    escaped.Append("&#39;");
                    break;
                case '\n' or '\t':
                    escaped.Append(' ');
                    break;
                default:
                    escaped.Append(IsHarmless(rune) ? rune.ToString() : "\uFFFD");
                    break;
            }
        }

        return escaped.ToString();
    }

    /// <summary>Text inside a string of a style sheet.</summary>
    public static string Css(string text)
    {
        var escaped = new StringBuilder(text.Length + 16);
        foreach (var rune in text.EnumerateRunes())
        {
            var plain = rune.IsAscii && (Rune.IsLetterOrDigit(rune) || rune.Value is ' ' or '-' or '.');
            escaped.Append(plain ? rune.ToString() : IsHarmless(rune) ? string.Create(CultureInfo.InvariantCulture, $"\\{rune.Value:x6} ") : "\\00fffd ");
        }

        return escaped.ToString();
    }

    private static bool IsHarmless(Rune rune) => Rune.GetUnicodeCategory(rune) is not (
        UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.PrivateUse or UnicodeCategory.Surrogate or UnicodeCategory.OtherNotAssigned
        or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator);
}
