using Runup.Commissioning.Diagnosis;

namespace Runup.Files.Readings;

/// <summary>What came of reading a file of readings: its rows, or everything that is wrong with it. Nothing else.</summary>
public abstract record ReadingsText
{
    private ReadingsText()
    {
    }

    /// <summary>The file holds readings.</summary>
    /// <param name="Rows">Row by row.</param>
    public sealed record Read(IReadOnlyList<ReadingRow> Rows) : ReadingsText;

    /// <summary>It holds none.</summary>
    /// <param name="Problems">All that is wrong with it, in its order.</param>
    public sealed record Faulty(IReadOnlyList<FileProblem> Problems) : ReadingsText;
}
