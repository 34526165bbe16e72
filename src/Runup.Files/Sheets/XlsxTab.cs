using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml;
using Runup.Commissioning.Sheet;

namespace Runup.Files.Sheets;

/// <summary>One tab of a spreadsheet file.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Widths">Widths of its columns, in characters.</param>
/// <param name="Header">Headings, which stay in sight and are repeated on each page of paper.</param>
/// <param name="Rows">The cells below.</param>
/// <param name="PageHeader">What stands above each page of paper.</param>
/// <param name="OnPaper">How many columns are printed.</param>
internal sealed partial record XlsxTab(string Name, IReadOnlyList<int> Widths, IReadOnlyList<string> Header, IReadOnlyList<IReadOnlyList<SheetCell>> Rows, string PageHeader, int OnPaper)
{
    private const double PointsOfLine = 14.5;

    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    /// <summary>The cells that are printed.</summary>
    internal string PrintArea => string.Create(CultureInfo.InvariantCulture, $"{Name}!$A$1:${(char)('A' + OnPaper - 1)}${Rows.Count + 1}");

    /// <summary>The tab's part of the file.</summary>
    internal void Write(XmlWriter xml, XlsxStyles styles)
    {
        xml.WriteStartElement("worksheet", Main);
        Element(xml, "sheetPr", () => Element(xml, "pageSetUpPr", ("fitToPage", "1")));
        Element(xml, "sheetViews", () => Element(xml, "sheetView", () => Element(xml, "pane", ("ySplit", "1"), ("topLeftCell", "A2"), ("activePane", "bottomLeft"), ("state", "frozen")), ("workbookViewId", "0")));
        Element(xml, "cols", () =>
        {
            for (var i = 0; i < Widths.Count; i++)
            {
                var place = Whole(i + 1);
                Element(xml, "col", ("min", place), ("max", place), ("width", Whole(Widths[i])), ("customWidth", "1"));
            }
        });
        Element(xml, "sheetData", () =>
        {
            Row(xml, 1, [.. Header.Select(h => new SheetCell.Words(h))], _ => XlsxStyles.Heading);
            for (var i = 0; i < Rows.Count; i++)
            {
                Row(xml, i + 2, Rows[i], styles.Of);
            }
        });
        Element(xml, "pageMargins", ("left", "0.4"), ("right", "0.4"), ("top", "0.7"), ("bottom", "0.6"), ("header", "0.3"), ("footer", "0.3"));
        Element(xml, "pageSetup", ("orientation", "landscape"), ("fitToWidth", "1"), ("fitToHeight", "0"));

        // An ampersand begins an order to the printer; two are one.
        Element(xml, "headerFooter", () =>
        {
            xml.WriteElementString("oddHeader", Main, $"&L{Visible(PageHeader).Replace("&", "&&", StringComparison.Ordinal)}");
            xml.WriteElementString("oddFooter", Main, "&Rpage &P of &N");
        });
        xml.WriteEndElement();
    }

    private void Row(XmlWriter xml, int number, IReadOnlyList<SheetCell> cells, Func<SheetCell, int> style) => Element(
        xml,
        "row",
        () =>
        {
            for (var i = 0; i < cells.Count; i++)
            {
                Cell(xml, Place(i, number), cells[i], style(cells[i]));
            }
        },
        ("r", Whole(number)),
        ("ht", (PointsOfLine * Lines(cells)).ToString(CultureInfo.InvariantCulture)),
        ("customHeight", "1"));

    // Not every program makes room by itself for words that wrap.
    private int Lines(IReadOnlyList<SheetCell> cells) => cells.Select((c, i) => 1 + (c.Text.Length / (Widths[i] + 1))).Max();

    private static void Cell(XmlWriter xml, string place, SheetCell cell, int style)
    {
        xml.WriteStartElement("c", Main);
        xml.WriteAttributeString("r", place);
        xml.WriteAttributeString("s", Whole(style));
        switch (cell)
        {
            case SheetCell.Number number:
                xml.WriteElementString("v", Main, number.Text);
                break;
            case SheetCell.Words { Value.Length: > 0 } words:
                xml.WriteAttributeString("t", "inlineStr");
                xml.WriteStartElement("is", Main);
                xml.WriteStartElement("t", Main);
                xml.WriteAttributeString("xml", "space", null, "preserve");
                xml.WriteString(Visible(words.Value));
                xml.WriteEndElement();
                xml.WriteEndElement();
                break;
        }

        xml.WriteEndElement();
    }

    // XML takes no control characters; and an underscore, x, four digits and an underscore would be read as one.
    private static string Visible(string text)
    {
        var visible = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            visible.Append(rune.Value > 0xFFFF || XmlConvert.IsXmlChar((char)rune.Value) ? rune.ToString() : "\uFFFD");
        }

        return LooksEscaped().Replace(visible.ToString(), "_x005F_${rest}");
    }

    private static void Element(XmlWriter xml, string name, params ReadOnlySpan<(string Name, string Value)> attributes) => Element(xml, name, () => { }, attributes);

    private static void Element(XmlWriter xml, string name, Action content, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        xml.WriteStartElement(name, Main);
        foreach (var (attribute, value) in attributes)
        {
            xml.WriteAttributeString(attribute, value);
        }

        content();
        xml.WriteEndElement();
    }

    private static string Place(int column, int row) => string.Create(CultureInfo.InvariantCulture, $"{(char)('A' + column)}{row}");

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    [GeneratedRegex("_(?<rest>x[0-9A-Fa-f]{4}_)", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex LooksEscaped();
}
