using YamlDotNet.Core;

namespace Runup.Files.Yaml;

/// <summary>Says what the parser stumbled over, and what usually is behind it.</summary>
internal static class YamlSyntax
{
    internal static (string Found, string WouldDo) Explain(YamlException e)
    {
        var message = e.Message;
        return message switch
        {
            _ when HasAny(message, "alias", "anchor") => ("a `&` or `*` at the start of a value", "write the value out, or put it in quotes"),
            _ when IsOfBrackets(e) => ("a bracket or brace that is not closed", "close it, with commas between what is inside"),
            _ when HasAny(message, "invalid mapping", "values are not allowed") => ("a second `: ` on the line, or a line indented too far", "put the value in quotes, or align the line with its group"),
            _ when HasAny(message, "did not find expected key", "expected '-'", "entries are not allowed", "indentation") => ("a line that does not fit the indentation around it", "keys of one group begin in one column, each followed by `: `"),
            _ when HasAny(message, "could not find expected ':'") => ("a line without `: `", "each line is `key: value`"),
            _ when HasAny(message, "quoted scalar, found unexpected end", "found unexpected document indicator") => ("a quote that is not closed", "close it"),
            _ when HasAny(message, "unknown escape", "hexadecimal", "character escape", "surrogates") => ("an escape that double quotes do not know", "use single quotes, where a backslash is a backslash"),
            _ when HasAny(message, "cannot start any token", "node content") => ("a character that can't begin a value", "put the value in quotes"),
            _ when HasAny(message, "scanning a tag", "tag handle") => ("a `!` at the start of a value", "put the value in quotes"),
            _ => ($"text that is not YAML ({message.TrimEnd('.')})", "each line is `key: value`, groups are indented by spaces"),
        };
    }

    /// <summary>Whether the parser missed a comma or the end of what stands in brackets or braces.</summary>
    internal static bool IsOfBrackets(YamlException e) => HasAny(e.Message, "',' or '}'", "',' or ']'");

    private static bool HasAny(string message, params ReadOnlySpan<string> parts)
    {
        foreach (var part in parts)
        {
            if (message.Contains(part, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }
}
