namespace Runup.Acceptance.Tests;

/// <summary>A call of the program and what it prints, as a page shows them in a console block.</summary>
/// <param name="Call">The arguments.</param>
/// <param name="Shown">Lines that it prints in this order, lines between left out.</param>
internal sealed record ConsoleBlock(string Call, string Shown)
{
    private static readonly string[] Prompts = [", q: ", "or no: "];

    internal static IReadOnlyList<ConsoleBlock> Of(params string[] page)
    {
        var parts = File.ReadAllText(Path.Combine([RunupProgram.Root, .. page])).Split("```console\n");
        return [.. parts.Skip(1).Select(part =>
        {
            var lines = part[..part.IndexOf("```", StringComparison.Ordinal)].TrimEnd().Split('\n', 2);
            return new ConsoleBlock(lines[0]["$ ./runup ".Length..], lines[1]);
        })];
    }

    /// <summary>What a person types in it, a line for each question.</summary>
    internal string Answers => string.Concat(
        from line in Shown.Split('\n').Select(l => l + " ") // A page keeps no blanks at the ends of lines, where an answer is empty.
        from prompt in Prompts
        where line.Contains(prompt, StringComparison.Ordinal)
        select line[(line.IndexOf(prompt, StringComparison.Ordinal) + prompt.Length)..].Trim() + "\n");

    internal void ShouldBePrintedBy(Run run)
    {
        var printed = new Queue<string>((run.Output + run.Errors).Split('\n').Select(l => l.TrimEnd()));
        foreach (var line in Shown.Split('\n').Select(l => l.TrimEnd()))
        {
            while (printed.Count > 0 && printed.Peek() != line)
            {
                printed.Dequeue();
            }

            printed.Count.ShouldBeGreaterThan(0, $"`{line}` is not printed there by runup {Call}:\n{run.Output}{run.Errors}");
        }
    }
}
