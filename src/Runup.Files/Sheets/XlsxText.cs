using System.Text;
using System.Text.RegularExpressions;
using System.Xml;

namespace Runup.Files.Sheets;

/// <summary>Words as a spreadsheet file can hold them.</summary>
internal static partial class XlsxText
{
    /// <summary>The words, with a visible mark for each character that XML does not take.</summary>
    internal static string Visible(string text)
    {
        var visible = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            visible.Append(rune.Value > 0xFFFF || XmlConvert.IsXmlChar((char)rune.Value) ? rune.ToString() : "\uFFFD");
        }

        // An underscore, x, four digits and an underscore would be read as the character of that number.
        return LooksEscaped().Replace(visible.ToString(), "_x005F_${rest}");
    }

    [GeneratedRegex("_(?<rest>x[0-9A-Fa-f]{4}_)", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex LooksEscaped();
}
