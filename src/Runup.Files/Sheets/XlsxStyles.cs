using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Spreadsheet;
using Runup.Commissioning.Sheet;

namespace Runup.Files.Sheets;

/// <summary>How cells look: a heading, words that wrap, and numbers with as many decimals as their display shows.</summary>
internal sealed class XlsxStyles
{
    /// <summary>Number of the style of headings.</summary>
    internal const uint Heading = 1;

    private const uint Words = 2;
    private const uint FirstNumber = 3;

    // The standard's own format for words; ours begin above those that belong to it.
    private const uint AsWords = 49;
    private const uint FirstFormat = 164;

    private const uint Ruled = 1;
    private const uint Bold = 1;
    private readonly uint most;

    /// <summary>The styles that some cells need.</summary>
    internal XlsxStyles(IEnumerable<SheetCell> cells) => most = cells.OfType<SheetCell.Number>().Select(n => (uint)n.Value.Scale).DefaultIfEmpty(0U).Max();

    private IEnumerable<uint> Decimals => Enumerable.Range(0, (int)most + 1).Select(d => (uint)d);

    /// <summary>Number of a cell's style.</summary>
    internal uint Of(SheetCell cell) => cell is SheetCell.Number number ? FirstNumber + number.Value.Scale : Words;

    /// <summary>The styles' part of the file.</summary>
    internal Stylesheet Write() => new(
        new NumberingFormats(Decimals.Select(d => new NumberingFormat { NumberFormatId = FirstFormat + d, FormatCode = d == 0 ? "0" : "0." + new string('0', (int)d) })),
        new Fonts(Arial(), Arial(new Bold())),
        new Fills(Fill(PatternValues.None), Fill(PatternValues.Gray125)),
        new Borders(new Border(), new Border(new LeftBorder(), new RightBorder(), new TopBorder(), new BottomBorder { Style = BorderStyleValues.Thin })),
        new CellStyleFormats(new CellFormat()),
        new CellFormats(
            [
                new CellFormat { FormatId = 0 },
                new CellFormat { FormatId = 0, FontId = Bold, BorderId = Ruled, ApplyFont = true, ApplyBorder = true },
                Beneath(AsWords, new Alignment { Horizontal = HorizontalAlignmentValues.Left, Vertical = VerticalAlignmentValues.Top, WrapText = true, Indent = 1 }),
                .. Decimals.Select(d => Beneath(FirstFormat + d, new Alignment { Horizontal = HorizontalAlignmentValues.Right, Vertical = VerticalAlignmentValues.Top })),
            ]));

    private static CellFormat Beneath(uint format, Alignment alignment) =>
        new(alignment) { FormatId = 0, NumberFormatId = format, BorderId = Ruled, ApplyNumberFormat = true, ApplyBorder = true, ApplyAlignment = true };

    private static Font Arial(params IEnumerable<OpenXmlElement> before) => new([.. before, new FontSize { Val = 11 }, new FontName { Val = "Arial" }]);

    private static Fill Fill(PatternValues pattern) => new(new PatternFill { PatternType = pattern });
}
