namespace Runup.Profiles;

/// <summary>One way in which a meaning is named.</summary>
/// <param name="Text">As people say it.</param>
/// <param name="Parts">Its words, with how much each says, and whether it may be left out.</param>
internal sealed record Phrase(string Text, IReadOnlyList<(string Word, double Weight, bool Optional)> Parts)
{
    private readonly double whole = Parts.Where(p => !p.Optional).Sum(p => p.Weight);

    internal static Phrase Of(string text, WordReader reader)
    {
        var parts = new List<(string, double, bool)>();
        foreach (var (piece, optional) in Pieces(text))
        {
            foreach (var spoken in reader.Read(piece))
            {
                var word = spoken.Readings.Count > 0 ? spoken.Readings.MaxBy(r => r.Strength).Word : spoken.Text;
                parts.Add((word, reader.Weight(word), optional));
            }
        }

        return new Phrase(string.Join(' ', Pieces(text).Where(p => !p.Optional).Select(p => p.Piece.Trim()).Where(p => p.Length > 0)), parts);
    }

    /// <summary>How well a name says this phrase, 0 to 1, and how much the words that agree say.</summary>
    internal (double Likeness, double Said) In(NameWords name)
    {
        if (!name.SaysAnyOf(Parts))
        {
            return (0, 0);
        }

        Span<bool> used = stackalloc bool[name.Own.Count];
        var matched = 0.0;
        var explained = 0.0;
        var lent = 0.0;
        foreach (var (word, weight, optional) in Parts)
        {
            var place = name.Place(word, used, out var strength);
            if (place >= 0)
            {
                used[place] = true;
                explained += name.Own[place].Weight * strength;
                matched += optional ? 0 : weight * strength;
            }
            else if (!optional && name.Around(word) is var around and > 0)
            {
                lent += weight * around;
            }
        }

        if (explained <= 0.35 || whole <= 0)
        {
            return (0, 0);
        }

        var foreign = 0.0;
        for (var i = 0; i < used.Length; i++)
        {
            if (!used[i])
            {
                foreign += name.Foreign(i);
            }
        }

        var recall = Math.Min(1, (matched + lent) / whole);
        var precision = explained / (explained + foreign);
        return (Math.Pow(recall, 1.6) * precision, Math.Min(matched + (0.5 * lent), whole));
    }

    private static IEnumerable<(string Piece, bool Optional)> Pieces(string text)
    {
        foreach (var part in text.Split('('))
        {
            var close = part.IndexOf(')', StringComparison.Ordinal);
            if (close < 0)
            {
                yield return (part, false);
            }
            else
            {
                yield return (part[..close], true);
                yield return (part[(close + 1)..], false);
            }
        }
    }
}
