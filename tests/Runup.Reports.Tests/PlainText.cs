using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Runup.Reports.Tests;

/// <summary>A page as the text that a reader sees, a line for each block, plots left out.</summary>
internal static partial class PlainText
{
    private static readonly IReadOnlySet<string> Blocks = new HashSet<string>(["h1", "h2", "h3", "p", "tr", "li", "dt", "dd", "figcaption"], StringComparer.Ordinal);

    public static XElement Parse(string page) => XElement.Parse(page.Replace("<!DOCTYPE html>\n", string.Empty, StringComparison.Ordinal));

    public static string Of(string page) =>
        string.Join('\n', Parse(page).Element("body")!.Descendants().Where(e => Blocks.Contains(e.Name.LocalName)).Select(Line).Where(line => line.Length > 0)) + "\n";

    private static string Line(XElement block)
    {
        var cells = block.Elements().Where(e => e.Name.LocalName is "td" or "th").ToList();
        return cells.Count == 0 ? Text(block) : string.Join(" | ", cells.Select(Text)).TrimEnd(' ', '|');
    }

    private static string Text(XElement element) =>
        Blanks().Replace(string.Concat(element.DescendantNodes().Where(n => n is XText or XElement { Name.LocalName: "br" or "small" }).Select(n => n is XText t ? t.Value : " ")), " ").Trim();

    [GeneratedRegex("\\s+", RegexOptions.None, 1000)]
    private static partial Regex Blanks();
}
