using Runup.Files.Yaml;
using Runup.Quantities;

namespace Runup.Files.Jobs;

/// <summary>What one reading of a job file works with: where problems and notes go, and the folder that the file may name others in.</summary>
/// <param name="problems">Where problems go.</param>
/// <param name="folder">The file's folder; null where the text has none.</param>
/// <param name="neededPart">The part whose needed keys must be there; null where all must.</param>
internal sealed class Desk(Problems problems, string? folder, string? neededPart)
{
    private readonly List<FileNote> notes = [];
    private readonly List<YamlScalar> doubtfulPoints = [];
    private bool writesDecimalCommas;

    internal Problems Problems { get; } = problems;

    internal string? Folder { get; } = folder;

    internal IReadOnlyList<FileNote> Notes => notes;

    internal void Note(YamlNode node, string what) =>
        notes.Add(new FileNote(Problems.File, node.KeyPlace.Line, node.KeyPlace.Column, node.KeyPath, what));

    /// <summary>Whether a missing key of this path is a problem.</summary>
    internal bool IsNeededHere(string path) => neededPart is null || path.StartsWith(neededPart + ".", StringComparison.Ordinal);

    /// <summary>Remembers how a number was written, for what it says of the others.</summary>
    internal void Notice(YamlScalar scalar, NumberNotation notation)
    {
        writesDecimalCommas |= notation == NumberNotation.DecimalComma;
        if (notation == NumberNotation.PointBeforeThreeDigits)
        {
            doubtfulPoints.Add(scalar);
        }
    }

    /// <summary>Asks about each <c>1.250</c> of a file whose decimal sign is the comma.</summary>
    internal void AskAboutPoints()
    {
        if (!writesDecimalCommas)
        {
            return;
        }

        foreach (var scalar in doubtfulPoints)
        {
            var digits = scalar.Text.IndexOf('.', StringComparison.Ordinal) + 4;
            Problems.Add(
                scalar,
                $"{Quote.Of(scalar.Text)} among decimal commas can mean a thousand times as much",
                $"which is meant? Write {Quote.Of(scalar.Text.Replace(".", "", StringComparison.Ordinal))} or {Quote.Of(scalar.Text.Insert(digits, "0"))}");
        }
    }
}
