namespace Runup.Profiles;

/// <summary>A parameter's name with the words around it: of its heading, and of what the table remarks.</summary>
internal sealed class NameWords
{
    private const double HeadingLends = 0.75;
    private const double RemarkLends = 0.45;
    private const double SpoilerCounts = 2.5;

    // Acceleration time 3 is another than acceleration time.
    private const double NumberCounts = 1.6;

    private readonly Dictionary<string, double> around = new(StringComparer.Ordinal);
    private readonly HashSet<string> heading = new(StringComparer.Ordinal);
    private readonly HashSet<string> own = new(StringComparer.Ordinal);
    private readonly double[] foreign;

    internal NameWords(ListedParameter parameter, WordReader reader)
    {
        Own = reader.Read(parameter.Name);
        Strange = [.. Own.Where(s => s.Text is [>= '2' and <= '9']).Select(s => s.Text).Concat(Own.SelectMany(s => s.Readings).Select(r => r.Word).Where(reader.Spoils)).Distinct(StringComparer.Ordinal)];
        own.UnionWith(Own.SelectMany(s => s.Readings).Select(r => r.Word));
        Lend(reader.Read(parameter.Remark.Length > 120 ? parameter.Remark[..120] : parameter.Remark), RemarkLends);
        foreach (var spoken in Lend(reader.Read(parameter.Group), HeadingLends))
        {
            foreach (var (word, _) in spoken.Readings)
            {
                heading.Add(word);
                if (reader.Spoils(word))
                {
                    HeadingSpoilers.Add(word);
                }
            }
        }

        foreign = [.. Own.Select(s => s.Readings.Any(r => reader.Spoils(r.Word)) ? SpoilerCounts * s.Weight : s.Text is [>= '2' and <= '9'] ? NumberCounts * s.Weight : s.Readings.Any(r => heading.Contains(r.Word)) ? 0.5 * s.Weight : s.Weight)];
    }

    /// <summary>The words of the name itself.</summary>
    internal List<Spoken> Own { get; }

    /// <summary>Words of the heading that make something else of all beneath it.</summary>
    internal HashSet<string> HeadingSpoilers { get; } = new(StringComparer.Ordinal);

    /// <summary>Words of the name that make something else of what is said beside it: spoilers, and numbers from 2.</summary>
    internal IReadOnlyCollection<string> Strange { get; }

    /// <summary>Whether the name has the number of a setting of several, such as digital-input-2; of a setting that stands alone, whether it has none from 2.</summary>
    internal bool Counts(string setting) => char.IsAsciiDigit(setting[^1]) ? Own.Find(s => char.IsAsciiDigit(s.Text[0])) is { Text.Length: 1 } first && first.Text[0] == setting[^1] : !Own.Exists(s => s.Text is [>= '2' and <= '9']);

    /// <summary>Whether the name says any word of a phrase at all.</summary>
    internal bool SaysAnyOf(IReadOnlyList<(string Word, double Weight, bool Optional)> parts)
    {
        for (var i = 0; i < parts.Count; i++)
        {
            if (own.Contains(parts[i].Word))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>What an unexplained word takes away.</summary>
    internal double Foreign(int place) => foreign[place];

    /// <summary>How far the surroundings lend a word that the name does not say.</summary>
    internal double Around(string word) => around.GetValueOrDefault(word);

    /// <summary>The place of a word in the name that nothing has used yet; -1 where there is none.</summary>
    internal int Place(string word, ReadOnlySpan<bool> used, out double strength)
    {
        strength = 0;
        var best = -1;
        for (var i = 0; i < Own.Count; i++)
        {
            if (!used[i] && Own[i].StrengthOf(word) is var found && found > strength)
            {
                (best, strength) = (i, found);
            }
        }

        return best;
    }

    private List<Spoken> Lend(List<Spoken> spoken, double share)
    {
        foreach (var (word, strength) in spoken.SelectMany(s => s.Readings))
        {
            around[word] = Math.Max(around.GetValueOrDefault(word), share * strength);
        }

        return spoken;
    }
}
