namespace Runup.Acceptance.Tests;

[Collection(DemoRun.Name)]
public sealed class DemoTests(DemoRun demo)
{
    private static readonly string[] Tags = ["SWP-101", "AB-201", "FS-301", "DF-401", "GH-501", "DG-601"];

    [Fact]
    public void The_first_set_is_told_in_full()
    {
        demo.Run.Status.ShouldBe(0, demo.Run.Errors + demo.Run.Output);
        demo.Run.ShowsNoInsides();
        demo.Run.Output.ShouldMatch(@"highest output current +[\d.]+ +at most [\d.]+ +[\d.]+ +A +within");
        foreach (var said in (string[])["plate.power-unit", "plate.base-frequency", "verified by read-back", "renewals are withheld on purpose", "First run, coupled    DONE"])
        {
            demo.Run.Output.ShouldContain(said);
        }
    }

    [Fact]
    public void The_drives_are_named_before_anything_is_done_to_them()
    {
        var before = demo.Run.Output[..demo.Run.Output.IndexOf("1. The survey", StringComparison.Ordinal)];
        foreach (var tag in Tags)
        {
            before.ShouldMatch($@"{tag} .*(Tern|Osprey) .*tcp://127\.0\.0\.1:\d+/1");
        }
    }

    [Fact]
    public async Task Six_sets_are_handed_over()
    {
        foreach (var tag in Tags)
        {
            var report = await demo.Text("handover", $"{tag}.handover.html");
            report.ShouldContain("<svg");
            foreach (var outside in (string[])["src=\"http", "href=\"http", "url(http", "@import"])
            {
                report.ShouldNotContain(outside);
            }

            File.Exists(Path.Combine(demo.Folder, "handover", $"{tag}.restore.json")).ShouldBeTrue(tag);
            demo.Run.Output.ShouldNotContain("NOT FINISHED");
            demo.Run.Output.ShouldNotMatch("[1-9][0-9]* OUTSIDE");
        }
    }

    [Fact]
    public async Task The_site_s_summary_links_every_handover_and_shows_nothing_done_that_is_not()
    {
        var summary = await demo.Text("index.html");
        foreach (var tag in Tags)
        {
            summary.ShouldContain($"<a href=\"handover/{tag}.handover.html\">{tag}</a>");
        }

        // The hoist is handed over with two cautions that nobody accepted and a duty of S3 whose cycle nobody told, and the filter with one.
        demo.Run.Output.ShouldMatch(@"(?m)^GH-501 +Tern 5\.5-400 +3 of 4 +OPEN POINTS +3 +panel +off");
        demo.Run.Output.ShouldMatch(@"(?m)^DF-401 +Osprey 0\.75-400 +4 of 5 +OPEN POINTS +1 +bus +2 s, then ramp");
        demo.Run.Output.ShouldMatch(@"(?m)^SWP-101 +Tern 7\.5-400 +5 of 5 +DONE +0 +bus +2 s, then ramp");
        demo.Run.Output.ShouldContain("6 sets: 4 gone through with open points, 2 done with nothing open.");
    }

    [Fact]
    public void The_hoist_is_sent_no_run_command()
    {
        demo.Run.Output.ReplaceLineEndings(" ").ShouldMatch(@"Run commands +none was sent\. A hoist is run from its own control only\.[^:]*Words on +the wire that would run it: 0");
        demo.Run.Output.ShouldContain("10 of 10 steps passed", Case.Sensitive, "lifting and lowering");
    }

    [Fact]
    public void The_slips_and_the_wish_in_the_surveys_are_found()
    {
        var found = string.Join(' ', demo.Run.Output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        found.ShouldContain("[plate.power-unit]; BLOCKER Star and delta interchanged [plate.voltage-connection]; BLOCKER Poles and speed do not go together [plate.poles]");
        found.ShouldContain("CAUTION Ramp down too short [machine.deceleration]. Since corrected in the job file.");
    }

    [Fact]
    public async Task A_folder_with_something_in_it_is_left_alone()
    {
        using var scratch = new Scratch();
        scratch.Write("mine.txt", "mine");
        var run = await RunupProgram.Call(scratch.Folder, "demo", scratch.Folder);
        run.Status.ShouldBe(2);
        Directory.GetFiles(scratch.Folder).Length.ShouldBe(1);
        run.Errors.Trim().Split('\n').Length.ShouldBe(1);
    }
}
