using System.Globalization;
using Runup.Commissioning.Sheet;
using Runup.Reports.Handover;
using Runup.Reports.Html;

namespace Runup.Reports.Sheets;

/// <summary>The sheet for paper: one line for each parameter, a box to tick, a blank for what was found.</summary>
public static class SheetPage
{
    // In half lines: a row takes two, each further line of its name or reason one more. Tried on A4, the lower of the two, and on US Letter, the narrower.
    private const int RoomInHalfLines = 70;
    private const int LettersOfName = 27;
    private const int LettersOfWhy = 86;

    // One column more takes from names and reasons, and the heading a line.
    private const int LettersOfNameBesideFound = 22;
    private const int LettersOfWhyBesideFound = 66;
    private const int MoreOfHead = 4;

    /// <summary>The page; the same sheet gives the same page, byte for byte.</summary>
    public static string Write(SheetModel sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return HtmlPage.Write(
            $"Sheet {sheet.Tag}",
            HtmlPage.Style("sheet.css") + HtmlPage.Paper("size: landscape; margin: 9mm 10mm 11mm;", $"{sheet.Tag}, sheet {sheet.Checksum}, {Numbers.Of(sheet.WrittenAt)}"),
            body => body.In("main", Fitting(sheet), main => Body(main, sheet)));
    }

    // What must be entered fits one page, A4 or US Letter, in letters as large as there is room for.
    private static string? Fitting(SheetModel sheet) => sheet.Extent is not SheetExtent.Must ? null : ((double)RoomInHalfLines / HalfLines(sheet)) switch
    {
        >= 1 => "must",
        >= 0.95 => "must near",
        >= 0.9 => "must nearer",
        _ => "must nearest",
    };

    private static int HalfLines(SheetModel sheet)
    {
        var (more, ofName, ofWhy) = sheet.Found is null ? (0, LettersOfName, LettersOfWhy) : (MoreOfHead, LettersOfNameBesideFound, LettersOfWhyBesideFound);
        return more + sheet.Lines.Sum(e => 2 + Math.Max(e.Name.Length / ofName, e.MarksAndWhy.Length / ofWhy));
    }

    private static void Body(HtmlWriter html, SheetModel sheet)
    {
        html.In("table", sheet.Found is null ? null : "read", table =>
        {
            var read = sheet.Found is not null;
            table.Own($"<colgroup><col class=\"done\"/><col class=\"order\"/><col class=\"no\"/><col class=\"name\"/><col class=\"enter\"/><col class=\"unit\"/>{(read ? "<col class=\"before\"/>" : "")}<col class=\"before\"/><col class=\"found\"/><col/></colgroup>\n");

            // Browsers repeat the head on each page of paper.
            table.In("thead", null, head => head
                .In("tr", null, row => row.Own($"<th colspan=\"{Columns(sheet)}\" class=\"which\">").In("span", null, which => Which(which, sheet)).Own("</th>\n"))
                .In("tr", "heads", row => row.Own(Headings(read))));
            table.In("tbody", null, rows => Lines(rows, sheet, sheet.ToEnter));
            if (sheet.Already.Any())
            {
                table.In("tbody", "already", rows =>
                {
                    rows.In("tr", null, row => row.Own($"<th colspan=\"{Columns(sheet)}\">").Text($"{sheet.AlreadyWords}.").Own("</th>"));
                    Lines(rows, sheet, sheet.Already);
                });
            }
        });
        if (sheet.FoundOtherwise.Count > 0)
        {
            html.Element("p", $"Found otherwise than from the factory, and not decided by the job: {string.Join(", ", sheet.FoundOtherwise)}. The sheet of every parameter shows them.", "otherwise");
        }

        Without(html, sheet);
        Foot(html, sheet);
    }

    private static void Which(HtmlWriter html, SheetModel sheet) => html
        .Element("b", sheet.Tag).Text(sheet.Title is { } title ? $"  {title}. " : "  ").Text($"Drive: {sheet.Drive}. ")
        .Text($"{char.ToUpperInvariant(sheet.ExtentWords[0])}{sheet.ExtentWords[1..]}. Written {Numbers.Of(sheet.WrittenAt)}{(sheet.Found is null ? "" : $"; {sheet.FoundWords}")}. ")
        .Element("span", $"Sheet {sheet.Checksum}", "keep");

    private static int Columns(SheetModel sheet) => sheet.Found is null ? 9 : 10;

    private static string Headings(bool read) =>
        $"<th>done</th><th class=\"n\"></th><th>no.</th><th>name on the drive's list</th><th class=\"n enter\">enter</th><th>unit</th>{(read ? "<th class=\"n\">as found</th>" : "")}<th class=\"n\">from factory</th><th class=\"found\">found, if other</th><th>why</th>";

    private static void Lines(HtmlWriter rows, SheetModel sheet, IEnumerable<SheetEntry> entries)
    {
        foreach (var entry in entries)
        {
            rows.In("tr", null, row => Line(row, sheet, entry));
        }
    }

    private static void Line(HtmlWriter row, SheetModel sheet, SheetEntry entry)
    {
        row.In("td", null, cell => cell.Element("span", "", "box"))
            .Element("td", entry.Line.Order.ToString(CultureInfo.InvariantCulture), "n soft")
            .Element("td", entry.Line.Parameter!.Number, "keep")
            .Element("td", entry.Name, "name")
            .In("td", "n enter", cell => cell.Element("b", entry.Enter))
            .Element("td", entry.Unit, "keep unit")
            .Element("td", entry.Before, "n soft");
        if (sheet.Found is not null)
        {
            row.Element("td", entry.Default, "n soft");
        }

        row.Element("td", "", "found").In("td", "why", cell => Why(cell, entry));
    }

    private static void Why(HtmlWriter cell, SheetEntry entry)
    {
        foreach (var (mark, place) in entry.Marks.Select((m, i) => (m, i)))
        {
            cell.Text(place == 0 ? "" : ", ").Element("b", mark.Word).Text(mark.About.Length == 0 ? "" : $" {mark.About}");
        }

        cell.Text(entry.Marks.Count == 0 ? entry.Why : $": {entry.Why}");
    }

    private static void Without(HtmlWriter html, SheetModel sheet)
    {
        if (sheet.Without.Count == 0)
        {
            return;
        }

        html.In("section", "without", section => section
            .Element("h2", "This drive has no parameter for")
            .In("ul", null, list =>
            {
                foreach (var entry in sheet.Without)
                {
                    list.In("li", null, item => item.Element("b", $"{entry.Name}.").Text($" {entry.Why}"));
                }
            }));
    }

    private static void Foot(HtmlWriter html, SheetModel sheet) => html.In("footer", null, foot => foot
        .Element("p", string.Join(" ", sheet.HowTo))
        .Element("p", $"The checksum stands for all that the job decides; {(sheet.Extent is SheetExtent.Decided ? "" : "the sheet of that has the same one, and ")}the record keeps it at entry.")
        .Own("<p class=\"sign\">Entered by <span></span> date <span></span> looked at again after power-off by <span></span></p>\n"));
}
