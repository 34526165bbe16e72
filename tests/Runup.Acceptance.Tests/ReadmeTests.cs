namespace Runup.Acceptance.Tests;

/// <summary>What the README shows is what the program prints: each line of a block in its order, lines between left out.</summary>
public sealed class ReadmeTests
{
    public static TheoryData<string, string> Blocks => [.. ConsoleBlock.Of("README.md").Select(b => (b.Call, b.Shown))];

    [Theory]
    [MemberData(nameof(Blocks))]
    public async Task The_tour_shows_real_output(string call, string shown) =>
        new ConsoleBlock(call, shown).ShouldBePrintedBy(await RunupProgram.Call(RunupProgram.Root, call.Split(' ')));

    [Fact]
    public void The_readme_names_exactly_two_commands_before_the_tour()
    {
        var top = File.ReadAllText(Path.Combine(RunupProgram.Root, "README.md")).Split("## A tour")[0];
        top.Split('\n').Where(l => l.StartsWith("    ./", StringComparison.Ordinal)).ShouldBe(["    ./runup demo", "    ./test"]);
    }
}
