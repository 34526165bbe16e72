using System.Globalization;

namespace Runup.Files.Listings;

/// <summary>A range of values as a table prints it.</summary>
/// <param name="Low">Lowest; null where another parameter gives it or nothing is printed.</param>
/// <param name="High">Highest; null as well.</param>
/// <param name="Decimals">The most decimals that either is printed with.</param>
/// <param name="Unit">Unit that stands with it; null where none does.</param>
/// <param name="Rest">What stands behind it.</param>
internal sealed record RangeText(decimal? Low, decimal? High, int Decimals, string? Unit, string Rest)
{
    /// <summary>The range in a text; null where there is none.</summary>
    internal static RangeText? Read(string text, NumberHabit habit)
    {
        var held = NumberHabit.HoldTogether(text);
        if (Patterns.HexRange().Match(held) is { Success: true } hex && (hex.Groups["lh"].Length > 0 || held.Contains("0x", StringComparison.OrdinalIgnoreCase) || hex.Groups["low"].Value.Concat(hex.Groups["high"].Value).Any(char.IsAsciiLetter)))
        {
            return new RangeText(Hex(hex.Groups["low"].Value), Hex(hex.Groups["high"].Value), 0, null, "");
        }

        if (Patterns.Range().Match(held) is { Success: true } match
            && habit.Read(match.Groups["low"].Value) is { } low && habit.Read(match.Groups["high"].Value) is { } high)
        {
            var between = match.Groups["unit"].Value;
            var after = match.Groups["after"].Value;
            var unit = UnitCell.Leading(after);
            var lowest = match.Groups["low"].Value.StartsWith('±') ? -high.Value : low.Value;
            if (lowest > high.Value)
            {
                return null;
            }

            return new RangeText(lowest, high.Value, Math.Max(low.Decimals, high.Decimals), UnitCell.Read(unit) ?? UnitCell.Read(between), after[unit.Length..].Trim());
        }

        // ±100 %
        if (held.TrimStart().StartsWith('±') && Patterns.AnyNumber().Match(held) is { Success: true } both && habit.Read(both.Value) is { } span)
        {
            var after = held[(both.Index + both.Length)..].Trim();
            return new RangeText(-span.Value, span.Value, span.Decimals, UnitCell.Read(UnitCell.Leading(after)), after);
        }

        return null;
    }

    private static decimal Hex(string digits) => long.Parse(digits, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
}
