using Runup.Commissioning.Entry;

namespace Runup.Cli.Entry;

/// <summary>
/// The person at this terminal. Each question is asked by name and answered with yes; what was confirmed beforehand with
/// <c>--confirm</c> is not asked again. Where nobody can answer, the answer is no.
/// </summary>
/// <param name="by">Who confirms.</param>
/// <param name="confirmed">Things confirmed on the command line.</param>
/// <param name="input">Where answers come from.</param>
/// <param name="output">Where questions go.</param>
internal sealed class PersonAtTerminal(string by, IReadOnlySet<string> confirmed, TextReader input, TextWriter output) : IPerson
{
    private const string PowerCycled = "power-cycle";

    public Task<PersonSays> Confirm(ToConfirm thing, CancellationToken cancellation) => Ask(thing.What, thing.Words);

    public Task<PersonSays> PowerCycle(CancellationToken cancellation) => Ask(
        PowerCycled,
        "Switch the drive's supply off, wait until its display is dark, and switch it on again. Is it on?");

    private async Task<PersonSays> Ask(string what, string words)
    {
        if (confirmed.Contains(what))
        {
            await output.WriteLineAsync($"{words}\n  yes (--confirm {what}, {by})");
            return new PersonSays.Yes(by);
        }

        await output.WriteAsync($"{words}\n  [{what}] yes or no: ");
        await output.FlushAsync();
        var answer = (await input.ReadLineAsync())?.Trim();
        if (Console.IsInputRedirected)
        {
            await output.WriteLineAsync(answer);
        }

        if (answer is null)
        {
            return new PersonSays.No($"nobody answered; at the drive, answer yes, or call again with --confirm {what}");
        }

        return answer.Split(' ', 2) is [var first, ..] rest && first.Equals("yes", StringComparison.OrdinalIgnoreCase)
            ? new PersonSays.Yes(by, rest.Length > 1 ? rest[1] : null)
            : new PersonSays.No($"the answer was '{answer}'");
    }
}
