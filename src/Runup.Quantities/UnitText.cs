namespace Runup.Quantities;

/// <summary>Finds the unit that a person wrote.</summary>
internal static class UnitText
{
    /// <summary>The unit of a dimension, or null.</summary>
    /// <remarks>
    /// First as spelled; then without regard to which dot, power sign or µ was typed; last without regard to case, except that a
    /// first letter m or M must be as listed: mW is not MW.
    /// </remarks>
    internal static Unit? Find(Dimension dimension, string text)
    {
        if (Exactly(dimension, text) is { } exact)
        {
            return exact;
        }

        var plain = Plain(text);
        return Among(dimension, s => string.Equals(Plain(s), plain, StringComparison.Ordinal))
            ?? (OtherDimension(dimension, text) is null ? Among(dimension, s => IsSameButForCase(Plain(s), plain)) : null);
    }

    /// <summary>Another dimension that has the unit as spelled, or null.</summary>
    internal static Dimension? OtherDimension(Dimension wanted, string text)
    {
        foreach (var dimension in Dimension.All)
        {
            if (dimension != wanted && text.Length > 0 && Exactly(dimension, text) is not null)
            {
                return dimension;
            }
        }

        return null;
    }

    /// <summary>The unit that a mistyped one was meant to be, or null; never one that differs by the case of m and M alone.</summary>
    internal static string? Nearest(Dimension dimension, string text) =>
        text.Length < 3 ? null : Spelling.Nearest(text, dimension.Units.SelectMany(u => u.Spellings.Prepend(u.Symbol)).Where(s => !string.Equals(s, text, StringComparison.OrdinalIgnoreCase)));

    private static Unit? Exactly(Dimension dimension, string text)
    {
        foreach (var unit in dimension.Units)
        {
            if (string.Equals(unit.Symbol, text, StringComparison.Ordinal) || unit.Spellings.Contains(text, StringComparer.Ordinal))
            {
                return unit;
            }
        }

        return null;
    }

    private static Unit? Among(Dimension dimension, Func<string, bool> isSame)
    {
        foreach (var unit in dimension.Units)
        {
            if (isSame(unit.Symbol) || unit.Spellings.Any(isSame))
            {
                return unit;
            }
        }

        return null;
    }

    private static bool IsSameButForCase(string listed, string text) =>
        string.Equals(listed, text, StringComparison.OrdinalIgnoreCase)
        && (listed.Length == 0 || listed[0] == text[0] || listed[0] is not ('m' or 'M'));

    // Without dots and spaces, with one sign for each of the many that keyboards offer: lb⋅ft², lb-ft^2 and lb.ft2 are all lbft2.
    private static string Plain(string text)
    {
        Span<char> plain = stackalloc char[text.Length];
        var count = 0;
        for (var i = 0; i < text.Length; i++)
        {
            var sign = text[i] switch
            {
                '⋅' or '·' or '•' or '∙' or '‧' or '*' or '.' or ' ' or '\u00A0' or '^' => '\0',
                '-' or '−' or '⁻' => i + 1 < text.Length && text[i + 1] is '1' or '¹' ? '-' : '\0',
                '²' => '2',
                '¹' => '1',
                'µ' or 'μ' => 'u',
                '\u2126' => 'Ω',
                'º' or '˚' => '°',
                var c => c,
            };
            if (sign != '\0')
            {
                plain[count++] = sign;
            }
        }

        return plain[..count].ToString();
    }
}
