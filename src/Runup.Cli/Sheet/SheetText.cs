using System.Globalization;
using Runup.Cli.Plan;
using Runup.Cli.Terminal;
using Runup.Commissioning.Sheet;

namespace Runup.Cli.Sheet;

/// <summary>The sheet at a terminal: with the reasons beside the values where there is room, else below them.</summary>
internal static class SheetText
{
    private const int RoomForReasons = 120;

    internal static void Write(Page page, SheetModel sheet)
    {
        page.Heading($"{$"{sheet.Tag}  {sheet.Title}".TrimEnd()}: sheet for {sheet.Drive}");
        page.Line($"{sheet.ExtentWords}; sheet {sheet.Checksum}, written {sheet.WrittenAt.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)}; {sheet.FoundWords}");
        page.Line();
        Lines(page, sheet, sheet.ToEnter.ToList());
        if (sheet.Already.ToList() is { Count: > 0 } already)
        {
            page.Heading(sheet.AlreadyWords);
            page.Table(
                [new("", Digits: true), new("no."), new("name"), new("shows", Digits: true), new("unit"), new("mark", Whole: false)],
                already.Select(e => (IReadOnlyList<string>)[Order(e), e.Line.Parameter!.Number, e.Name, e.Enter, e.Unit, string.Join(", ", e.Marks)]));
        }

        if (sheet.FoundOtherwise.Count > 0)
        {
            page.Line();
            page.Line($"Found otherwise than from the factory, and not decided by the job: {string.Join(", ", sheet.FoundOtherwise)}. --all shows them.");
        }

        if (sheet.Without.Count > 0)
        {
            page.Heading("This drive has no parameter for");
            foreach (var entry in sheet.Without)
            {
                page.Line($"- {entry.Name}: {entry.Why}");
            }
        }

        page.Line();
        foreach (var sentence in sheet.HowTo)
        {
            page.Line(sentence);
        }
    }

    private static void Lines(Page page, SheetModel sheet, List<SheetEntry> entries)
    {
        List<Column> columns = [new("", Digits: true), new("no."), new("name", Whole: false), new("enter", Digits: true), new("unit")];
        if (sheet.Found is not null)
        {
            columns.Add(new("as found", Digits: true));
        }

        columns.Add(new("from factory", Digits: true));
        if (page.Width >= RoomForReasons)
        {
            page.Table([.. columns.Select(c => c with { Whole = true }), new("rank"), new("why", Whole: false)], entries.Select(e => (IReadOnlyList<string>)[.. Values(sheet, e), e.Row.Rank?.Word() ?? "", e.MarksAndWhy]));
        }
        else
        {
            page.Table(columns, [.. entries.Select(e => Values(sheet, e))], [.. entries.Select(e => e.MarksAndWhy)]);
        }
    }

    private static IReadOnlyList<string> Values(SheetModel sheet, SheetEntry entry) =>
        [Order(entry), entry.Line.Parameter!.Number, entry.Name, entry.Enter, entry.Unit, entry.Before, .. sheet.Found is null ? Array.Empty<string>() : [entry.Default]];

    private static string Order(SheetEntry entry) => entry.Line.Order.ToString(CultureInfo.InvariantCulture);
}
