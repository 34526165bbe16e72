using Runup.Profiles;

namespace Runup.Commissioning.Sheet;

/// <summary>A line of the sheet as a person at the drive needs it.</summary>
/// <param name="Row">The line with what the plan says of it.</param>
/// <param name="Marks">What to stop at.</param>
/// <param name="Why">Why this value, or what to do about a setting without counterpart.</param>
public sealed record SheetEntry(SheetRow Row, IReadOnlyList<SheetMark> Marks, string Why)
{
    /// <summary>What comes of it that the drive cannot hold just what is wanted, worked out again; null where it can, or nothing can be told.</summary>
    public string? Effect { get; init; }

    /// <summary>The line.</summary>
    public SheetLine Line => Row.Line;

    /// <summary>Whether the drive has a parameter for it.</summary>
    public bool IsOffered => Line.Parameter is not null;

    /// <summary>The parameter's name; of a setting without parameter the setting's.</summary>
    public string Name => Line.Parameter?.Name ?? string.Join(", ", Line.Settings.Select(s => s.Name));

    /// <summary>What the display shows when it is right; <c>choose</c> where a person has to.</summary>
    public string Enter => !IsOffered ? "" : Line.Display ?? "choose";

    /// <summary>Unit of <see cref="Enter"/>; empty for words, choices and pure numbers.</summary>
    public string Unit => UnitOf(Line.Display, Line.Unit);

    /// <summary>Unit of what the display shows before; empty for words, choices and pure numbers.</summary>
    public string BeforeUnit => UnitOf(Line.BeforeDisplay, Line.BeforeUnit);

    /// <summary>Unit of what the display shows from the factory; empty for words, choices and pure numbers.</summary>
    public string DefaultUnit => UnitOf(Line.Default?.Display, Line.Default?.Unit);

    /// <summary>What the display shows from the factory, in its own unit.</summary>
    public string Default => Line.Default?.Text ?? "";

    /// <summary>Whether there is something to turn, or to choose.</summary>
    public bool IsOpen => IsOffered && (Line.Changed || Line.Raw is null);

    /// <summary>What the display shows before, in its own unit, or <c>same</c>: then there is nothing to turn.</summary>
    public string Before => Line switch
    {
        { Parameter: null } => "",
        { BeforeDisplay: null } => "not known",
        { Changed: false, Raw: { } raw } when raw == Line.Before!.Raw => "same",
        _ => $"{Line.BeforeDisplay} {BeforeUnit}".TrimEnd(),
    };

    /// <summary>Marks and reason in one cell.</summary>
    public string MarksAndWhy => Marks.Count == 0 ? Why : $"{string.Join(", ", Marks)}: {Why}";

    internal static SheetEntry Of(SheetRow row, DriveProfile profile, IReadOnlyList<string> foundOtherwise, string? effect) =>
        new(row, [.. SheetMark.Of(row.Line, profile, foundOtherwise)], Reason(row, effect)) { Effect = effect };

    private static string Reason(SheetRow row, string? effect) => row switch
    {
        { Line.Parameter: null } => $"{Ended(row.Reason)} {Instead.Of(row.Line.Settings)}".TrimStart(),
        { Rank: null } => string.Join("; ", new[] { "the job does not decide it; leave it as it is", row.Line.Note }.OfType<string>()),
        _ => string.Join("; ", new[] { row.Reason, effect }.OfType<string>()),
    };

    private static string? Ended(string? reason) => reason is null or [.., '.'] ? reason : reason + ".";

    // A special value, such as off, stands on the display alone.
    private static string UnitOf(string? display, string? unit) => SheetCell.OfDisplay(display) is SheetCell.Number ? unit ?? "" : "";
}
