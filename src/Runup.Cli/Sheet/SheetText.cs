using System.Globalization;
using Runup.Cli.Plan;
using Runup.Cli.Terminal;
using Runup.Commissioning.Sheet;

namespace Runup.Cli.Sheet;

/// <summary>The sheet at a terminal: with the reasons beside the values where there is room, else below them.</summary>
internal static class SheetText
{
    private const int RoomForReasons = 120;

    private static readonly Column[] Narrow =
        [new("", Digits: true), new("no."), new("name", Whole: false), new("enter", Digits: true), new("unit"), new("from factory", Digits: true)];

    private static readonly Column[] Wide = [.. Narrow.Select(c => c with { Whole = true }), new("rank"), new("why", Whole: false)];

    internal static void Write(Page page, SheetModel sheet)
    {
        page.Heading($"{$"{sheet.Tag}  {sheet.Title}".TrimEnd()}: sheet for {sheet.Drive}");
        page.Line($"{sheet.ExtentWords}; sheet {sheet.Checksum}, written {sheet.WrittenAt.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)}");
        page.Line();
        if (page.Width >= RoomForReasons)
        {
            page.Table(Wide, sheet.Entries.Select(e => (IReadOnlyList<string>)[.. Values(e), e.Row.Rank?.Word() ?? "", e.MarksAndWhy]));
        }
        else
        {
            page.Table(Narrow, [.. sheet.Entries.Select(Values)], [.. sheet.Entries.Select(e => e.MarksAndWhy)]);
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
        foreach (var sentence in SheetModel.HowTo)
        {
            page.Line(sentence);
        }
    }

    private static IReadOnlyList<string> Values(SheetEntry entry) =>
        [entry.Line.Order.ToString(CultureInfo.InvariantCulture), entry.Line.Parameter!.Number, entry.Name, entry.Enter, entry.Unit, entry.Before];
}
