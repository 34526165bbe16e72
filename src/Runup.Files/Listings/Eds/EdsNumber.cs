using System.Globalization;

namespace Runup.Files.Listings.Eds;

/// <summary>Numbers of an electronic data sheet: decimal, hexadecimal with 0x, octal with a leading 0, and sums with <c>$NODEID</c>.</summary>
internal static class EdsNumber
{
    private const string NodeId = "$NODEID";

    /// <summary>A plain number; null where it is none.</summary>
    internal static long? Read(string text)
    {
        var plain = text.Trim();
        var sign = plain.StartsWith('-') ? -1 : 1;
        plain = plain.TrimStart('-', '+');
        if (plain.StartsWith("0x", StringComparison.OrdinalIgnoreCase))
        {
            return plain.Length <= 18 && ulong.TryParse(plain.AsSpan(2), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var hex) ? sign * unchecked((long)hex) : null;
        }

        if (plain.Length > 1 && plain[0] == '0' && plain.All(char.IsAsciiDigit))
        {
            return Octal(plain) is { } octal ? sign * octal : null;
        }

        return long.TryParse(plain, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? sign * number : null;
    }

    /// <summary>A number that may be counted from the node's: <c>$NODEID+0x600</c>, the parts in either order.</summary>
    internal static EdsValue ReadValue(string text, long? node)
    {
        var plain = text.Replace(" ", "", StringComparison.Ordinal);
        if (!plain.Contains(NodeId, StringComparison.OrdinalIgnoreCase))
        {
            return Read(plain) is { } number ? new EdsValue.Number(number) : new EdsValue.Unreadable();
        }

        var sum = 0L;
        foreach (var part in plain.Split('+'))
        {
            if (string.Equals(part, NodeId, StringComparison.OrdinalIgnoreCase))
            {
                sum += node ?? 0;
            }
            else if (Read(part) is { } number)
            {
                sum += number;
            }
            else
            {
                return new EdsValue.Unreadable();
            }
        }

        return node is null ? new EdsValue.ByNode() : new EdsValue.Number(sum);
    }

    private static long? Octal(string digits)
    {
        var value = 0L;
        foreach (var digit in digits)
        {
            if (digit is < '0' or > '7' || value > long.MaxValue / 16)
            {
                return null;
            }

            value = (value * 8) + (digit - '0');
        }

        return value;
    }
}

/// <summary>What a value of an electronic data sheet says.</summary>
internal abstract record EdsValue
{
    private EdsValue()
    {
    }

    /// <summary>A number.</summary>
    internal sealed record Number(long Value) : EdsValue;

    /// <summary>It depends on the node's number, which the file does not tell.</summary>
    internal sealed record ByNode : EdsValue;

    /// <summary>No number.</summary>
    internal sealed record Unreadable : EdsValue;
}
