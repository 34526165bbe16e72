namespace Runup.Cli.Entry;

/// <summary>What a person types: a line after a question, also where both come and go through pipes.</summary>
/// <param name="input">Where answers come from.</param>
/// <param name="output">Where questions go.</param>
internal sealed class Typing(TextReader input, TextWriter output)
{
    /// <summary>The answer without blanks around it; null where the input has ended.</summary>
    internal async Task<string?> Answer(string question, CancellationToken cancellation)
    {
        await output.WriteAsync(question);
        await output.FlushAsync(cancellation);

        // A terminal can't be asked to give up a line: it is left behind, so that a person who interrupts need not press Enter first.
        var answer = (await Task.Run(input.ReadLine, CancellationToken.None).WaitAsync(cancellation))?.Trim();
        if (Console.IsInputRedirected)
        {
            await output.WriteLineAsync(answer);
        }

        return answer;
    }

    internal void Tell(string words) => output.WriteLine(words);
}
