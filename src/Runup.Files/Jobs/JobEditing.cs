namespace Runup.Files.Jobs;

/// <summary>What came of changing one value in a job file's text: the new text, or why there is none. Nothing else.</summary>
public abstract record JobEditing
{
    private JobEditing()
    {
    }

    /// <summary>The value is in place and reads back as given; all else stands as it stood.</summary>
    /// <param name="Text">The new text.</param>
    public sealed record Changed(string Text) : JobEditing;

    /// <summary>The text stays as it was.</summary>
    /// <param name="Problems">What the change would have brought about, or what is in its way.</param>
    public sealed record Refused(IReadOnlyList<FileProblem> Problems) : JobEditing;
}
