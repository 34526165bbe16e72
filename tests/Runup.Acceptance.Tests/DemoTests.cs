namespace Runup.Acceptance.Tests;

public sealed class DemoTests
{
    [Fact]
    public async Task The_demo_does_the_whole_job_and_leaves_a_handover()
    {
        using var scratch = new Scratch();
        var folder = Path.Combine(scratch.Folder, "a demo");
        var run = await RunupProgram.Call(scratch.Folder, "demo", folder);
        run.Status.ShouldBe(0, run.Errors + run.Output);
        run.ShowsNoInsides();
        run.Output.ShouldMatch(@"highest output current +[\d.]+ +at most [\d.]+ +[\d.]+ +A +within");
        foreach (var said in (string[])["plate.power-unit", "plate.base-frequency", "verified by read-back", "renewals are withheld on purpose", "First run, coupled    DONE"])
        {
            run.Output.ShouldContain(said);
        }

        var report = await File.ReadAllTextAsync(Path.Combine(folder, "handover", "SWP-101.handover.html"), TestContext.Current.CancellationToken);
        report.ShouldContain("<svg");
        foreach (var outside in (string[])["src=\"http", "href=\"http", "url(http", "@import"])
        {
            report.ShouldNotContain(outside);
        }

        File.Exists(Path.Combine(folder, "handover", "SWP-101.restore.json")).ShouldBeTrue();
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
