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
