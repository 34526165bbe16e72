using System.Globalization;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Spreadsheet;
using Runup.Commissioning.Sheet;

namespace Runup.Files.Sheets;

/// <summary>One tab of a spreadsheet file.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Widths">Widths of its columns, in characters.</param>
/// <param name="Header">Headings, which stay in sight and are repeated on each page of paper.</param>
/// <param name="Rows">The cells below.</param>
/// <param name="PageHeader">What stands above each page of paper.</param>
/// <param name="OnPaper">How many columns are printed.</param>
internal sealed record XlsxTab(string Name, IReadOnlyList<int> Widths, IReadOnlyList<string> Header, IReadOnlyList<IReadOnlyList<SheetCell>> Rows, string PageHeader, int OnPaper)
{
    private const double PointsOfLine = 14.5;

    /// <summary>The cells that are printed.</summary>
    internal string PrintArea => string.Create(CultureInfo.InvariantCulture, $"{Name}!$A$1:${(char)('A' + OnPaper - 1)}${Rows.Count + 1}");

    /// <summary>The tab's part of the file.</summary>
    internal Worksheet Write(XlsxStyles styles) => new(
        new SheetProperties(new PageSetupProperties { FitToPage = true }),
        new SheetViews(new SheetView(new Pane { VerticalSplit = 1, TopLeftCell = "A2", ActivePane = PaneValues.BottomLeft, State = PaneStateValues.Frozen }) { WorkbookViewId = 0 }),
        new Columns(Widths.Select((w, i) => new Column { Min = (uint)i + 1, Max = (uint)i + 1, Width = w, CustomWidth = true })),
        new SheetData([Row(0, [.. Header.Select(h => new SheetCell.Words(h))], _ => XlsxStyles.Heading), .. Rows.Select((r, i) => Row(i + 1, r, styles.Of))]),
        new PageMargins { Left = 0.4, Right = 0.4, Top = 0.7, Bottom = 0.6, Header = 0.3, Footer = 0.3 },
        new PageSetup { Orientation = OrientationValues.Landscape, FitToWidth = 1, FitToHeight = 0 },

        // An ampersand begins an order to the printer; two are one.
        new HeaderFooter(
            new OddHeader($"&L{XlsxText.Visible(PageHeader).Replace("&", "&&", StringComparison.Ordinal)}"),
            new OddFooter("&Rpage &P of &N")));

    private Row Row(int above, IReadOnlyList<SheetCell> cells, Func<SheetCell, uint> style) =>
        new(cells.Select((c, i) => Cell(Place(i, above), c, style(c)))) { RowIndex = (uint)above + 1, Height = PointsOfLine * Lines(cells), CustomHeight = true };

    // Not every program makes room by itself for words that wrap.
    private int Lines(IReadOnlyList<SheetCell> cells) => cells.Select((c, i) => 1 + (c.Text.Length / (Widths[i] + 1))).Max();

    private static Cell Cell(string place, SheetCell cell, uint style) => cell switch
    {
        SheetCell.Number number => new(new CellValue(number.Text)) { CellReference = place, StyleIndex = style },
        SheetCell.Words { Value.Length: > 0 } words => new(new InlineString(new Text(XlsxText.Visible(words.Value)) { Space = SpaceProcessingModeValues.Preserve }))
        {
            CellReference = place,
            StyleIndex = style,
            DataType = CellValues.InlineString,
        },
        _ => new() { CellReference = place, StyleIndex = style },
    };

    private static string Place(int column, int above) => string.Create(CultureInfo.InvariantCulture, $"{(char)('A' + column)}{above + 1}");
}
