using System.Globalization;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Runup.Files.Listings;

/// <summary>What a spreadsheet's cells show: shared words, and numbers with the decimals of their format.</summary>
internal sealed class XlsxCells
{
    private const int LongestCell = 4000;

    private readonly List<string> words;
    private readonly XlsxFormats formats;

    internal XlsxCells(WorkbookPart book)
    {
        words = [.. XlsxPart.Each<SharedStringItem>(book.SharedStringTablePart).Select(Words)];
        formats = new XlsxFormats(book.WorkbookStylesPart);
    }

    internal string Text(Cell cell)
    {
        var text = Shown(cell);
        return (text.Length > LongestCell ? text[..LongestCell] : text).Trim();
    }

    private string Shown(Cell cell)
    {
        var value = cell.CellValue?.Text ?? "";
        var kind = cell.DataType is { HasValue: true } type ? type.Value : CellValues.Number;
        return kind == CellValues.SharedString ? int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var place) && place < words.Count ? words[place] : ""
            : kind == CellValues.InlineString ? cell.InlineString is { } own ? Words(own) : ""
            : kind == CellValues.Boolean ? value is "1" ? "yes" : "no"
            : kind == CellValues.Error ? ""
            : kind == CellValues.Number ? Number(value, formats.Of(cell.StyleIndex?.HasValue is true ? cell.StyleIndex.Value : 0))
            : value;
    }

    private static string Number(string value, CellFormat format)
    {
        if (format is CellFormat.Date && value.Length > 0)
        {
            return $"(a date: {value})";
        }

        if (!decimal.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number))
        {
            return value;
        }

        // Binary fractions come with the noise of their last digits.
        return format is CellFormat.Decimals shown
            ? number.ToString("F" + shown.Count.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)
            : decimal.Round(number, 9).ToString("0.#########", CultureInfo.InvariantCulture);
    }

    // Runs of a rich text follow one another; what is said of its pronunciation does not belong to it.
    private static string Words(OpenXmlCompositeElement item) =>
        string.Concat(item.ChildElements.Select(e => e switch { Text text => text.Text, Run run => run.Text?.Text ?? "", _ => "" }));
}
