namespace Runup.Acceptance.Tests;

/// <summary>What <c>docs/how-to/a-drive-from-its-manual.md</c> shows is what the program prints to one who does what the page says.</summary>
public sealed class FromManualPageTests
{
    [Fact]
    public async Task The_page_leads_from_a_table_to_a_sound_profile()
    {
        using var scratch = new Scratch();
        var page = await File.ReadAllTextAsync(Path.Combine(RunupProgram.Root, "docs", "how-to", "a-drive-from-its-manual.md"));
        await File.WriteAllTextAsync(Path.Combine(scratch.Folder, "manual.txt"), Block(page, "text"));
        var blocks = ConsoleBlock.Of("docs", "how-to", "a-drive-from-its-manual.md");
        blocks.Select(b => b.Call.Split(' ')[1]).ShouldBe(["import", "import", "lint"]);
        foreach (var block in blocks)
        {
            if (block == blocks[2])
            {
                await Complete(Path.Combine(scratch.Folder, "wren.drive.yaml"), Block(page, "yaml"));
            }

            var run = await RunupProgram.Call(scratch.Folder, block.Call.Split(' '), "");
            run.Status.ShouldBe(0);
            block.ShouldBePrintedBy(run);
        }
    }

    // What the page says: ratings and sizes take the place of the remarks above the groups.
    private static async Task Complete(string path, string ratings)
    {
        var draft = await File.ReadAllTextAsync(path);
        var from = draft.IndexOf("# ratings:", StringComparison.Ordinal);
        await File.WriteAllTextAsync(path, draft[..from] + ratings + draft[draft.IndexOf("groups:\n", StringComparison.Ordinal)..]);
    }

    private static string Block(string page, string kind)
    {
        var from = page.IndexOf($"```{kind}\n", StringComparison.Ordinal) + kind.Length + 4;
        return page[from..page.IndexOf("```", from, StringComparison.Ordinal)];
    }
}
