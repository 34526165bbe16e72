namespace Runup.Commissioning.Sheet;

/// <summary>A column of the sheet in files for programs.</summary>
/// <param name="Name">Its heading.</param>
/// <param name="Width">Characters that it needs.</param>
/// <param name="Cell">What stands in it.</param>
public sealed record SheetColumn(string Name, int Width, Func<SheetEntry, SheetCell> Cell);

/// <summary>The columns of CSV and spreadsheet: one value in each cell, units beside them, two to fill in by hand.</summary>
public static class SheetColumns
{
    /// <summary>How many of them, from the first, a person needs on paper.</summary>
    public const int OnPaper = 14;

    /// <summary>The columns, in order.</summary>
    public static IReadOnlyList<SheetColumn> All { get; } =
    [
        new("order", 7, e => new SheetCell.Number(e.Line.Order)),
        new("parameter", 11, e => Words(e.Line.Parameter?.Number)),
        new("name", 30, e => Words(e.Name)),
        new("enter", 14, e => SheetCell.OfDisplay(e.Enter)),
        new("unit", 11, e => Words(e.Unit)),
        new("before", 14, e => SheetCell.OfDisplay(e.Line.BeforeDisplay)),
        new("before_unit", 13, e => Words(e.BeforeUnit)),
        new("factory", 14, e => SheetCell.OfDisplay(e.Line.Default?.Display)),
        new("factory_unit", 13, e => Words(e.DefaultUnit)),
        new("changed", 9, e => Words(!e.IsOffered ? "" : e.Line.Changed ? "yes" : "no")),
        new("done", 7, _ => SheetCell.Blank),
        new("found", 14, _ => SheetCell.Blank),
        new("mark", 26, e => Words(string.Join("; ", e.Marks))),
        new("why", 70, e => Words(e.Why)),
        new("lowest", 12, e => SheetCell.OfDisplay(e.Line.Low?.Display)),
        new("highest", 12, e => SheetCell.OfDisplay(e.Line.High?.Display)),
        new("rank", 8, e => Words(e.Row.Rank?.ToString().ToLowerInvariant())),
        new("group", 22, e => Words(e.Line.Parameter?.Group)),
        new("setting", 28, e => Words(string.Join(", ", e.Line.Settings.Select(s => s.Name)))),
    ];

    private static SheetCell.Words Words(string? text) => new(text ?? "");
}
