namespace Runup.Files.Yaml;

/// <summary>
/// Finds the brace or bracket that was left open. The parser reads on over the ends of lines for what closes it, and stumbles on a
/// later line that has no fault; the line to mend is that of the brace.
/// </summary>
internal static class YamlBrackets
{
    /// <summary>What to say of the last one opened on a line above and not closed there; null where all are closed.</summary>
    internal static (Place At, string Found, string WouldDo)? LeftOpenAbove(string text, int line)
    {
        var open = new Stack<(char Sign, Place At)>();
        var number = 0;
        foreach (var row in text.AsSpan().EnumerateLines())
        {
            if (++number >= line)
            {
                break;
            }

            Follow(row, number, open);
        }

        return open.TryPeek(out var left)
            ? (left.At, $"a `{left.Sign}` that is not closed before line {line}", "close it, with commas between what is inside")
            : null;
    }

    private static void Follow(ReadOnlySpan<char> row, int line, Stack<(char Sign, Place At)> open)
    {
        var before = ' ';
        for (var i = 0; i < row.Length; i++)
        {
            var sign = row[i];
            if (sign == '#' && (i == 0 || row[i - 1] == ' '))
            {
                return;
            }

            // Within a word a quote or an opening sign is a letter like any other.
            var begins = before is ' ' or ':' or ',' or '{' or '[' or '-';
            if (begins && sign is ('"' or '\''))
            {
                var length = row[(i + 1)..].IndexOf(sign);
                i = length < 0 ? row.Length : i + 1 + length;
            }
            else if (begins && sign is ('{' or '['))
            {
                open.Push((sign, new Place(line, i + 1, 0, 0)));
            }
            else if (sign is ('}' or ']') && open.Count > 0)
            {
                open.Pop();
            }

            before = sign == ' ' ? before : sign;
        }
    }
}
