namespace Runup.Acceptance.Tests;

/// <summary>What the README shows is what the program prints: each line of a block in its order, lines between left out.</summary>
public sealed class ReadmeTests
{
    public static TheoryData<string, string> Blocks
    {
        get
        {
            var blocks = new TheoryData<string, string>();
            var parts = File.ReadAllText(Path.Combine(RunupProgram.Root, "README.md")).Split("```console\n");
            foreach (var part in parts.Skip(1))
            {
                var lines = part[..part.IndexOf("```", StringComparison.Ordinal)].TrimEnd().Split('\n', 2);
                blocks.Add(lines[0]["$ ./runup ".Length..], lines[1]);
            }

            return blocks;
        }
    }

    [Theory]
    [MemberData(nameof(Blocks))]
    public async Task The_tour_shows_real_output(string call, string shown)
    {
        var run = await RunupProgram.Call(RunupProgram.Root, call.Split(' '));
        var printed = new Queue<string>((run.Output + run.Errors).Split('\n').Select(l => l.TrimEnd()));
        foreach (var line in shown.Split('\n').Select(l => l.TrimEnd()))
        {
            while (printed.Count > 0 && printed.Peek() != line)
            {
                printed.Dequeue();
            }

            printed.Count.ShouldBeGreaterThan(0, $"`{line}` is not printed there by runup {call}:\n{run.Output}{run.Errors}");
        }
    }

    [Fact]
    public void The_readme_names_exactly_two_commands_before_the_tour()
    {
        var top = File.ReadAllText(Path.Combine(RunupProgram.Root, "README.md")).Split("## A tour")[0];
        top.Split('\n').Where(l => l.StartsWith("    ./", StringComparison.Ordinal)).ShouldBe(["    ./runup demo", "    ./test"]);
    }
}
