using System.Text;
using System.Text.RegularExpressions;

namespace Runup.Acceptance.Tests;

/// <summary>A person who answers the program's questions one by one, as they come.</summary>
internal static partial class ScriptedPerson
{
    /// <summary>Runs the program and answers each question; an answer of null kills the program while it waits.</summary>
    internal static async Task<Run> Call(string folder, IEnumerable<string> arguments, Func<string, Task<string?>> answer)
    {
        using var process = RunupProgram.Start(folder, arguments);
        var output = process.StandardOutput.ReadToEndAsync();
        var (said, question, buffer) = (new StringBuilder(), new StringBuilder(), new char[256]);
        while (await process.StandardError.ReadAsync(buffer, TestContext.Current.CancellationToken) is > 0 and var count)
        {
            said.Append(buffer, 0, count);
            question.Append(buffer, 0, count);
            if (!question.ToString().EndsWith(", q: ", StringComparison.Ordinal) && !question.ToString().EndsWith("or no: ", StringComparison.Ordinal))
            {
                continue;
            }

            if (await answer(question.ToString()) is not { } typed)
            {
                process.Kill(entireProcessTree: true);
                break;
            }

            question.Clear();
            await process.StandardInput.WriteAsync((typed + "\n").AsMemory(), TestContext.Current.CancellationToken);
            await process.StandardInput.FlushAsync(TestContext.Current.CancellationToken);
        }

        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return new Run(process.ExitCode, await output, said.ToString());
    }

    /// <summary>Everything is done, confirmed, and reads as expected; with a comma, as many write it.</summary>
    internal static string AsExpected(string question) => question switch
    {
        _ when question.EndsWith("yes WORDS, or no: ", StringComparison.Ordinal) => "yes red button at the door",
        _ when question.EndsWith("or no: ", StringComparison.Ordinal) => "yes",
        _ when question.Contains("Reads?", StringComparison.Ordinal) => Figure().Matches(question) is [var first, ..] ? first.Groups["figure"].Value.Replace('.', ',') : "",
        _ => "",
    };

    [GeneratedRegex(@"(?:expected|at most|accepted) (?<figure>-?[0-9.]+)", RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex Figure();
}
