using Runup.Commissioning.Handover;
using Runup.Reports.Site;
using Runup.Reports.Tests.Example;

namespace Runup.Reports.Tests;

public sealed class SiteReportTests
{
    private static readonly SiteRow Whole = Row(ExampleHandover.Whole(), "handover/SWP-101.handover.html");
    private static readonly SiteRow Troubled = Row(ExampleHandover.Troubled(), "handover/SWP-102.handover.html") with { Tag = "SWP-102" };
    private static readonly SiteRow Empty = Row(ExampleHandover.Empty(), "handover/SWP 103#.handover.html") with { Tag = "SWP-103" };

    [Fact]
    public void A_set_is_never_further_than_its_least_stage_nor_done_with_a_point_open()
    {
        Troubled.State.ShouldBe(StageState.HeldUp);
        Empty.State.ShouldBe(StageState.NotDone);
        Whole.State.ShouldBe(Whole.Open.Count == 0 && Whole.Stages.All(s => s.State == StageState.Done) ? StageState.Done : StageState.Open);
    }

    [Fact]
    public void What_is_not_known_of_a_drive_is_said_to_be_not_known()
    {
        Empty.RunSource.ShouldBeNull();
        Empty.BusTimeout.ShouldBeNull();
        PlainText.Of(Page([Empty])).ShouldContain("| not known | not known");
    }

    [Fact]
    public void Run_source_and_time_out_are_as_the_drive_was_left()
    {
        Whole.RunSource.ShouldBe("bus");
        Whole.BusTimeout.ShouldBe("2 s, then ramp");
        Whole.Drive.ShouldBe($"{ExampleDrive.Tern.Identity?.Product ?? ExampleDrive.Tern.Family} {ExampleDrive.Size.Name}");
    }

    [Fact]
    public void The_counts_begin_with_what_needs_somebody() =>
        SiteReport.Counts([Whole, Troubled, Empty]).ShouldStartWith("3 sets: 1 held up by a blocker, 1 with a stage not done, ");

    [Fact]
    public void Every_set_has_its_row_its_link_and_its_open_points()
    {
        var page = Page([Whole, Troubled, Empty]);
        foreach (var row in (SiteRow[])[Whole, Troubled, Empty])
        {
            page.ShouldContain($">{row.Tag}</a>");
            foreach (var point in row.Open)
            {
                PlainText.Of(page).ShouldContain(point.Subject.TrimEnd('.'));
            }
        }

        page.ShouldContain("href=\"handover/SWP%20103%23.handover.html\"");
        page.ShouldNotContain("<script");
        page.ShouldNotContain("://");
    }

    [Fact]
    public void A_hostile_title_stays_text() =>
        Page([Whole with { Title = "<script>alert(1)</script>", Tag = "\"><b>" }]).ShouldNotContain("<script>");

    private static string Page(IReadOnlyList<SiteRow> rows) =>
        SiteReport.Write(new SiteSummary("Example", rows, new DateTimeOffset(2026, 5, 4, 12, 0, 0, TimeSpan.Zero), "Runup", "An example."));

    private static SiteRow Row(HandoverModel model, string file) => SiteRow.Of(model, ExampleDrive.Tern, ExampleDrive.Size, file);
}
