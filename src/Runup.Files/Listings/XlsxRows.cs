using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Runup.Files.Listings;

/// <summary>The rows of a spreadsheet's sheet that hold anything, read one after the other.</summary>
internal static class XlsxRows
{
    private const int MostCells = 500_000;
    private const int WidestRow = 400;

    internal static List<ListingRow> Of(WorksheetPart sheet, XlsxCells cells)
    {
        var rows = new List<ListingRow>();
        var line = 0;
        var count = 0;
        foreach (var row in XlsxPart.Each<Row>(sheet))
        {
            line = row.RowIndex is { HasValue: true, Value: var told } && told > line && told <= int.MaxValue ? (int)told : line + 1;
            var texts = new List<string>();
            foreach (var cell in row.Elements<Cell>())
            {
                if (++count > MostCells)
                {
                    throw new InvalidDataException("Too many cells.");
                }

                Take(cell, texts, cells);
            }

            if (texts.Exists(t => t.Length > 0))
            {
                rows.Add(new ListingRow(line, texts));
            }
        }

        return rows;
    }

    private static void Take(Cell cell, List<string> texts, XlsxCells cells)
    {
        var column = Column(cell.CellReference?.Value) ?? texts.Count;
        if (column >= WidestRow)
        {
            return;
        }

        while (texts.Count <= column)
        {
            texts.Add("");
        }

        texts[column] = cells.Text(cell);
    }

    private static int? Column(string? reference)
    {
        var column = 0;
        foreach (var c in reference ?? "")
        {
            if (!char.IsAsciiLetterUpper(c))
            {
                break;
            }

            column = Math.Min((column * 26) + (c - 'A' + 1), WidestRow + 1);
        }

        return column > 0 ? column - 1 : null;
    }
}
