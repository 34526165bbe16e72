namespace Runup.Acceptance.Tests;

/// <summary>What <c>docs/how-to/swap-a-drive.md</c> shows is what the program prints.</summary>
public sealed class SwapPageTests
{
    private static readonly string[] Page = ["docs", "how-to", "swap-a-drive.md"];

    [Fact]
    public async Task The_page_shows_a_real_comparison_and_a_real_translation()
    {
        using var scratch = new Scratch();
        scratch.DemoJob();
        File.Copy(Path.Combine(RunupProgram.Root, "demo", "ostrevad", "ab-201.job.yaml"), Path.Combine(scratch.Folder, "ab-201.job.yaml"));
        var text = await File.ReadAllTextAsync(Path.Combine([RunupProgram.Root, .. Page]));
        scratch.Write("found.csv", text.Split("```text\n")[1].Split("```")[0]);
        var blocks = ConsoleBlock.Of(Page);
        blocks.Count.ShouldBe(2);
        foreach (var block in blocks)
        {
            block.ShouldBePrintedBy(await RunupProgram.Call(scratch.Folder, block.Call.Split(' ')));
        }
    }

    [Fact]
    public async Task A_translation_for_programs_has_the_keys_that_others_rely_on()
    {
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, "translate", scratch.DemoJob(), "--to", "osprey", "--size", "7.5-400", "--json");
        run.Status.ShouldBe(0, run.Errors);
        var ramp = run.Json.EnumerateArray().Single(r => r.GetProperty("setting").GetString() == "deceleration-time");
        ramp.EnumerateObject().Select(p => p.Name).ShouldBe(["setting", "old", "new", "mapping", "note"]);
        ramp.GetProperty("mapping").GetString().ShouldBe("converted");
        run.Json.EnumerateArray().Select(r => r.GetProperty("mapping").GetString()).Distinct().ShouldBeSubsetOf(["direct", "converted", "not-offered", "needs-choice", "new"]);
    }

    [Theory]
    [InlineData("nope", "7.5-400", "runup: --to: there is no profile 'nope'")]
    [InlineData("osprey", "7", "runup: --size: Osprey")]
    public async Task A_drive_that_is_not_there_says_which_would_do(string profile, string size, string error)
    {
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, "translate", scratch.DemoJob(), "--to", profile, "--size", size);
        run.Status.ShouldBe(2);
        run.Errors.ShouldContain(error);
        run.ShowsNoInsides();
    }
}
