using System.Globalization;
using Runup.Commissioning.Sheet;

namespace Runup.Files.Sheets;

/// <summary>The sheet as a spreadsheet file (Office Open XML): the lines first, what they are about on a second tab.</summary>
public static class SheetBook
{
    /// <summary>The file's bytes; the same sheet gives the same bytes.</summary>
    public static byte[] Write(SheetModel sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var columns = SheetColumns.All;
        var lines = new XlsxTab(
            "sheet",
            [.. columns.Select(c => c.Width)],
            [.. columns.Select(c => c.Name)],
            [.. sheet.Lines.Select(e => columns.Select(c => c.Cell(e)).ToList())],
            $"{sheet.Tag}  {sheet.Drive}  {Time(sheet)}  sheet {sheet.Checksum}",
            SheetColumns.OnPaper);
        var about = new XlsxTab(
            "about",
            [18, 90],
            ["what", "value"],
            [
                Pair("tag", sheet.Tag),
                Pair("title", sheet.Title ?? ""),
                Pair("drive", sheet.Drive),
                Pair("shows", sheet.ExtentWords),
                Pair("written", Time(sheet)),
                Pair("before", sheet.FoundWords),
                Pair("checksum", sheet.Checksum),
                .. sheet.HowTo.Select(h => Pair("how to", h)),
            ],
            sheet.Tag,
            2);
        return XlsxFile.Of([lines, about]);
    }

    private static string Time(SheetModel sheet) => sheet.WrittenAt.ToString("yyyy-MM-dd HH:mm:ss zzz", CultureInfo.InvariantCulture);

    private static IReadOnlyList<SheetCell> Pair(string what, string value) => [new SheetCell.Words(what), new SheetCell.Words(value)];
}
