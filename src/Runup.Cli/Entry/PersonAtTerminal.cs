using Runup.Commissioning.Entry;

namespace Runup.Cli.Entry;

/// <summary>
/// The person at this terminal. Each question is asked by name, with the step that it is for, and answered with yes; what was
/// confirmed beforehand with <c>--confirm</c> is not asked again. Where nobody can answer, the answer is no.
/// </summary>
/// <param name="by">Who confirms.</param>
/// <param name="confirmed">Things confirmed on the command line.</param>
/// <param name="typing">Questions and answers.</param>
internal sealed class PersonAtTerminal(string by, IReadOnlySet<string> confirmed, Typing typing) : IPerson
{
    private const string PowerCycled = "power-cycle";

    public Task<PersonSays> Confirm(ToConfirm thing, CancellationToken cancellation) => Ask(thing.What, $"{Step(thing.Step)}: {thing.Words}", cancellation);

    public Task<PersonSays> PowerCycle(CancellationToken cancellation) => Ask(
        PowerCycled,
        "Switch the drive's supply off, wait until its display is dark, and switch it on again. Is it on?",
        cancellation);

    private async Task<PersonSays> Ask(string what, string words, CancellationToken cancellation)
    {
        if (confirmed.Contains(what))
        {
            typing.Tell($"{words}\n  yes (--confirm {what}, {by})");
            return new PersonSays.Yes(by);
        }

        var answer = await typing.Answer($"{words}\n  [{what}] yes or no: ", cancellation);
        if (answer is null)
        {
            return new PersonSays.No($"nobody answered; at the drive, answer yes, or call again with --confirm {what}");
        }

        return answer.Split(' ', 2) is [var first, ..] rest && first.Equals("yes", StringComparison.OrdinalIgnoreCase)
            ? new PersonSays.Yes(by, rest.Length > 1 ? rest[1] : null)
            : new PersonSays.No($"the answer was '{answer}'");
    }

    private static string Step(string id) => id switch
    {
        "before-first-write" => "Before the first write",
        "before-power-cycle" => "Before the power cycle",
        "after-power-cycle" => "After the power cycle",
        _ => id.Replace('-', ' '),
    };
}
