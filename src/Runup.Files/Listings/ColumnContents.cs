namespace Runup.Files.Listings;

/// <summary>How well what stands in a column goes with a role, 0 to 1.</summary>
internal static class ColumnContents
{
    private static readonly NumberHabit Any = new(false);

    internal static double Fit(ColumnRole role, IReadOnlyList<string> cells)
    {
        if (cells.Count == 0)
        {
            return 0;
        }

        return role switch
        {
            ColumnRole.Number => Numbers(cells),
            ColumnRole.Sub => Part(cells, c => c.Length <= 4 && c.All(char.IsAsciiHexDigit)) * 0.3,
            ColumnRole.Name => Words(cells),
            ColumnRole.Group => 0.3 * Math.Max(0, 1 - (4.0 * cells.Distinct(StringComparer.Ordinal).Count() / cells.Count)) * Part(cells, IsText),
            ColumnRole.Range => Part(cells, c => RangeText.Read(c, Any) is not null || ChoiceText.Read(c).Count > 0),
            ColumnRole.Low or ColumnRole.High => 0.35 * Part(cells, c => Any.Read(c) is not null),
            ColumnRole.Choices => 0.6 * Part(cells, c => ChoiceText.Read(c).Count > 0),
            ColumnRole.Unit => Part(cells, c => c.Length <= 12 && (UnitCell.Read(c) is not null || c is "-" or "–" or "—")),
            ColumnRole.Scale => 0.5 * Part(cells, c => ScaleCell.Read(c, Any) is { } s && s.PerCount is 1 or 0.1m or 0.01m or 0.001m or 10),
            ColumnRole.Default => 0.4 * Part(cells, c => c.Length <= 24 && (c[0] is '-' or '+' || char.IsAsciiDigit(c[0]))),
            ColumnRole.Access => Part(cells, c => c.Length <= 16 && AccessCell.Read(c, whileRunning: false) is not null),
            ColumnRole.WhileRunning => 0.4 * Part(cells, c => c.Length <= 3 && AccessCell.Read(c, whileRunning: true) is not null),
            ColumnRole.Register => Registers(cells),
            ColumnRole.Type => Part(cells, c => TypeCell.Read(c) is not null),
            ColumnRole.Remark => 0.25 * Part(cells, c => c.Length > 25),
            _ => 0,
        };
    }

    // Numbers differ from row to row and rise; a column of defaults does neither.
    private static double Numbers(IReadOnlyList<string> cells)
    {
        var numbers = cells.Where(c => NumberCell.Read(c, "", objects: false) is not null).Select(NumberCell.Clean).ToList();
        var distinct = (double)numbers.Distinct(StringComparer.Ordinal).Count() / Math.Max(1, numbers.Count);
        return (double)numbers.Count / cells.Count * Math.Pow(distinct, 1.5);
    }

    private static double Registers(IReadOnlyList<string> cells)
    {
        var column = RegisterColumn.Of(cells, "");
        return (column.From > 0 || cells.All(c => c.StartsWith("0x", StringComparison.OrdinalIgnoreCase)) ? 0.8 : 0.3) * Part(cells, c => column.Read(c) is not null);
    }

    private static double Words(IReadOnlyList<string> cells)
    {
        var distinct = (double)cells.Distinct(StringComparer.Ordinal).Count() / cells.Count;
        return 0.9 * Part(cells, IsText) * distinct;
    }

    private static bool IsText(string cell) => cell.Length >= 3 && cell.Count(char.IsLetter) * 2 > cell.Length && ChoiceText.Read(cell).Count == 0 && RangeText.Read(cell, Any) is null;

    private static double Part(IReadOnlyList<string> cells, Func<string, bool> is_) => (double)cells.Count(is_) / cells.Count;
}
