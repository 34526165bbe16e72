using System.IO.Compression;
using System.Xml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Runup.Files.Listings;

/// <summary>Reads a table of an Office Open XML spreadsheet as its cells show it: numbers with the decimals of their format.</summary>
/// <remarks>Of cells that are merged, the first holds the text, as in the file.</remarks>
internal static class XlsxGrid
{
    private const int MostSheets = 100;
    private const int MostParts = 4000;
    private const long LongestList = 1024 * 1024;
    private const long LongestPart = 64L * 1024 * 1024;

    /// <summary>The fullest sheet, or the one of a name; null with problems where it is no spreadsheet.</summary>
    internal static ListingGrid? Read(ReadOnlyMemory<byte> bytes, string? sheet, Problems problems)
    {
        try
        {
            using var stream = new MemoryStream(bytes.ToArray(), writable: false);
            if (!IsOrdinary(stream))
            {
                return None(problems);
            }

            using var document = SpreadsheetDocument.Open(stream, isEditable: false);
            return document.WorkbookPart is { } book ? Read(book, sheet, problems) : None(problems);
        }
        catch (Exception e) when (e is OpenXmlPackageException or IOException or XmlException or InvalidDataException or FormatException or InvalidOperationException or ArgumentException or NotSupportedException or OverflowException)
        {
            // The library answers what is no spreadsheet, or a broken one, with any of these.
            return None(problems);
        }
    }

    // What the library reads before any part: its list of parts and their links.
    private static bool IsOrdinary(MemoryStream stream)
    {
        using var zip = new ZipArchive(stream, ZipArchiveMode.Read, leaveOpen: true);
        return zip.Entries.Count <= MostParts && zip.Entries.All(e => e.Length <= (e.Name.EndsWith(".rels", StringComparison.OrdinalIgnoreCase) || e.Name.StartsWith('[') ? LongestList : LongestPart));
    }

    private static ListingGrid? None(Problems problems)
    {
        problems.AddForFile("it can't be read as a spreadsheet", "save it again as .xlsx, or as .csv; an older .xls is not read");
        return null;
    }

    private static ListingGrid? Read(WorkbookPart book, string? name, Problems problems)
    {
        var sheets = Sheets(book);
        var wanted = name is null ? sheets : [.. sheets.Where(s => string.Equals(s.Name, name, StringComparison.OrdinalIgnoreCase))];
        if (wanted.Count == 0)
        {
            problems.AddForFile(name is null ? "it has no sheets" : $"there is no sheet {Quote.Of(name)}", sheets.Count == 0 ? "a spreadsheet with a table would do" : Quote.List(sheets.Select(s => s.Name)) + " would do");
            return null;
        }

        var cells = new XlsxCells(book);
        return wanted.Select(s => new ListingGrid(XlsxRows.Of(s.Part, cells))).MaxBy(g => g.Rows.Sum(r => r.Filled.Count));
    }

    private static List<(string Name, WorksheetPart Part)> Sheets(WorkbookPart book)
    {
        var sheets = new List<(string, WorksheetPart)>();
        foreach (var sheet in XlsxPart.Each<Sheet>(book).Take(MostSheets))
        {
            if (sheet.Id?.Value is { } id && book.TryGetPartById(id, out var part) && part is WorksheetPart worksheet)
            {
                sheets.Add((sheet.Name?.Value ?? "", worksheet));
            }
        }

        return sheets;
    }
}
