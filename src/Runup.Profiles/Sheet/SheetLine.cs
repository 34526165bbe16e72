using Runup.Settings;

namespace Runup.Profiles;

/// <summary>One line of the sheet: a parameter to enter, or a setting that finds none.</summary>
public sealed record SheetLine
{
    /// <summary>Place in the order of entry, from 1.</summary>
    public required int Order { get; init; }

    /// <summary>The parameter; null where the drive does not offer the setting.</summary>
    public Parameter? Parameter { get; init; }

    /// <summary>The settings that the line says: one, several chosen together, or none for a parameter that the plan leaves alone.</summary>
    public required IReadOnlyList<Setting> Settings { get; init; }

    /// <summary>How they stand in the parameter; null for a parameter that the plan leaves alone.</summary>
    public Mapping? Mapping { get; init; }

    /// <summary>How well the value says what the plan wants.</summary>
    public Fit Fit { get; init; } = Fit.Exact.Instance;

    /// <summary>The value to enter, in counts; null where there is none or a person has to choose it.</summary>
    public long? Raw { get; init; }

    /// <summary>What the display shows then, without unit.</summary>
    public string? Display { get; init; }

    /// <summary>Unit that the display stands in; null for choices and pure numbers.</summary>
    public string? Unit { get; init; }

    /// <summary>What the display shows before; null where it is not known.</summary>
    public ShownValue? Before { get; init; }

    /// <summary>The digits or the choice that the display shows before; null where it is not known.</summary>
    public string? BeforeDisplay => Before?.Display;

    /// <summary>Unit that the display stands in before, which may be another; null for choices and pure numbers.</summary>
    public string? BeforeUnit => Before?.Unit;

    /// <summary>What the display shows from the factory, on a drive of this size and region, beside what is entered before this line; null without parameter.</summary>
    public ShownValue? Default { get; init; }

    /// <summary>The lowest that the display takes when the parameter's turn comes; null for choices and without parameter.</summary>
    public ShownValue? Low { get; init; }

    /// <summary>The highest, likewise.</summary>
    public ShownValue? High { get; init; }

    /// <summary>Whether the display shows something else than before: another value, or the same digits in another unit (or what it showed is not known).</summary>
    public bool Changed { get; init; }

    /// <summary>How the value was worked out, or why there is none; null where there is nothing to say.</summary>
    public string? Note { get; init; }
}
