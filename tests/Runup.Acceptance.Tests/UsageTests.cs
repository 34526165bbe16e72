namespace Runup.Acceptance.Tests;

public sealed class UsageTests
{
    [Theory]
    [InlineData("fly")]
    [InlineData("check")]
    [InlineData("check", "--sideways")]
    [InlineData("check", "no-such-file.job.yaml")]
    [InlineData("sheet", "no-such-file.job.yaml", "--json")]
    [InlineData("simulate", "no-such-file.job.yaml", "--tcp", "seven")]
    [InlineData("check", "")]
    [InlineData("check", "a\u001b[31mb")]
    [InlineData("new", "")]
    [InlineData("new", " ")]
    [InlineData("new", "nowhere/b\u001b[31m")]
    [InlineData("demo", "")]
    [InlineData("rehearse", "no-such-file.job.yaml", "--plot", "")]
    [InlineData("read", "no-such-file.job.yaml", "--link", "tcp://\u001b[31m/1")]
    [InlineData("enter", "no-such-file.job.yaml", "--by-hand", "--confirm", "safe-torque-of-open")]
    [InlineData("enter", "no-such-file.job.yaml", "--by-hand", "--confirm", "drive-is-on-again")]
    [InlineData("new", "nowhere/at-all")]
    [InlineData("rehearse", "no-such-file.job.yaml", "--plot", "nowhere/at-all.svg")]
    public async Task Wrong_usage_is_one_line_on_standard_error_and_status_2(params string[] arguments)
    {
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, arguments);
        run.Status.ShouldBe(2);
        run.Output.ShouldBeEmpty();
        run.Errors.Trim().Split('\n').Length.ShouldBe(1);
        run.Errors.ShouldNotContain('\u001b');
        run.ShowsNoInsides();
    }

    [Theory]
    [InlineData("--supply-gap", "x", "0.001 to 3600")]
    [InlineData("--supply-gap", "", "0.001 to 3600")]
    [InlineData("--supply-gap", "0", "0.001 to 3600")]
    [InlineData("--supply-gap", "-1", "0.001 to 3600")]
    [InlineData("--supply-gap", "1e9", "0.001 to 3600")]
    [InlineData("--supply-gap", "NaN", "0.001 to 3600")]
    [InlineData("--supply-gap", "1,5", "0.001 to 3600")]
    [InlineData("--seed", "x", "whole number")]
    [InlineData("--seed", "-1", "whole number")]
    [InlineData("--seed", "1.5", "whole number")]
    [InlineData("--seed", "99999999999999999999", "whole number")]
    [InlineData("--plot", "trends.png", ".svg")]
    [InlineData("--plot", ".svg", ".svg")]
    [InlineData("--plot", "nowhere/at-all.svg", "a folder that is there")]
    [InlineData("--plot", "folder.svg", "another name")]
    public async Task A_value_that_would_not_do_is_told_with_its_option_and_what_would(string option, string value, string wouldDo)
    {
        using var scratch = new Scratch();
        Directory.CreateDirectory(Path.Combine(scratch.Folder, "folder.svg"));
        string[] call = ["rehearse", scratch.DemoJob(), option, value, "--ensemble"];
        Tells(await RunupProgram.Call(scratch.Folder, call), $"{option} '{value}'", wouldDo);
    }

    [Theory]
    [InlineData("--tcp", "x", "a port")]
    [InlineData("--tcp", "1.5", "a port")]
    [InlineData("--tcp", "65536", "a port")]
    [InlineData("--rate", "fast", "0.1 to 1000")]
    [InlineData("--rate", "0", "0.1 to 1000")]
    [InlineData("--rate", "NaN", "0.1 to 1000")]
    public async Task So_it_is_where_drives_are_simulated(string option, string value, string wouldDo)
    {
        using var scratch = new Scratch();
        Tells(await RunupProgram.Call(scratch.Folder, "simulate", scratch.DemoJob(), option, value), $"{option} '{value}'", wouldDo);
    }

    [Theory]
    [InlineData("--plot FILE.svg", "rehearse", "JOB", "--plot")]
    [InlineData("--plot FILE.svg", "rehearse", "--plot", "--json", "JOB")]
    [InlineData("--supply-gap SECONDS", "rehearse", "JOB", "--supply-gap")]
    [InlineData("--by", "check", "JOB", "--accept", "machine.low-speed-cooling", "--because", "so", "--by")]
    [InlineData("--link", "read", "JOB", "--link")]
    public async Task An_option_with_nothing_after_it_is_told_and_nothing_stands_in_for_it(string wouldDo, params string[] arguments)
    {
        using var scratch = new Scratch();
        var job = scratch.DemoJob();
        Tells(await RunupProgram.Call(scratch.Folder, [.. arguments.Select(a => a == "JOB" ? job : a)]), "needs something after it", wouldDo);
    }

    private static void Tells(Run run, params string[] words)
    {
        run.Status.ShouldBe(2);
        run.Output.ShouldBeEmpty();
        run.Errors.Trim().Split('\n').Length.ShouldBe(1, run.Errors);
        foreach (var word in words)
        {
            run.Errors.ShouldContain(word);
        }

        foreach (var inside in (string[])["Nullable", "Int32", "Double", "UInt64", "NumberOption", "__default"])
        {
            run.Errors.ShouldNotContain(inside);
        }
    }

    [Fact]
    public async Task Help_lists_the_verbs()
    {
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, "--help");
        run.Status.ShouldBe(0);
        foreach (var verb in (string[])["demo", "new", "motor", "check", "settings", "sheet", "rehearse", "simulate", "read", "enter", "restore", "handover", "profile"])
        {
            run.Output.ShouldContain(verb);
        }
    }

    [Theory]
    [InlineData("demo")]
    [InlineData("new")]
    [InlineData("motor")]
    [InlineData("check")]
    [InlineData("settings")]
    [InlineData("sheet")]
    [InlineData("rehearse")]
    [InlineData("simulate")]
    [InlineData("read")]
    [InlineData("enter")]
    [InlineData("restore")]
    [InlineData("handover")]
    [InlineData("profile")]
    public async Task Help_of_each_verb_has_an_example(string verb)
    {
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, verb, "--help");
        run.Status.ShouldBe(0);
        run.Output.ShouldContain("EXAMPLES");
        run.Output.ShouldContain($"runup {verb}");
    }
}
