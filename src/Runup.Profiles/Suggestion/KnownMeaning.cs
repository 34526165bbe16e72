namespace Runup.Profiles;

/// <summary>A meaning with its phrases taken apart.</summary>
internal sealed class KnownMeaning
{
    private readonly IReadOnlyList<Phrase> phrases;

    internal KnownMeaning(TradeMeaning of, WordReader reader)
    {
        Of = of;
        phrases = [.. of.Phrases.Select(p => Phrase.Of(p, reader))];
        ChoicesKey = string.Join('|', of.Choices.SelectMany(c => c.Value.Prepend(c.Key)));
        Choices = [.. of.Choices.SelectMany(c => c.Value.Select(text => (c.Key, Phrase.Of(text, reader))))];
    }

    internal TradeMeaning Of { get; }

    /// <summary>Its plainest phrase.</summary>
    internal Phrase First => phrases[0];

    internal IReadOnlyList<(string Choice, Phrase Phrase)> Choices { get; }

    /// <summary>The same for meanings whose choices are the same.</summary>
    internal string ChoicesKey { get; }

    /// <summary>The phrase that the name says best.</summary>
    internal (double Likeness, double Said, Phrase? Phrase) In(NameWords name)
    {
        (double Likeness, double Said, Phrase? Phrase) best = (0, 0, null);
        foreach (var phrase in phrases)
        {
            var (likeness, said) = phrase.In(name);
            if (likeness + (0.05 * said) > best.Likeness + (0.05 * best.Said))
            {
                best = (likeness, said, phrase);
            }
        }

        return best;
    }

    /// <summary>The setting's choice that a choice of the table says; null where none is like it.</summary>
    internal string? Counterpart(List<Spoken> label)
    {
        string? best = null;
        var most = 0.0;
        foreach (var (choice, phrase) in Choices)
        {
            var matched = 0.0;
            var whole = 0.0;
            var free = label.ToList();
            foreach (var (word, weight, optional) in phrase.Parts)
            {
                // Each word of the label says one word of the phrase.
                if (free.MaxBy(s => s.StrengthOf(word)) is { } saying && saying.StrengthOf(word) is > 0 and var strength)
                {
                    matched += weight * strength;
                    free.Remove(saying);
                }

                whole += optional ? 0 : weight;
            }

            var said = label.Sum(s => s.Weight);
            var likeness = whole <= 0 || said <= 0 ? 0 : matched / whole * Math.Sqrt(Math.Min(1, matched / said));
            if (likeness > most)
            {
                (best, most) = (choice, likeness);
            }
        }

        return most >= 0.55 ? best : null;
    }
}
