using System.IO.Compression;
using System.Xml;

namespace Runup.Files.Listings;

/// <summary>Reads a table of an Office Open XML spreadsheet as its cells show it: numbers with the decimals of their format.</summary>
/// <remarks>
/// By hand, since the decimals are what tells a parameter's resolution, and readers for data give the bare number. Of cells that
/// are merged, the first holds the text, as in the file.
/// </remarks>
internal static class XlsxGrid
{
    private const int MostSheets = 100;

    /// <summary>The fullest sheet, or the one of a name; null with problems where it is no spreadsheet.</summary>
    internal static ListingGrid? Read(ReadOnlyMemory<byte> bytes, string? sheet, Problems problems)
    {
        try
        {
            using var stream = new MemoryStream(bytes.ToArray(), writable: false);
            using var archive = new ZipArchive(stream, ZipArchiveMode.Read);
            var book = new XlsxBook(archive);
            var sheets = book.Sheets().Take(MostSheets).ToList();
            var wanted = sheet is null ? sheets : [.. sheets.Where(s => string.Equals(s.Name, sheet, StringComparison.OrdinalIgnoreCase))];
            if (wanted.Count == 0)
            {
                problems.AddForFile(sheet is null ? "it has no sheets" : $"there is no sheet {Quote.Of(sheet)}", sheets.Count == 0 ? "a spreadsheet with a table would do" : Quote.List(sheets.Select(s => s.Name)) + " would do");
                return null;
            }

            var words = book.SharedStrings();
            var formats = book.Decimals();
            return wanted.Select(s => new ListingGrid(book.Rows(s.Path, words, formats))).MaxBy(g => g.Rows.Sum(r => r.Filled.Count));
        }
        catch (Exception e) when (e is InvalidDataException or XmlException or IOException or FormatException or NotSupportedException or OverflowException)
        {
            problems.AddForFile("it can't be read as a spreadsheet", "save it again as .xlsx, or as .csv; an older .xls is not read");
            return null;
        }
    }
}
