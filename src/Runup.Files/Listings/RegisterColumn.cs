using System.Globalization;

namespace Runup.Files.Listings;

/// <summary>How a column of register addresses counts: decimal from 0, hexadecimal, or the old writing of holding registers from 40001.</summary>
/// <param name="IsHex">Whether hexadecimal without being marked.</param>
/// <param name="From">What is taken off to arrive at the address from 0.</param>
internal sealed record RegisterColumn(bool IsHex, int From)
{
    internal static RegisterColumn Of(IReadOnlyList<string> cells, string heading)
    {
        var plain = cells.Select(c => NumberCell.Clean(c)).Where(c => c.Length > 0).ToList();
        if (plain.Count > 0 && plain.All(c => int.TryParse(c, NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n is >= 40001 and <= 49999 or >= 400001 and <= 465536))
        {
            return new RegisterColumn(false, plain[0].Length == 6 ? 400001 : 40001);
        }

        var hex = heading.Contains("hex", StringComparison.OrdinalIgnoreCase) || plain.Exists(c => c.Length is 3 or 4 && c.Any(x => char.ToUpperInvariant(x) is >= 'A' and <= 'F') && c.All(char.IsAsciiHexDigit));
        return new RegisterColumn(hex, 0);
    }

    /// <summary>The address from 0 of a cell; null where it is none.</summary>
    internal int? Read(string text)
    {
        var plain = NumberCell.Clean(text).Split('/', '-', '–', ',')[0].Trim();
        var isHex = IsHex;
        if (plain.StartsWith("0x", StringComparison.OrdinalIgnoreCase))
        {
            (plain, isHex) = (plain[2..], true);
        }
        else if (plain.Length > 1 && plain[^1] is 'h' or 'H')
        {
            (plain, isHex) = (plain[..^1], true);
        }

        var style = isHex ? NumberStyles.AllowHexSpecifier : NumberStyles.None;
        return plain.Length is > 0 and <= 6 && int.TryParse(plain, style, CultureInfo.InvariantCulture, out var number) && number - From is >= 0 and <= ushort.MaxValue ? number - From : null;
    }
}
