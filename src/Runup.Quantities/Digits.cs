namespace Runup.Quantities;

/// <summary>The digits at the start of a text, sorted into whole part and decimals.</summary>
internal readonly ref struct Digits
{
    private Digits(int length, string whole, string decimals)
    {
        Length = length;
        Whole = whole;
        Decimals = decimals;
    }

    /// <summary>How many characters they take, with what stands between them.</summary>
    internal int Length { get; }

    /// <summary>The whole part without grouping, "0" where there is none.</summary>
    internal string Whole { get; }

    /// <summary>The digits after the decimal sign.</summary>
    internal string Decimals { get; }

    /// <summary>What is wrong, or null.</summary>
    internal NumberFault? Fault { get; private init; }

    /// <summary>Whether the decimal sign may as well separate thousands.</summary>
    internal bool Ambiguous { get; private init; }

    /// <summary>How they were written.</summary>
    internal NumberNotation Notation { get; private init; }

    /// <summary>Whether they are digits and nothing else.</summary>
    internal bool ArePlain { get; private init; }

    internal static Digits Take(ReadOnlySpan<char> text)
    {
        var length = 0;
        var spaced = false;
        while (length < text.Length)
        {
            if (IsGroupingSpace(text, length))
            {
                spaced = true;
            }
            else if (!char.IsAsciiDigit(text[length]) && text[length] is not ('.' or ','))
            {
                break;
            }

            length++;
        }

        var body = text[..length];
        if (body.IndexOfAnyInRange('0', '9') < 0)
        {
            return new(length, "", "") { Fault = NumberFault.None };
        }

        return body.IndexOf("..") >= 0 ? new(length, "", "") { Fault = NumberFault.TwoValues } : Sort(body, spaced);
    }

    private static Digits Sort(ReadOnlySpan<char> body, bool spaced)
    {
        var points = body.Count('.');
        var commas = body.Count(',');
        if (points + commas == 0)
        {
            return IsGrouped(body, ' ')
                ? new(body.Length, Only(body), "") { ArePlain = !spaced }
                : new(body.Length, "", "") { Fault = NumberFault.Malformed };
        }

        var last = body.LastIndexOfAny('.', ',');
        var decimalSign = body[last];
        var before = body[..last];
        var after = body[(last + 1)..];
        if (points + commas > 1 && (points == 0 || commas == 0))
        {
            // The same sign twice can only separate thousands.
            return !spaced && IsGrouped(body, decimalSign)
                ? new(body.Length, Only(body), "")
                : new(body.Length, "", "") { Fault = NumberFault.Malformed };
        }

        var grouping = decimalSign == '.' ? ',' : '.';
        var isGrouped = before.Contains(grouping);
        if (after.IsEmpty || before.Contains(decimalSign) || after.ContainsAnyExceptInRange('0', '9') || (isGrouped && spaced) || !IsGrouped(before, isGrouped ? grouping : ' '))
        {
            return new(body.Length, "", "") { Fault = NumberFault.Malformed };
        }

        var thousandsLike = after.Length == 3 && !isGrouped && !spaced && before.Length is >= 1 and <= 3 && before[0] != '0';
        return new(body.Length, before.IsEmpty ? "0" : Only(before), after.ToString())
        {
            Ambiguous = thousandsLike && decimalSign == ',',
            Notation = (decimalSign, thousandsLike) switch
            {
                (',', false) => NumberNotation.DecimalComma,
                ('.', true) => NumberNotation.PointBeforeThreeDigits,
                _ => NumberNotation.Plain,
            },
        };
    }

    // A space or an apostrophe between a digit and just three more.
    private static bool IsGroupingSpace(ReadOnlySpan<char> text, int i) =>
        text[i] is ' ' or '\u00A0' or '\u2009' or '\u202F' or '\'' or '’'
        && i > 0 && char.IsAsciiDigit(text[i - 1])
        && i + 3 < text.Length && char.IsAsciiDigit(text[i + 1]) && char.IsAsciiDigit(text[i + 2]) && char.IsAsciiDigit(text[i + 3])
        && (i + 4 == text.Length || !char.IsAsciiDigit(text[i + 4]));

    // 1 to 3 digits, then groups of just three; without separators any number of digits. The sign ' ' stands for all kinds of space.
    private static bool IsGrouped(ReadOnlySpan<char> digits, char separator)
    {
        var run = 0;
        var isFirst = true;
        foreach (var c in digits)
        {
            if (char.IsAsciiDigit(c))
            {
                run++;
                continue;
            }

            if ((separator != ' ' && c != separator) || (isFirst ? run is < 1 or > 3 : run != 3))
            {
                return false;
            }

            isFirst = false;
            run = 0;
        }

        return isFirst || run == 3;
    }

    private static string Only(ReadOnlySpan<char> body)
    {
        Span<char> digits = stackalloc char[body.Length];
        var count = 0;
        foreach (var c in body)
        {
            if (char.IsAsciiDigit(c))
            {
                digits[count++] = c;
            }
        }

        return digits[..count].ToString();
    }
}
