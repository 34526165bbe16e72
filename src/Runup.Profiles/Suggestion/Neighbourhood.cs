using System.Globalization;

namespace Runup.Profiles;

/// <summary>Offers a setting for a row whose name says nothing, where the others of its family stand around it and its figures fit: an amperage between the motor's voltage and its frequency.</summary>
/// <param name="families">Settings that tables keep together, by what they are called together.</param>
/// <param name="rows">The rows.</param>
internal sealed class Neighbourhood(IReadOnlyDictionary<string, IReadOnlyList<KnownMeaning>> families, IReadOnlyList<ListedParameter> rows)
{
    private const int Around = 4;
    private const double Sure = 0.5;
    private const double FiguresFit = 0.9;

    // What names alone would not have offered is never more than an offer.
    private const double Certainty = 0.3;

    /// <summary>Adds to the suggestions; none that is there is changed.</summary>
    /// <param name="suggestions">For each row what it may mean.</param>
    /// <param name="evidence">For each row what its figures say; null where its name says that it is something else.</param>
    internal void Fill(Suggestion[] suggestions, IReadOnlyList<MeaningEvidence?> evidence)
    {
        foreach (var (name, family) in families)
        {
            while (Best(family, suggestions, evidence) is var (row, meaning))
            {
                suggestions[row] = new Suggestion(meaning.Of.Setting, Certainty, $"it stands among the rows of {name}, and its figures fit") { IsReading = suggestions[row].IsReading };
            }
        }
    }

    private (int Row, KnownMeaning Meaning)? Best(IReadOnlyList<KnownMeaning> family, Suggestion[] suggestions, IReadOnlyList<MeaningEvidence?> evidence)
    {
        var given = suggestions.Select(s => s.Setting).ToHashSet();
        var places = Enumerable.Range(0, rows.Count).Where(i => suggestions[i] is { Setting: { } s, Certainty: >= Sure } && family.Any(m => m.Of.Setting == s)).ToList();
        var best = (Row: -1, Meaning: (KnownMeaning?)null, Worth: 0.0);
        foreach (var meaning in family.Where(m => !given.Contains(m.Of.Setting)))
        {
            for (var row = 0; row < rows.Count; row++)
            {
                if (suggestions[row].Setting is null && evidence[row] is { } figures && Worth(row, meaning, places, figures) is var worth && worth > best.Worth)
                {
                    best = (row, meaning, worth);
                }
            }
        }

        return best.Meaning is { } found ? (best.Row, found) : null;
    }

    private double Worth(int row, KnownMeaning meaning, List<int> places, MeaningEvidence evidence)
    {
        var near = places.Where(p => Math.Abs(p - row) <= Around && string.Equals(rows[p].Group, rows[row].Group, StringComparison.Ordinal)).ToList();
        if (near.Count == 0 || (near.Count == 1 && Math.Abs(near[0] - row) > 1) || IsNumberedOtherwise(rows[row].Name, meaning.Of.Name))
        {
            return 0;
        }

        return evidence.For(meaning) is var fit && fit >= FiguresFit ? fit + (0.3 * near.Count) - (0.1 * near.Min(p => Math.Abs(p - row))) : 0;
    }

    // The third of something is not its first.
    private static bool IsNumberedOtherwise(string name, string setting)
    {
        var said = TextWords.Of(name).Where(w => w.Length == 1 && char.IsAsciiDigit(w[0])).ToList();
        var wanted = char.IsAsciiDigit(setting[^1]) ? setting[^1].ToString(CultureInfo.InvariantCulture) : "1";
        return said.Count > 0 && !said.Contains(wanted, StringComparer.Ordinal);
    }
}
