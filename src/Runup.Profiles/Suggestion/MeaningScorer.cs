using Runup.Settings;

namespace Runup.Profiles;

/// <summary>Suggests for each row of a table which setting it means, from name, heading, unit, range, factory value, choices and access.</summary>
/// <remarks>
/// Each meaning, and each thing that is easily taken for one, is given a score: how well the name says one of its phrases, and
/// what the figures say for it. Scores are logarithms of odds, against "something else" with 0. The settings are then given out so
/// that the sum is greatest and none is given twice (but the two objects of a ramp that is stated as speed and time).
/// The weights are fitted to tables of our own; no source.
/// </remarks>
public sealed class MeaningScorer
{
    private const double SlopeOfLikeness = 8;
    private const double WorthOfWords = 0.35;
    private const double Threshold = 4.9;
    private const double SpoiledHeading = 2.5;
    private const double Object = 9;

    // A remark that names a setting says it less surely than the name.
    private const double Remarked = 1.2;

    // Choices that no other parameter has, such as star and delta, are an offer even where the name says nothing.
    private const double ChoicesAlone = -0.3;
    private const double AllAgree = 0.8;

    // So much is a suggestion still worth below "something else": it is offered with the low certainty that it has.
    private const double Charity = 1.8;

    private readonly WordReader reader;
    private readonly List<KnownMeaning> meanings;
    private readonly Dictionary<string, IReadOnlyList<KnownMeaning>> families;

    // From here on a name says so clearly that it is something else that its neighbours do not matter.
    private const double ClearlyElse = 1.5;

    /// <summary>Makes a scorer of a vocabulary.</summary>
    public MeaningScorer(TradeVocabulary vocabulary)
    {
        reader = new WordReader(vocabulary.Words);
        meanings = [.. vocabulary.Meanings.Select(m => new KnownMeaning(m, reader))];
        families = vocabulary.Families.ToDictionary(f => f.Key, f => (IReadOnlyList<KnownMeaning>)[.. f.Value.Select(s => meanings.First(m => m.Of.Setting == s))], StringComparer.Ordinal);
    }

    /// <summary>One suggestion for each row, in their order.</summary>
    public IReadOnlyList<Suggestion> Suggest(IReadOnlyList<ListedParameter> rows) => SuggestNumbered(LetteredSeries.Numbered(rows));

    private Suggestion[] SuggestNumbered(IReadOnlyList<ListedParameter> rows)
    {
        var scores = new double[rows.Count][];
        var phrases = new Phrase?[rows.Count][];
        for (var i = 0; i < rows.Count; i++)
        {
            (scores[i], phrases[i]) = Scores(rows[i]);
        }

        var elses = scores.Select(Else).ToArray();
        var settings = Enumerable.Range(0, meanings.Count).Where(m => meanings[m].Of.Setting is not null).ToList();
        var worth = settings.Select(m => scores.Select((s, i) => s[m] - elses[i] + Charity).ToArray()).ToList();
        var given = Assignment.Best(worth, rows.Count);
        var meaningOf = new int[rows.Count];
        Array.Fill(meaningOf, -1);
        for (var k = 0; k < given.Length; k++)
        {
            if (given[k] >= 0)
            {
                meaningOf[given[k]] = settings[k];
            }
        }

        ShareRamps(rows, meaningOf);
        var totals = scores.Select(s => 1.0 + s.Sum(Math.Exp)).ToArray();
        Suggestion[] suggestions = [.. rows.Select((row, i) => meaningOf[i] < 0 ? Nothing(row, scores[i]) : Given(row, i, meaningOf, scores, totals, phrases[i][meaningOf[i]]))];
        new Neighbourhood(families, rows).Fill(suggestions, [.. rows.Select((row, i) => IsOpen(row, suggestions[i], elses[i]) ? Evidence(row) : null)]);
        return suggestions;
    }

    private bool IsOpen(ListedParameter row, Suggestion suggestion, double otherwise) =>
        suggestion is { Setting: null, IsReading: false } && row.Access is not (ParameterAccess.Action or ParameterAccess.Command) && otherwise < ClearlyElse
        && !reader.Read(row.Name).SelectMany(s => s.Readings).Any(r => reader.Spoils(r.Word));

    private MeaningEvidence Evidence(ListedParameter row) => new(row, [.. row.Choices.Select(c => reader.Read(c.Label))]);

    /// <summary>Which of a setting's choices each choice of a row says; null where none is like it.</summary>
    public IReadOnlyList<string?> Counterparts(ListedParameter row, Setting setting)
    {
        var meaning = meanings.First(m => m.Of.Setting == setting);
        return [.. row.Choices.Select(c => meaning.Counterpart(reader.Read(c.Label)))];
    }

    private (double[] Scores, Phrase?[] Phrases) Scores(ListedParameter row)
    {
        var name = new NameWords(row, reader);
        var remark = Remark(row);
        var evidence = Evidence(row);
        var scores = new double[meanings.Count];
        var phrases = new Phrase?[meanings.Count];
        for (var m = 0; m < scores.Length; m++)
        {
            var meaning = meanings[m];
            if (meaning.Of.Objects.Contains(row.Number, StringComparer.OrdinalIgnoreCase))
            {
                scores[m] = Object;
                continue;
            }

            var (score, phrase) = Said(meaning, name, []);
            if (remark is not null && Said(meaning, remark, name.Strange) is { Phrase: { } there } found && found.Score - Remarked > score)
            {
                (score, phrase) = (found.Score - Remarked, there);
            }

            scores[m] = phrase is null ? -20 : score + evidence.For(meaning);
            if (scores[m] < ChoicesAlone && meaning.Of.IsToldByChoices && name.Counts(meaning.Of.Name) && evidence.Agrees(meaning) >= AllAgree)
            {
                (scores[m], phrase) = (ChoicesAlone, meaning.First);
            }

            phrases[m] = phrase;
        }

        return (scores, phrases);
    }

