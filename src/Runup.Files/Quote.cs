namespace Runup.Files;

/// <summary>Shows a piece of a file in a message: in backquotes, on one line, and not endless.</summary>
internal static class Quote
{
    private const int Longest = 60;

    internal static string Of(string text) => $"`{Shown(text)}`";

    /// <summary>The piece without the quotes.</summary>
    internal static string Shown(string text)
    {
        var cut = text.Length > Longest ? string.Concat(text.AsSpan(0, Longest), "…") : text;
        return cut.Any(c => Visible(c) != c) ? string.Concat(cut.Select(Visible)) : cut;
    }

    /// <summary>A message that stays on its line whatever a file or its name brought into it.</summary>
    internal static string OneLine(string message) => message.Any(c => Visible(c) != c) ? string.Concat(message.Select(Visible)) : message;

    internal static string List(IEnumerable<string> words) => string.Join(", ", words.Select(w => $"`{w}`"));

    // A message is one line on a terminal: nothing in a file may move the cursor or colour the screen.
    private static char Visible(char c) => char.IsControl(c) || c is '\u2028' or '\u2029' ? '�' : c;
}
