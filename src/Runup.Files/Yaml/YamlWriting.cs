using System.Text;

namespace Runup.Files.Yaml;

/// <summary>Writes a single value so that YAML reads the same text back.</summary>
internal static class YamlWriting
{
    /// <summary>The value as it may stand in a file: plain where that is safe, else in quotes.</summary>
    /// <param name="text">The value.</param>
    /// <param name="inFlow">Whether it stands in braces or brackets, where commas end a value.</param>
    /// <param name="quote">The quotes that stood there before, which stay; or null.</param>
    internal static string Scalar(string text, bool inFlow, char? quote = null) => quote switch
    {
        '\'' when !text.Any(char.IsControl) => $"'{text.Replace("'", "''", StringComparison.Ordinal)}'",
        null when IsSafe(text, inFlow) => text,
        _ => Quoted(text),
    };

    private static bool IsSafe(string text, bool inFlow) =>
        text.Length > 0
        && text.Trim().Length == text.Length
        && text is not ("null" or "~")
        && !text.StartsWith("---", StringComparison.Ordinal)
        && !text.StartsWith("...", StringComparison.Ordinal)
        && text[0] is not (',' or '[' or ']' or '{' or '}' or '#' or '&' or '*' or '!' or '|' or '>' or '\'' or '"' or '%' or '@' or '`')
        && !(text[0] is '-' or '?' or ':' && (text.Length == 1 || text[1] is ' ' or ',' or '[' or ']' or '{' or '}'))
        && text[^1] != ':'
        && !text.Contains(": ", StringComparison.Ordinal)
        && !text.Contains(" #", StringComparison.Ordinal)
        && !text.Any(c => char.IsControl(c) || c is '\u2028' or '\u2029' or '\uFEFF')
        && !(inFlow && text.AsSpan().IndexOfAny(",[]{}") >= 0)
        && !(inFlow && text.Contains(':', StringComparison.Ordinal));

    private static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var c in text)
        {
            quoted.Append(c switch
            {
                '"' => "\\\"",
                '\\' => "\\\\",
                '\n' => "\\n",
                '\t' => "\\t",
                _ when char.IsControl(c) || c is '\u2028' or '\u2029' or '\uFEFF' => $"\\u{(int)c:X4}",
                _ => c.ToString(),
            });
        }

        return quoted.Append('"').ToString();
    }
}
