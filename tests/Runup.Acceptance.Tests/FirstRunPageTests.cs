namespace Runup.Acceptance.Tests;

/// <summary>What <c>docs/how-to/first-run.md</c> shows is what the program prints to one who types what the page types.</summary>
public sealed class FirstRunPageTests
{
    [Fact]
    public async Task The_page_shows_a_real_first_run()
    {
        using var scratch = new Scratch();
        scratch.DemoJob();
        var blocks = ConsoleBlock.Of("docs", "how-to", "first-run.md");
        blocks.Count.ShouldBe(2);
        blocks[0].ShouldBePrintedBy(await RunupProgram.Call(scratch.Folder, blocks[0].Call.Split(' '), blocks[0].Answers));

        // A block without answers shows the end alone: all is as expected.
        blocks[1].Answers.ShouldBeEmpty();
        blocks[1].ShouldBePrintedBy(await ScriptedPerson.Call(scratch.Folder, blocks[1].Call.Split(' '), q => Task.FromResult<string?>(ScriptedPerson.AsExpected(q))));
    }

    [Theory]
    [InlineData("`s REASON`")]
    [InlineData("`b`")]
    [InlineData("`t WORDS`")]
    [InlineData("`q`")]
    public void The_page_explains_every_answer(string answer) =>
        File.ReadAllText(Path.Combine(RunupProgram.Root, "docs", "how-to", "first-run.md")).ShouldContain(answer);
}
