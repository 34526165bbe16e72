namespace Runup.Cli.Terminal;

/// <summary>Text as it may go to a terminal: whatever a file, a name or a wire brought into it, it moves no cursor and colours nothing.</summary>
internal static class Visible
{
    internal static string Text(string text) => text.Any(IsHidden) ? string.Concat(text.Select(c => IsHidden(c) ? '�' : c)) : text;

    internal static bool IsHidden(char c) => (char.IsControl(c) && c is not ('\n' or '\t')) || c is '\u2028' or '\u2029' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');
}
