using Runup.Commissioning.Checks;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Sheet;
using Runup.Profiles;
using Runup.Reports.Sheets;
using Runup.Reports.Tests.Example;

namespace Runup.Reports.Tests.Sheets;

public sealed class SheetPageTests
{
    private const string Nasty = "</style></title><script>alert('x')</script>\"'&\u202E\u0000]]>";

    [Fact]
    public void Each_line_has_number_name_value_unit_what_was_before_and_why()
    {
        var rows = PlainText.Parse(Page(Pump())).Descendants("tbody").SelectMany(b => b.Elements("tr")).Where(r => r.Elements("td").Any()).Select(r => r.Elements("td").Select(d => d.Value).ToList()).ToList();
        rows.Count.ShouldBe(Pump().Entries.Count);
        rows.ShouldContain(r => r.SequenceEqual(new[] { "", "1", "105", "Motor voltage", "400", "V", "same", "", "line to line, the delta column" }));
        rows.ShouldAllBe(r => r.Count == 9 && r[0].Length == 0 && r[7].Length == 0);
    }

    [Fact]
    public void Of_a_drive_that_was_read_each_line_shows_what_was_found_beside_the_factorys()
    {
        var found = new SheetFound(ParameterValues.Defaults(ExampleDrive.Tern, ExampleDrive.Size).With("105", 380).With("372", 3), new DateTimeOffset(2026, 2, 28, 9, 30, 0, TimeSpan.Zero));
        var page = PlainText.Parse(Page(Pump(found)));
        var rows = page.Descendants("tbody").SelectMany(b => b.Elements("tr")).Where(r => r.Elements("td").Any()).Select(r => r.Elements("td").Select(d => d.Value).ToList()).ToList();
        rows.ShouldContain(r => r.SequenceEqual(new[] { "", "1", "105", "Motor voltage", "400", "V", "380 V", "400 V", "", "line to line, the delta column" }));
        rows.ShouldAllBe(r => r.Count == 10);
        page.Value.ShouldContain("the drive was found as read on 2026-02-28 09:30");
        page.Value.ShouldContain("Found otherwise than from the factory, and not decided by the job: 372.");
    }

    [Fact]
    public void The_head_that_browsers_repeat_on_each_page_names_set_drive_date_and_checksum()
    {
        var head = PlainText.Parse(Page(Pump())).Descendants("thead").Single().Value;
        foreach (var part in (string[])["SWP-101", "Seawater intake pump 1", ExampleDrive.Size.Name, "2026-03-01 12:00:00 +02:00", Pump().Checksum])
        {
            head.ShouldContain(part);
        }
    }

    [Fact]
    public void Settings_without_counterpart_are_listed_below()
    {
        var sheet = Pump();
        var text = PlainText.Of(Page(sheet with { Without = [sheet.Entries[0] with { Why = "Watch it elsewhere." }] }));
        text.ShouldContain("This drive has no parameter for");
        text.ShouldContain("Watch it elsewhere.");
    }

    [Fact]
    public void Nothing_is_taken_from_outside_and_hostile_text_stays_text()
    {
        var sheet = Pump();
        var page = Page(sheet with { Tag = Nasty, Title = Nasty, Drive = Nasty, Entries = [sheet.Entries[0] with { Why = Nasty, Marks = [new(Nasty, Nasty)] }] });
        var names = PlainText.Parse(page).DescendantsAndSelf().Select(e => e.Name.LocalName).ToList();
        names.ShouldNotContain("script");
        names.ShouldNotContain("img");
        names.ShouldNotContain("link");
        names.Count(n => n == "style").ShouldBe(1);
        page.ShouldNotContain("://");
        page.ShouldNotContain("\u202E");
    }

    [Fact]
    public void The_same_sheet_gives_the_same_page() => Page(Pump()).ShouldBe(Page(Pump()));

    private static string Page(SheetModel sheet) => SheetPage.Write(sheet);

    private static SheetModel Pump(SheetFound? found = null)
    {
        var job = ExampleJob.Pump();
        return SheetModel.Of(
            job,
            SettingsPlan.For(JobContext.For(job, ExampleDrive.Size.Rating)),
            ExampleDrive.Tern,
            ExampleDrive.Size,
            SheetExtent.Decided,
            new DateTimeOffset(2026, 3, 1, 12, 0, 0, TimeSpan.FromHours(2)),
            found);
    }
}
