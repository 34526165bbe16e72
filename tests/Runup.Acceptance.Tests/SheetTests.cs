using System.Text.Json;

namespace Runup.Acceptance.Tests;

public sealed class SheetTests
{
    [Fact]
    public async Task The_files_that_a_call_asks_for_are_written_and_never_over_others()
    {
        using var scratch = new Scratch();
        var job = scratch.DemoJob();
        string[] call = ["sheet", job, "--must", "--html", "a.html", "--xlsx", "a.xlsx", "--csv", "a.csv"];

        var run = await RunupProgram.Call(scratch.Folder, call);

        run.Status.ShouldBe(0, run.Errors);
        run.Output.ShouldContain("a.html is written.");
        (await File.ReadAllTextAsync(Path.Combine(scratch.Folder, "a.html"))).ShouldContain("SWP-101");
        (await File.ReadAllTextAsync(Path.Combine(scratch.Folder, "a.csv"))).ShouldContain("\r\n1,105,Motor voltage,400,V,");
        (await File.ReadAllBytesAsync(Path.Combine(scratch.Folder, "a.xlsx"))).AsSpan(0, 2).ToArray().ShouldBe("PK"u8.ToArray());

        var again = await RunupProgram.Call(scratch.Folder, call);
        again.Status.ShouldBe(2);
        again.Errors.ShouldBe($"a.html:1:1 (file): it is there already and is left as it is; another name would do{Environment.NewLine}");
    }

    [Theory]
    [InlineData("--html", "swp-101.job.yaml")]
    [InlineData("--xlsx", "sheet.xls")]
    [InlineData("--csv", ".csv")]
    public async Task A_slip_in_a_files_ending_is_said(string option, string file)
    {
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, "sheet", scratch.DemoJob(), option, file);
        run.Status.ShouldBe(2);
        run.ShowsNoInsides();
        run.Errors.ShouldContain("would not do; a file whose name ends in .");
        (await File.ReadAllTextAsync(Path.Combine(scratch.Folder, "swp-101.job.yaml"))).ShouldStartWith("#");
    }

    [Fact]
    public async Task Must_and_all_exclude_one_another()
    {
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, "sheet", scratch.DemoJob(), "--must", "--all");
        run.Status.ShouldBe(2);
        run.Errors.ShouldContain("--must and --all exclude one another");
    }

    [Fact]
    public async Task Eighty_columns_are_enough()
    {
        using var scratch = new Scratch();
        var job = scratch.DemoJob(text => text.Replace("profile: tern", "profile: osprey", StringComparison.Ordinal));
        var run = await RunupProgram.Call(scratch.Folder, ["sheet", job, "--all"], environment: ("COLUMNS", "80"));
        run.Status.ShouldBe(0, run.Errors);
        var lines = run.Output.Split('\n').Select(l => l.TrimEnd('\r')).ToList();
        lines.ShouldAllBe(l => l.Length <= 80);
        var at = lines.FindIndex(l => l.Contains("6046h:2  Highest velocity", StringComparison.Ordinal));
        lines[at].ShouldMatch(@"^ *\d+  6046h:2  Highest velocity +1500  rpm +same$");
        lines[at + 1].ShouldStartWith("      highest frequency asked for;");
    }

    [Fact]
    public async Task A_program_gets_the_same_lines_as_a_person()
    {
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, "sheet", scratch.DemoJob(text => text.Replace("7.5 kW", "7.5 hp", StringComparison.Ordinal)), "--json", "--csv", "s.csv");
        run.Status.ShouldBe(0, run.Errors);
        var output = run.Json.EnumerateArray().Single(l => l.GetProperty("parameter").GetString() is "104");
        (Text(output, "display"), Text(output, "unit"), Text(output, "default_display"), Text(output, "default_unit")).ShouldBe(("7.50", "hp", "7.50", "kW"));
        output.GetProperty("changed").GetBoolean().ShouldBeTrue();
        run.Json.GetArrayLength().ShouldBe((await File.ReadAllLinesAsync(Path.Combine(scratch.Folder, "s.csv"))).Length - 1);
    }

    private static string? Text(JsonElement element, string key) => element.GetProperty(key).GetString();
}
