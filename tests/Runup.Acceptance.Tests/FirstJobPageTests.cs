using System.Text;

namespace Runup.Acceptance.Tests;

/// <summary><c>docs/how-to/first-job.md</c> from top to bottom: an empty folder, the job that it shows, and what it shows of each call, on a simulated drive.</summary>
public sealed class FirstJobPageTests
{
    private const string DocumentedLink = "tcp://192.0.2.10:502/1";

    [Fact]
    public async Task The_page_leads_from_an_empty_folder_to_a_handover()
    {
        using var scratch = new Scratch();
        var page = await File.ReadAllTextAsync(Path.Combine(RunupProgram.Root, "docs", "how-to", "first-job.md"));
        var blocks = ConsoleBlock.Of("docs", "how-to", "first-job.md");
        var enter = blocks.Single(b => b.Call.StartsWith("enter", StringComparison.Ordinal));
        blocks[0].ShouldBePrintedBy(await RunupProgram.Call(scratch.Folder, blocks[0].Call.Split(' ')));
        scratch.Write("ic-310.job.yaml", Fenced(page, "```yaml\n"));
        foreach (var block in blocks.Skip(1).TakeWhile(b => b != enter))
        {
            block.ShouldBePrintedBy(await RunupProgram.Call(scratch.Folder, block.Call.Split(' ')));
        }

        await using (var simulator = await Simulator.Start(scratch, "ic-310.job.yaml"))
        {
            var entry = await Entered(scratch, simulator, enter);
            enter.ShouldBePrintedBy(entry with { Output = "" });
            (enter with { Shown = Fenced(page, "```text\n").TrimEnd() }).ShouldBePrintedBy(entry);
            entry.Status.ShouldBe(0);
        }

        var last = blocks[^1];
        last.ShouldBePrintedBy(await RunupProgram.Call(scratch.Folder, last.Call.Split(' ')));
    }

    private static string Fenced(string page, string opening)
    {
        var from = page.IndexOf(opening, StringComparison.Ordinal) + opening.Length;
        return page[from..page.IndexOf("```", from, StringComparison.Ordinal)];
    }

    // The person answers as the page shows, and switches the drive off and on where it says so.
    private static async Task<Run> Entered(Scratch scratch, Simulator simulator, ConsoleBlock enter)
    {
        using var process = RunupProgram.Start(scratch.Folder, enter.Call.Replace(DocumentedLink, simulator.Link, StringComparison.Ordinal).Split(' '));
        var output = process.StandardOutput.ReadToEndAsync();
        var asked = new StringBuilder();
        foreach (var answer in enter.Answers.TrimEnd().Split('\n'))
        {
            await Until(process.StandardError, asked, "yes or no: ");
            if (asked.ToString().Contains("[power-cycle]", StringComparison.Ordinal))
            {
                await simulator.PowerCycle();
            }

            await process.StandardInput.WriteLineAsync(answer);
            await process.StandardInput.FlushAsync();
            asked.AppendLine(answer);
        }

        asked.Append(await process.StandardError.ReadToEndAsync());
        await process.WaitForExitAsync();
        return new Run(process.ExitCode, await output, asked.ToString());
    }

    private static async Task Until(StreamReader from, StringBuilder read, string prompt)
    {
        var start = read.Length;
        var one = new char[1];
        while (!read.ToString(start, read.Length - start).EndsWith(prompt, StringComparison.Ordinal))
        {
            (await from.ReadAsync(one)).ShouldBe(1, $"it ended without asking: {read}");
            read.Append(one[0]);
        }
    }
}
