namespace Runup.Reports.Pdf;

/// <summary>What came of printing a page to PDF; a closed set.</summary>
public abstract record Printing
{
    private Printing()
    {
    }

    /// <summary>It was printed.</summary>
    /// <param name="Pdf">The file's bytes.</param>
    public sealed record Printed(ReadOnlyMemory<byte> Pdf) : Printing;

    /// <summary>The browser gave no PDF.</summary>
    /// <param name="Why">Why, in words.</param>
    public sealed record Failed(string Why) : Printing;
}
