using System.Globalization;
using Runup.Commissioning.Entry;
using Runup.Commissioning.Entry.ByHand;

namespace Runup.Cli.Entry;

/// <summary>A person with this terminal beside the drive's own display, asked about one parameter after another.</summary>
/// <param name="name">Who it is.</param>
/// <param name="terminal">Who confirms.</param>
/// <param name="typing">Questions and answers.</param>
internal sealed class PersonAtDisplay(string name, PersonAtTerminal terminal, Typing typing) : IPersonAtDisplay
{
    internal const string Answers =
        """
          Enter     it shows just that
          VALUE     what it shows instead
          s REASON  leave this one out
          b         back to the one before
          q         stop: all so far is kept, and the next call goes on
        """;

    private const string Indent = "         ";

    public string Name => name;

    public Task<PersonSays> Confirm(ToConfirm thing, CancellationToken cancellation) => terminal.Confirm(thing, cancellation);

    public Task<PersonSays> PowerCycle(CancellationToken cancellation) => terminal.PowerCycle(cancellation);

    public void Tell(string words) => typing.Tell($"\n{words}");

    public Task<string?> Look(DisplayQuestion question, CancellationToken cancellation)
    {
        var lines = question switch
        {
            { Trouble: { } trouble } => [$"{Indent}{trouble}"],
            { SecondLook: true, For: LookFor.Kept } when question.Now?.Raw != question.Expected.Raw => [$"{Indent}That is not what was entered. Look once more."],
            { SecondLook: true } => [$"{Indent}What others mean hangs on it. Look once more."],
            _ => (IEnumerable<string>)["", .. Heading(question)],
        };
        return typing.Answer($"{string.Join('\n', lines)}\n{Indent}{Asked(question)} Enter = {question.Expected.Text}, or what it shows, s REASON, b, q: ", cancellation);
    }

    private static IEnumerable<string> Heading(DisplayQuestion question)
    {
        var unit = question.Expected.Unit is { } symbol ? $", in {symbol}" : "";
        var place = string.Create(CultureInfo.InvariantCulture, $"{question.Place}/{question.Of}");
        yield return $"{place,7}  {question.Parameter.Number}  {question.Parameter.Name}{unit}";
        var now = question.Now is { } shown ? $"showed {shown.Text} when last seen; " : "";
        yield return $"{Indent}{now}factory {question.Factory.Text}";
        if (question.For == LookFor.Entered)
        {
            yield return $"{Indent}SET IT TO {question.Expected.Text}{(EntersRun(question) ? "  (it can make the motor start by itself)" : "")}";
        }

        if (question is { For: LookFor.Entered, Why: { } why })
        {
            yield return $"{Indent}{why}";
        }
    }

    private static string Asked(DisplayQuestion question) => question.For switch
    {
        LookFor.Found => "Shows?",
        LookFor.Entered => "Shows now?",
        LookFor.Kept => "Still shows?",
        _ => throw new InvalidOperationException("What is looked for is told apart."),
    };

    private static bool EntersRun(DisplayQuestion question) => Runup.Profiles.EntryOrder.CanStartMotor(question.Parameter);
}
