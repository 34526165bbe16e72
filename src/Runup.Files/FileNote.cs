namespace Runup.Files;

/// <summary>Something that a person should know about how a file was read; no obstacle.</summary>
/// <param name="File">The file as the person named it.</param>
/// <param name="Line">Line, counted from 1.</param>
/// <param name="Column">Column, counted from 1.</param>
/// <param name="Key">Path of the key.</param>
/// <param name="What">What was done with it.</param>
public sealed record FileNote(string File, int Line, int Column, string Key, string What)
{
    /// <summary>The line that a person reads.</summary>
    public override string ToString() => Quote.OneLine($"{File}:{Line}:{Column} {Key}: {What}");
}
