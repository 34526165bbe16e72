using Runup.Quantities;
using Runup.Settings;

namespace Runup.Profiles;

/// <summary>How people of the trade name things: words with their spellings, and for each meaning the phrases and figures that speak for it.</summary>
/// <param name="Words">The words.</param>
/// <param name="Meanings">What a parameter may mean: settings, and what is easily taken for one.</param>
public sealed record TradeVocabulary(IReadOnlyList<TradeWord> Words, IReadOnlyList<TradeMeaning> Meanings)
{
    /// <summary>Settings that tables keep together, by what they are called together.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<Setting>> Families { get; init; } = new Dictionary<string, IReadOnlyList<Setting>>(StringComparer.Ordinal);

    /// <summary>Objects of open standards, whose unit and use need no table to say them.</summary>
    public IReadOnlyList<TradeObject> Objects { get; init; } = [];
}

/// <summary>An object of an open standard.</summary>
/// <param name="Number">Its index, with the sub-index where it has one, such as <c>6046h:1</c>.</param>
/// <param name="Name">Its name there.</param>
/// <param name="Unit">Its unit; empty for a pure number.</param>
/// <param name="Access">What writing it does, where the standard says it.</param>
public sealed record TradeObject(string Number, string Name, string Unit, ParameterAccess? Access);

/// <summary>A word of the trade.</summary>
/// <param name="Name">The word.</param>
/// <param name="Spellings">How else it is written, abbreviated or said; a spelling may be of several words.</param>
/// <param name="Weight">How much it says: 1 for a common word of the trade, near 0 for one that says nothing.</param>
/// <param name="Spoils">Whether its presence alone makes something else of what the other words say, such as <c>warning</c>.</param>
public sealed record TradeWord(string Name, IReadOnlyList<string> Spellings, double Weight, bool Spoils)
{
    /// <summary>Spellings of other words that often stand for this one, such as speed for frequency.</summary>
    public IReadOnlyList<string> Near { get; init; } = [];
}

/// <summary>What a parameter may mean, and what speaks for it.</summary>
public sealed record TradeMeaning
{
    /// <summary>Name of the setting, or of what is easily taken for one.</summary>
    public required string Name { get; init; }

    /// <summary>The setting; null for what is none.</summary>
    public Setting? Setting { get; init; }

    /// <summary>How it is named, in words of the trade; what stands in brackets may be left out.</summary>
    public required IReadOnlyList<string> Phrases { get; init; }

    /// <summary>Dimensions that its unit may have.</summary>
    public IReadOnlyList<Dimension> Dimensions { get; init; } = [];

    /// <summary>Usual factory values, in the setting's unit; null where anything is usual.</summary>
    public (double Low, double High)? Default { get; init; }

    /// <summary>Usual highest values, in the setting's unit.</summary>
    public (double Low, double High)? Highest { get; init; }

    /// <summary>Phrases for each of its choices, by the setting's own names of them.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string>> Choices { get; init; } = new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal);

    /// <summary>Object indexes of an open standard that always mean it, such as <c>6075h</c>.</summary>
    public IReadOnlyList<string> Objects { get; init; } = [];

    /// <summary>Whether its choices tell it, whatever it is called.</summary>
    public bool IsToldByChoices { get; init; }

    /// <summary>Whether it is usually only read.</summary>
    public bool IsReading { get; init; }
}
