using Runup.Commissioning.Checks;

namespace Runup.Cli.Checks;

/// <summary>Severities in the words of JSON.</summary>
internal static class SeverityWords
{
    internal static string Word(this Severity severity) => severity switch
    {
        Severity.Note => "note",
        Severity.Caution => "caution",
        Severity.Blocker => "blocker",
        _ => throw new ArgumentOutOfRangeException(nameof(severity), severity, "There is no such severity."),
    };
}
