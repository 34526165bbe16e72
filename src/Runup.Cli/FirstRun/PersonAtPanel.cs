using System.Globalization;
using Runup.Cli.Entry;
using Runup.Commissioning.Entry;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.FirstRun.AtPanel;
using Runup.Commissioning.Records;

namespace Runup.Cli.FirstRun;

/// <summary>A person with this terminal beside the machine, who runs it and types in what it shows. Nothing is confirmed beforehand on the command line.</summary>
/// <param name="name">Who it is.</param>
/// <param name="typing">Questions and answers.</param>
/// <param name="quit">Ends it, as an interrupt does.</param>
internal sealed class PersonAtPanel(string name, Typing typing, Action quit) : IPersonAtPanel
{
    internal const string Answers =
        """
          VALUE     what it shows; behind it with what it was read, such as: 14,2 clamp meter
          Enter     it was not read
          b         back to the one before
          t WORDS   the drive tripped, and what its display shows
          q         stop the motor first, then this: all so far is kept, and the next call goes on
        """;

    private const string Indent = "         ";

    public string Name => name;

    public async Task<PersonSays> Confirm(ToConfirm thing, CancellationToken cancellation)
    {
        var question = $"{Indent}{thing.Words}\n{Indent}[{thing.What}] {(thing.NeedsNote ? "yes WORDS, or no" : "yes or no")}: ";
        while (true)
        {
            var answer = await Answer(question, cancellation);
            var words = answer.Split((char[]?)null, 2, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
            switch (words)
            {
                case [var yes, var note] when Is(yes, "yes"):
                    return new PersonSays.Yes(name, note);
                case [var yes] when Is(yes, "yes") && !thing.NeedsNote:
                    return new PersonSays.Yes(name);
                case [var yes] when Is(yes, "yes"):
                    question = $"{Indent}It counts only with the words, such as: yes {Example(thing)}\n{Indent}[{thing.What}] yes WORDS, or no: ";
                    break;
                case [var no, ..] when Is(no, "no"):
                    return new PersonSays.No(words.Length > 1 ? words[1] : "the answer was no");
                default:
                    question = $"{Indent}'{answer}' is neither yes nor no.\n{Indent}[{thing.What}] {(thing.NeedsNote ? "yes WORDS, or no" : "yes or no")}: ";
                    break;
            }
        }
    }

    public Task<PersonSays> PowerCycle(CancellationToken cancellation) => throw new InvalidOperationException("No supply is switched in a first run.");

    public async Task<string?> Begin(StepAhead step, CancellationToken cancellation)
    {
        var leave = step.MayBeLeftOut ? ", s REASON = leave it out" : "";
        var asked = $"{Indent}Enter = {(step.GoesOn ? "go on" : "begin")}{leave}, q: ";
        var place = string.Create(CultureInfo.InvariantCulture, $"{step.Place}/{step.Of}");
        var question = $"\n{place,7}  {step.Step.Id}\n{Indent}{step.Step.Title}\n{(step.GoesOn ? $"{Indent}It was cut off; what was read is kept, what must be confirmed is asked anew.\n" : "")}{asked}";
        while (true)
        {
            var answer = await Answer(question, cancellation);
            var words = answer.Split((char[]?)null, 2, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
            switch (words)
            {
                case [] or [var _] when words.Length == 0 || Is(words[0], "yes"):
                    return null;
                case [var s, var why] when Is(s, "s") && step.MayBeLeftOut:
                    return why;
                case [var s] when Is(s, "s") && step.MayBeLeftOut:
                    question = $"{Indent}Say why it is left out, such as: s the pump is built onto its motor\n{asked}";
                    break;
                case [var s, ..] when Is(s, "s"):
                    question = $"{Indent}This one can't be left out; what comes after hangs on it.\n{asked}";
                    break;
                default:
                    question = $"{Indent}'{answer}' is not understood.\n{asked}";
                    break;
            }
        }
    }

    public Task<string> Read(ReadingQuestion question, CancellationToken cancellation)
    {
        var (expected, unit) = (question.Expected, question.Unit);
        var place = string.Create(CultureInfo.InvariantCulture, $"{question.Place}/{question.Of}");
        List<string> lines = question switch
        {
            { Outside: { } value } => [$"{Indent}OUTSIDE: {StepPage.Text(value)} {unit} is {(expected.High is { } high && value > high ? "above" : "below")} what is accepted, {StepPage.Band(expected.Low, expected.High)} {unit}. {question.Remark}"],
            { Remark: { } remark } => [$"{Indent}{remark}"],
            _ => [$"{place,7}  {question.Quantity}, in {unit}, from {question.From}", $"{Indent}{Says(expected)}"],
        };
        var enter = question.Outside is { } outside ? $"Look once more. Enter = {StepPage.Text(outside)} it is, or VALUE" : "Reads? VALUE, Enter = not read";
        return Answer($"{string.Join('\n', lines)}\n{Indent}{enter}, b, q: ", cancellation);
    }

    public void Took(RecordBody.ReadingTaken reading) => Tell(reading switch
    {
        { Measured: null } => "not read",
        { Within: true } => "within",
        { Within: false } => "OUTSIDE, and so on record",
        _ => "noted; nothing is held against it",
    });

    public void Tell(string words) => typing.Tell($"{Indent}{words}");

    private async Task<string> Answer(string question, CancellationToken cancellation)
    {
        var answer = await typing.Answer(question, cancellation);
        if (answer is null || Is(answer, "q") || Is(answer, "quit"))
        {
            quit();
            cancellation.ThrowIfCancellationRequested();
        }

        return answer ?? "";
    }

    private static string Says(Expected expected) => (expected.Value, StepPage.Band(expected.Low, expected.High)) switch
    {
        (null, "") => "nothing is expected of it; it is noted",
        ({ } value, "") => $"expected {StepPage.Text(value)}",
        (null, var band) => $"accepted {band}",
        ({ } value, var band) => $"expected {StepPage.Text(value)}, accepted {band}",
    };

    private static string Example(ToConfirm thing) => thing.What switch
    {
        FirstRunPlan.StopTested => "red mushroom button at the door",
        FirstRunPlan.RunFrom => "the drive's panel",
        _ => "and why",
    };

    private static bool Is(string word, string wanted) => string.Equals(word, wanted, StringComparison.OrdinalIgnoreCase);
}
