namespace Runup.Files.Listings;

/// <summary>Lines whose columns were lost in copying, with lowest and highest value in columns of their own: <c>30 Top speed 10.0 120.0 0.1 Hz 60.0</c>.</summary>
/// <param name="Numbers">How many numbers stand before the unit in most lines: the limits, or the limits and the step.</param>
internal sealed record LooseLimits(int Numbers)
{
    private static readonly NumberHabit Any = new(false);

    /// <summary>What most lines have; null where they have no two numbers before a unit.</summary>
    internal static LooseLimits? Of(IEnumerable<string> lines)
    {
        var runs = lines.Select(Tokens).Select(t => (Tokens: t, Unit: Unit(t))).Where(t => t.Unit > 0).Select(t => Run(t.Tokens, t.Unit)).ToList();
        var with = runs.Count(r => r >= 2);
        return with < 5 || with * 2 < runs.Count ? null : new LooseLimits(runs.Count(r => r >= 3) * 10 >= with * 6 ? 3 : 2);
    }

    /// <summary>Name, range, unit and factory value of what stands behind a line's number; null where the limits do not stand there.</summary>
    internal string[]? Read(string rest)
    {
        var tokens = Tokens(rest);
        var unit = Unit(tokens);
        var end = unit > 0 ? unit : End(tokens);
        if (end < Numbers + 1 || Run(tokens, end) < Numbers || Any.Read(tokens[end - Numbers]) is not { } low || Any.Read(tokens[end - Numbers + 1]) is not { } high || low.Value > high.Value)
        {
            return null;
        }

        var behind = unit > 0 ? unit + 1 : end;
        var preset = behind < tokens.Length && Any.Read(tokens[behind]) is not null ? tokens[behind] : "";
        return [string.Join(' ', tokens[..(end - Numbers)]), $"{tokens[end - Numbers]} to {tokens[end - Numbers + 1]}", unit > 0 ? tokens[unit] : "", preset];
    }

    private static string[] Tokens(string text) => text.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    // The first unit behind a number.
    private static int Unit(string[] tokens)
    {
        for (var i = 1; i < tokens.Length; i++)
        {
            if (IsNumber(tokens[i - 1]) && !IsNumber(tokens[i]) && UnitCell.Read(tokens[i]) is not null)
            {
                return i;
            }
        }

        return -1;
    }

    // Without a unit: behind the limits, where the factory value is the last of the numbers.
    private int End(string[] tokens)
    {
        for (var i = Numbers + 1; i < tokens.Length; i++)
        {
            if (IsNumber(tokens[i]) && Run(tokens, i + 1) > Numbers && (i + 1 == tokens.Length || !IsNumber(tokens[i + 1])))
            {
                return i;
            }
        }

        return -1;
    }

    private static int Run(string[] tokens, int end)
    {
        var count = 0;
        while (end - count > 0 && IsNumber(tokens[end - count - 1]))
        {
            count++;
        }

        return count;
    }

    private static bool IsNumber(string token) => (char.IsAsciiDigit(token[0]) || (token.Length > 1 && token[0] is '-' or '−' && char.IsAsciiDigit(token[1]))) && Any.Read(token) is not null;
}
