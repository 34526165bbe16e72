using System.Text.RegularExpressions;

namespace Runup.Files.Listings;

/// <summary>What one count is worth on the display, as tables print it: 0.1, ×0.01, 0.1 Hz, 1/100, 1 = 0.01 s.</summary>
internal static partial class ScaleCell
{
    internal static (decimal PerCount, string? Unit)? Read(string text, NumberHabit habit)
    {
        var plain = NumberCell.Clean(text);
        if (Form().Match(plain) is not { Success: true } match || habit.Read(match.Groups["value"].Value) is not { Value: > 0 } value)
        {
            return null;
        }

        var unit = UnitCell.Read(match.Groups["unit"].Value);
        var counts = match.Groups["counts"];
        if (match.Groups["over"].Success)
        {
            return (1 / value.Value, unit);
        }

        return counts.Success && habit.Read(counts.Value) is { Value: > 0 } many ? (value.Value / many.Value, unit) : (value.Value, unit);
    }

    [GeneratedRegex(@"^(?:(?<counts>\d+)\s*(?:=|≙|≡|->)\s*|(?<over>1?\s*[/÷:])\s*|[x×*]\s*)?(?<value>\d+(?:[.,]\d+)?)\s*(?<unit>[A-Za-zΩµ%‰°/][\w/%.\-]*)?\s*$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Form();
}
