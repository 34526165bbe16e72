namespace Runup.Acceptance.Tests;

/// <summary>What <c>docs/how-to/by-hand.md</c> shows is what the program prints to one who types what the page types.</summary>
public sealed class ByHandPageTests
{
    [Fact]
    public async Task The_page_shows_a_real_entry_by_hand()
    {
        using var scratch = new Scratch();
        scratch.DemoJob();
        var blocks = ConsoleBlock.Of("docs", "how-to", "by-hand.md");
        blocks.Count.ShouldBe(3);
        foreach (var block in blocks)
        {
            // A block without answers shows the end alone: the person finds each display as it is to be.
            var typed = block.Answers.Length > 0 ? block.Answers : new string('\n', 100);
            block.ShouldBePrintedBy(await RunupProgram.Call(scratch.Folder, block.Call.Split(' '), typed));
            if (block == blocks[0])
            {
                (await RunupProgram.Call(scratch.Folder, block.Call.Split(' '), new string('\n', 100))).Status.ShouldBe(0);
            }
        }
    }

    [Theory]
    [InlineData("Enter")]
    [InlineData("s REASON")]
    [InlineData("`b`")]
    [InlineData("`q`")]
    public void The_page_explains_every_answer(string answer) =>
        File.ReadAllText(Path.Combine(RunupProgram.Root, "docs", "how-to", "by-hand.md")).ShouldContain(answer);
}
