namespace Runup.Cli.Comparison;

/// <summary>What a person named as one side of a comparison; a closed set.</summary>
internal abstract record SideText
{
    internal const string Shapes = "JOB:defaults, JOB:plan, JOB:as-found, JOB:as-left, a restore file (.restore.json), a table (.csv) or a link (tcp://HOST:PORT/UNIT)";

    private static readonly string[] Moments = ["defaults", "plan", "as-found", "as-left"];

    private SideText()
    {
    }

    /// <summary>Reads it; null where it is none of them.</summary>
    internal static SideText? Read(string text)
    {
        if (text.Contains("://", StringComparison.Ordinal) || text.StartsWith("rtu:", StringComparison.OrdinalIgnoreCase))
        {
            return new Live(text);
        }

        // A drive letter of Windows has a colon, too: only the last one parts.
        var colon = text.LastIndexOf(':');
        if (colon > 0 && Array.Find(Moments, m => text.AsSpan(colon + 1).Equals(m, StringComparison.OrdinalIgnoreCase)) is { } moment)
        {
            return new OfJob(text[..colon], moment);
        }

        return Path.GetExtension(text).ToUpperInvariant() switch
        {
            ".CSV" => new Table(text),
            ".JSON" => new Restore(text),
            _ => null,
        };
    }

    /// <summary>A moment of a job.</summary>
    internal sealed record OfJob(string Job, string Moment) : SideText;

    /// <summary>A restore file.</summary>
    internal sealed record Restore(string File) : SideText;

    /// <summary>A table of values.</summary>
    internal sealed record Table(string File) : SideText;

    /// <summary>A drive that is asked now.</summary>
    internal sealed record Live(string Link) : SideText;
}
