using System.Globalization;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Comparison;
using Runup.Profiles;

namespace Runup.Cli.Comparison;

/// <summary>Two states side by side, for people.</summary>
internal static class ComparePage
{
    private static readonly Column[] Columns = [new("no."), new("what"), new("A", Digits: true), new("B", Digits: true), new("what it does", Whole: false)];

    internal static void Write(Page page, Side left, Side right, StateComparison comparison, Consequences? consequences, LoadedJob? set)
    {
        page.Heading($"A: {left.Title} ({Drive(left)})");
        page.Line($"B: {right.Title} ({Drive(right)})");
        page.Line();
        if (comparison.Compared == 0)
        {
            page.Line("Nothing can be compared: there is no parameter or setting of which both speak.");
        }
        else if (comparison.Differences.Count == 0)
        {
            page.Line($"Nothing differs in {comparison.Compared} {What(comparison)} of which both speak.");
        }
        else
        {
            page.Table(Columns, comparison.Differences.Select((d, i) => (IReadOnlyList<string>)[Numbers(d), Name(d), d.Left.Text ?? "", d.Right.Text ?? "", consequences?.OfEach[i] ?? ""]));
            page.Line();
            page.Line($"{comparison.Differences.Count} of {comparison.Compared} {What(comparison)} differ.");
        }

        Alone(page, "A", "B", comparison.OnlyLeft, comparison.OneFamily);
        Alone(page, "B", "A", comparison.OnlyRight, comparison.OneFamily);
        Runs(page, consequences, set);
    }

    /// <summary>The numbers of the parameters: one where both sides have it, else the left's and the right's.</summary>
    internal static string Numbers(StateDifference difference)
    {
        var (left, right) = (Numbers(difference.Left), Numbers(difference.Right));
        return string.Equals(left, right, StringComparison.Ordinal) ? left : $"{left} / {right}";
    }

    private static string Numbers(StateSide side) => string.Join(", ", side.Parameters.Select(p => p.Number));

    private static string Name(StateDifference difference) => difference.Setting?.Name ?? difference.Left.Parameters[0].Name;

    private static string Drive(Side side) => $"{side.State.Profile.Title}, size {side.State.Size.Name}";

    private static string What(StateComparison comparison) => comparison.OneFamily ? "parameters" : "settings";

    private static void Alone(Page page, string side, string other, IReadOnlyList<Parameter> parameters, bool oneFamily)
    {
        if (parameters.Count > 0)
        {
            const int Named = 8;
            var which = string.Join(", ", parameters.Take(Named).Select(p => p.Number)) + (parameters.Count > Named ? ", ..." : "");
            var taken = oneFamily ? $"; {other} is taken to hold the same" : $": {other} has nothing that means it";
            page.Line(string.Create(CultureInfo.InvariantCulture, $"Of {parameters.Count} more only {side} speaks ({which}){taken}."));
        }
    }

    private static void Runs(Page page, Consequences? consequences, LoadedJob? set)
    {
        if (consequences is { Left: { } a, Right: { } b } && set is not null)
        {
            page.Line();
            page.Line($"Start to the highest frequency and stop of {set.Job.Tag}, rehearsed: with all of A it {a}; with all of B it {b}. An estimate, never a permission.");
        }
    }
}
