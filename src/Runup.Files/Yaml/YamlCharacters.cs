namespace Runup.Files.Yaml;

/// <summary>Looks for characters that YAML forbids or that make a file look other than it is.</summary>
internal static class YamlCharacters
{
    internal static bool AreFit(string text, Problems problems)
    {
        if (text.Length > YamlLimits.Bytes)
        {
            problems.AddForFile($"it has more than {YamlLimits.Bytes} characters", "a file of this kind is far smaller; is it the right one?");
            return false;
        }

        var before = problems.Count;
        var line = 1;
        var lineStart = 0;
        for (var i = 0; i < text.Length && problems.Count - before < 20; i++)
        {
            var c = text[i];
            if (c == '\n' || (c == '\r' && (i + 1 == text.Length || text[i + 1] != '\n')))
            {
                line++;
                lineStart = i + 1;
                continue;
            }

            if (Explain(text, lineStart, i) is { } unfit)
            {
                problems.Add(new Place(line, i - lineStart + 1, i, i + 1), FileProblem.WholeFile, unfit.Found, unfit.WouldDo);
            }
        }

        return problems.Count == before;
    }

    /// <summary>What must not stand in a value, in words; null where all of it may.</summary>
    internal static string? FirstUnfit(string value)
    {
        for (var i = 0; i < value.Length; i++)
        {
            if (value[i] is not ('\n' or '\t') && (Explain(value, 0, i)?.Found ?? (value[i] == '\r' ? "a carriage return" : null)) is { } found)
            {
                return found;
            }
        }

        return null;
    }

    /// <summary>A text from elsewhere with a mark in place of each character that must not stand in a value.</summary>
    internal static string Marked(string text)
    {
        if (FirstUnfit(text) is null)
        {
            return text;
        }

        return string.Create(text.Length, text, static (marked, from) =>
        {
            for (var i = 0; i < marked.Length; i++)
            {
                marked[i] = from[i] is not ('\n' or '\t') && (Explain(from, 0, i) is not null || from[i] == '\r') ? '\uFFFD' : from[i];
            }
        });
    }

    private static (string Found, string WouldDo)? Explain(string text, int lineStart, int i) => text[i] switch
    {
        '\t' when IsIndent(text, lineStart, i) => ("a tab in the indentation", "indent with spaces"),
        '\t' or '\r' => null,
        '\0' => ("a NUL character", "is this a text file? If so, delete the character"),
        '\u0085' or '\u2028' or '\u2029' => ("a line separator that not every editor shows", "an ordinary line end would do"),
        '\uFEFF' when i > 0 => ("a byte-order mark inside the text", "delete the character"),
        >= '\u202A' and <= '\u202E' or >= '\u2066' and <= '\u2069' => ("a character that reverses the direction of reading", "delete the character"),
        var c when char.IsControl(c) => ($"the control character U+{(int)c:X4}", "delete the character"),
        var c when char.IsSurrogate(c) && !IsPaired(text, i) => ("half of a character", "delete it and write it again"),
        _ => null,
    };

    private static bool IsIndent(string text, int lineStart, int i) =>
        text.AsSpan(lineStart, i - lineStart).IndexOfAnyExcept(' ', '\t') < 0 && !IsBlankFrom(text, i);

    private static bool IsBlankFrom(string text, int i)
    {
        while (i < text.Length && text[i] is ' ' or '\t')
        {
            i++;
        }

        return i == text.Length || text[i] is '\r' or '\n' or '#';
    }

    private static bool IsPaired(string text, int i) => char.IsHighSurrogate(text[i])
        ? i + 1 < text.Length && char.IsLowSurrogate(text[i + 1])
        : i > 0 && char.IsHighSurrogate(text[i - 1]);
}
