using Runup.Quantities;
using Runup.Settings;

namespace Runup.Profiles;

/// <summary>What unit, range, factory value, choices and access say for or against a meaning, as the logarithm of how much likelier it becomes.</summary>
internal sealed class MeaningEvidence(ListedParameter row, IReadOnlyList<List<Spoken>> choiceWords)
{
    private readonly Dictionary<string, double> agreements = new(StringComparer.Ordinal);
    private readonly (Dimension Dimension, Unit Unit)? unit = row.Unit.Length == 0 ? null : ProfileUnit.Find(row.Unit);

    internal double For(KnownMeaning meaning)
    {
        if (row.Access is ParameterAccess.ReadOnly != meaning.Of.IsReading && row.Access is not null)
        {
            // A list that marks access tells readings from settings for certain.
            return meaning.Of.IsReading ? -4 : -7;
        }

        if (row.Access is ParameterAccess.Action or ParameterAccess.Command && meaning.Of.Setting is not null)
        {
            return -7;
        }

        return OfUnit(meaning) + OfKind(meaning) + OfFigures(meaning.Of) + OfFactory(meaning.Of);
    }

    /// <summary>How far the row's choices are the meaning's, 0 to 1; 0 where it is no row of choices.</summary>
    internal double Agrees(KnownMeaning meaning) => row is { IsChosen: true, Access: not ParameterAccess.ReadOnly } && unit is null ? Agreement(meaning) : 0;

    // A reading has no factory value. The other way round says little: some tables leave it to the size.
    private double OfFactory(TradeMeaning meaning) => (meaning.IsReading, row.Default) switch
    {
        (true, not null) => -2,
        (true, null) => 0.5,
        _ => 0,
    };

    private double OfUnit(KnownMeaning meaning)
    {
        var wanted = meaning.Of.Dimensions;
        if (wanted.Count == 0)
        {
            // A choice has no unit.
            return meaning.Of.Setting?.Form is SettingForm.OneOf && unit is { } odd && odd.Dimension != Dimension.PureNumber ? -3 : 0;
        }

        if (row.IsChosen)
        {
            return 0;
        }

        if (unit is not { } printed)
        {
            return row.Unit.Length > 0 ? -0.5 : wanted.Contains(Dimension.PureNumber) ? 0.5 : -1.2;
        }

        var place = -1;
        for (var i = 0; i < wanted.Count && place < 0; i++)
        {
            place = wanted[i] == printed.Dimension ? i : -1;
        }

        return place switch { < 0 => -4, 0 => 1.2, _ => 0.5 };
    }

    private double OfKind(KnownMeaning meaning)
    {
        if (meaning.Of.Setting is null && meaning.Choices.Count == 0)
        {
            return 0;
        }

        var isOneOf = meaning.Of.Setting?.Form is SettingForm.OneOf || (meaning.Of.Setting is null && meaning.Choices.Count > 0);
        if (!row.IsChosen)
        {
            var few = row.Low is >= 0 and <= 1 && row.High is <= 40 && unit is null;
            return isOneOf ? few ? -0.3 : -3.5 : 0;
        }

        if (!isOneOf)
        {
            var numbers = row.Choices.Count(c => c.Label.Any(char.IsAsciiDigit));
            return 2 * numbers >= row.Choices.Count ? 0.2 : -3;
        }

        return 3.2 * (Agreement(meaning) - 0.35);
    }

    /// <summary>Which part of the row's choices, and of the meaning's, say one another.</summary>
    private double Agreement(KnownMeaning meaning)
    {
        if (meaning.Choices.Count == 0 || choiceWords.Count == 0)
        {
            return 0.35;
        }

        // Numbered settings, such as the digital inputs, have the same choices.
        if (!agreements.TryGetValue(meaning.ChoicesKey, out var agreement))
        {
            var said = choiceWords.Select(meaning.Counterpart).OfType<string>().ToList();
            var distinct = said.Distinct(StringComparer.Ordinal).Count();
            agreement = (0.7 * said.Count / choiceWords.Count) + (0.3 * Math.Min(1.0, distinct / Math.Min(2.0, meaning.Choices.Count)));
            agreements.Add(meaning.ChoicesKey, agreement);
        }

        return agreement;
    }

    private double OfFigures(TradeMeaning meaning)
    {
        if (row.IsChosen)
        {
            return 0;
        }

        return Within(row.Default, meaning.Default) + Within(row.High, meaning.Highest);
    }

    private double Within(decimal? figure, (double Low, double High)? usual)
    {
        if (figure is not { } printed || usual is not { } band)
        {
            return 0;
        }

        var value = (double)printed * (unit is { } u && u.Dimension != Dimension.PureNumber && u.Unit.Offset == 0 ? u.Unit.ToSi(1) / Printed(u.Dimension) : 1);
        return value >= band.Low && value <= band.High ? 0.5 : -0.9;
    }

    // Bands stand in Hz, V, A, s, per cent, kW and rpm.
    private static double Printed(Dimension dimension) => dimension == Dimension.Fraction ? 0.01 : dimension.Units[0].ToSi(1);
}
