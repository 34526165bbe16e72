using System.Globalization;
using System.IO.Compression;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Runup.Files.Sheets;

/// <summary>A spreadsheet file (Office Open XML), with what a plain table needs and nothing else: no formulas, no macros, no links.</summary>
internal static class XlsxFile
{
    // A package carries times; with one of our own the same table gives the same bytes.
    private static readonly DateTimeOffset Always = new(2000, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The bytes of a file of these tabs.</summary>
    internal static byte[] Of(IReadOnlyList<XlsxTab> tabs)
    {
        var bytes = new MemoryStream();
        using (var document = SpreadsheetDocument.Create(bytes, SpreadsheetDocumentType.Workbook))
        {
            var book = document.AddWorkbookPart();
            document.ChangeIdOfPart(book, "book");
            var styles = new XlsxStyles(tabs.SelectMany(t => t.Rows).SelectMany(r => r));
            book.AddNewPart<WorkbookStylesPart>("styles").Stylesheet = styles.Write();
            foreach (var tab in tabs)
            {
                book.AddNewPart<WorksheetPart>(tab.Name).Worksheet = tab.Write(styles);
            }

            book.Workbook = new Workbook(
                new DocumentFormat.OpenXml.Spreadsheet.Sheets(tabs.Select((t, i) => new Sheet { Name = t.Name, SheetId = (uint)i + 1, Id = t.Name })),
                new DefinedNames(tabs.SelectMany((t, i) => OnPaper(t, (uint)i))));
        }

        return OutOfTime(bytes);
    }

    private static IEnumerable<DefinedName> OnPaper(XlsxTab tab, uint place) =>
    [
        new DefinedName(tab.PrintArea) { Name = "_xlnm.Print_Area", LocalSheetId = place },
        new DefinedName(string.Create(CultureInfo.InvariantCulture, $"{tab.Name}!$1:$1")) { Name = "_xlnm.Print_Titles", LocalSheetId = place },
    ];

    private static byte[] OutOfTime(MemoryStream package)
    {
        using (var zip = new ZipArchive(package, ZipArchiveMode.Update, leaveOpen: true))
        {
            foreach (var entry in zip.Entries)
            {
                entry.LastWriteTime = Always;
            }
        }

        return package.ToArray();
    }
}