    private static (double Score, Phrase? Phrase) Said(KnownMeaning meaning, NameWords name, IReadOnlyCollection<string> beside)
    {
        var (likeness, said, phrase) = meaning.In(name);
        if (phrase is null)
        {
            return (double.NegativeInfinity, null);
        }

        // What the label says to the contrary weighs twice what a heading does.
        var spoiled = name.HeadingSpoilers.Concat(beside).Concat(beside).Count(w => phrase.Parts.All(p => !string.Equals(p.Word, w, StringComparison.Ordinal)));
        return ((SlopeOfLikeness * likeness) + (WorthOfWords * said) - Threshold - (spoiled * SpoiledHeading), phrase);
    }

    // Where the column of names holds labels, the remark is the name.
    private NameWords? Remark(ListedParameter row) =>
        row.Remark.Length is > 5 and <= 100 && row.Remark.Any(char.IsLetter) ? new NameWords(row with { Name = row.Remark, Remark = row.Name }, reader) : null;

    // What speaks for none of the settings: something else altogether, or something that is easily taken for one.
    private double Else(double[] scores)
    {
        var sum = 1.0;
        for (var m = 0; m < scores.Length; m++)
        {
            if (meanings[m].Of.Setting is null)
            {
                sum += Math.Exp(scores[m]);
            }
        }

        return Math.Log(sum);
    }

    // IEC 61800-7-201: 6048h and 6049h are a ramp each, of two objects, delta speed and delta time.
    private void ShareRamps(IReadOnlyList<ListedParameter> rows, int[] meaningOf)
    {
        for (var i = 0; i < rows.Count; i++)
        {
            if (IsRamp(rows[i]))
            {
                meaningOf[i] = meanings.FindIndex(m => m.Of.Setting == (rows[i].Number[3] == '8' ? Setting.AccelerationTime : Setting.DecelerationTime));
                for (var j = 0; j < rows.Count; j++)
                {
                    meaningOf[j] = j != i && meaningOf[j] == meaningOf[i] && !rows[j].Number.StartsWith(rows[i].Number[..4], StringComparison.Ordinal) ? -1 : meaningOf[j];
                }
            }
        }
    }

    private static bool IsRamp(ListedParameter row) => row.Number.ToUpperInvariant() is "6048H:1" or "6048H:2" or "6049H:1" or "6049H:2";

    private Suggestion Given(ListedParameter row, int i, int[] meaningOf, double[][] scores, double[] totals, Phrase? phrase)
    {
        var mine = meaningOf[i];
        var meaning = meanings[mine];
        if (phrase is null || IsRamp(row))
        {
            return new Suggestion(meaning.Of.Setting, 0.99, $"object {row.Number} of IEC 61800-7-201");
        }

        var here = Math.Exp(scores[i][mine]);

        // Another row may claim it, too; one that is something else more likely claims it less.
        var rivals = 0.0;
        var claim = here / totals[i];
        for (var r = 0; r < scores.Length; r++)
        {
            if (r != i && scores[r][mine] > -3)
            {
                var theirs = Math.Exp(scores[r][mine]);
                rivals += theirs / totals[r] * theirs / (theirs + here);
            }
        }

        var certainty = claim * claim / (claim + rivals);
        var why = scores[i][mine] is ChoicesAlone ? "its choices are those of it" : Why(row, meaning, phrase);
        return new Suggestion(meaning.Of.Setting, Math.Round(Math.Clamp(certainty, 0.01, 0.99), 2), why);
    }

    private Suggestion Nothing(ListedParameter row, double[] scores)
    {
        var best = -1;
        for (var m = 0; m < scores.Length; m++)
        {
            best = meanings[m].Of.Setting is null && scores[m] > 0 && (best < 0 || scores[m] > scores[best]) ? m : best;
        }

        return new Suggestion(null, 0, best < 0 ? "nothing like it in the vocabulary of settings" : $"no setting: {meanings[best].Of.Name}") { IsReading = row.Access is ParameterAccess.ReadOnly || (best >= 0 && row.Access is null && row.Default is null && meanings[best].Of.IsReading) };
    }

    private static string Why(ListedParameter row, KnownMeaning meaning, Phrase phrase)
    {
        var reasons = new List<string> { $"it is named like \"{phrase.Text}\"" };
        if (row.Unit.Length > 0 && meaning.Of.Dimensions.Count > 0)
        {
            reasons.Add(ProfileUnit.Find(row.Unit) is { } unit && meaning.Of.Dimensions.Contains(unit.Dimension) ? $"counts in {row.Unit}" : $"but counts in {row.Unit}");
        }

        if (row.IsChosen && meaning.Choices.Count > 0)
        {
            reasons.Add($"has {row.Choices.Count} choices");
        }

        return string.Join(", ", reasons);
    }
}
