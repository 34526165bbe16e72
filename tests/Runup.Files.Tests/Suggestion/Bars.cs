using Runup.Files.Vocabulary;
using Runup.Profiles;
using Runup.Files.Tests.Profiles;

namespace Runup.Files.Tests.Suggestion;

/// <summary>How well meanings are suggested on a table whose truth is known.</summary>
/// <param name="Meant">Rows that have a meaning.</param>
/// <param name="Right">Of these, rows whose suggestion is it.</param>
/// <param name="Certain">Rows with a suggestion of high certainty.</param>
/// <param name="Wrong">Of these, rows that mean something else or nothing.</param>
/// <param name="Misses">Each row that is not as it should be, for a person.</param>
internal sealed record Bars(int Meant, int Right, int Certain, int Wrong, IReadOnlyList<string> Misses)
{
    private static readonly Lazy<MeaningScorer> Shared = new(() => new MeaningScorer(Vocabulary()));

    internal static MeaningScorer Scorer => Shared.Value;

    internal double RightPart => Meant == 0 ? 1 : (double)Right / Meant;

    internal double WrongPart => Certain == 0 ? 0 : (double)Wrong / Certain;

    internal static TradeVocabulary Vocabulary()
    {
        var problems = new Problems("vocabulary.yaml");
        var vocabulary = VocabularyFile.ReadFile(Path.Combine(Drives.Root, "data", "vocabulary.yaml"), problems);
        problems.InOrder().ShouldBeEmpty();
        return vocabulary!;
    }

    internal static Bars Of(IReadOnlyList<ListedParameter> rows, IReadOnlyDictionary<string, IReadOnlyList<string>> truth)
    {
        var suggestions = Scorer.Suggest(rows);
        int meant = 0, right = 0, certain = 0, wrong = 0;
        var misses = new List<string>();
        for (var i = 0; i < rows.Count; i++)
        {
            var expected = truth.GetValueOrDefault(rows[i].Number, []);
            var said = suggestions[i];
            var isRight = said.Setting is { } setting ? expected.Contains(setting.Name) : expected.Count == 0;
            meant += expected.Count > 0 ? 1 : 0;
            right += expected.Count > 0 && isRight ? 1 : 0;
            certain += said.Certainty >= Runup.Profiles.Suggestion.High ? 1 : 0;
            wrong += said.Certainty >= Runup.Profiles.Suggestion.High && !isRight ? 1 : 0;
            if (!isRight && (expected.Count > 0 || said.Certainty >= 0.5))
            {
                misses.Add($"{rows[i].Number} [{rows[i].Group}] {rows[i].Name} ({rows[i].Unit}): {string.Join('+', expected)} <> {said.Setting?.Name ?? "-"} {said.Certainty:0.00} {said.Reason}");
            }
        }

        return new Bars(meant, right, certain, wrong, misses);
    }

    public override string ToString() => $"right first {Right} of {Meant} ({100 * RightPart:0.0} %), certain and wrong {Wrong} of {Certain} ({100 * WrongPart:0.0} %)";
}
