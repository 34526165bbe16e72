using Runup.Files.Yaml;

namespace Runup.Files;

/// <summary>Collects everything that is wrong in one file, so that a person hears of all of it at once.</summary>
/// <param name="file">The file as the person named it.</param>
public sealed class Problems(string file)
{
    private const int MostKept = 200;

    private readonly List<FileProblem> found = [];

    /// <summary>The file as the person named it.</summary>
    public string File { get; } = file;

    /// <summary>Whether anything is wrong.</summary>
    public bool Any => Count > 0;

    /// <summary>How many there are, to tell whether a part of the reading added one.</summary>
    public int Count { get; private set; }

    /// <summary>Whether there are so many that further ones are only counted: this is hardly a file of its kind.</summary>
    public bool AreTooMany => Count > MostKept;

    /// <summary>The problems in the order of the file, those of files that it names behind its own.</summary>
    public IReadOnlyList<FileProblem> InOrder()
    {
        var ordered = found
            .OrderBy(p => !string.Equals(p.File, File, StringComparison.Ordinal))
            .ThenBy(p => p.File, StringComparer.Ordinal)
            .ThenBy(p => p.Line)
            .ThenBy(p => p.Column);
        return Count == found.Count
            ? [.. ordered]
            : [.. ordered, new FileProblem(File, 1, 1, FileProblem.WholeFile, $"{Count - found.Count} problems more", "put right those above first; or is it another kind of file?")];
    }

    /// <summary>Adds a problem at a place.</summary>
    public void Add(Place at, string key, string whatWasFound, string wouldDo) =>
        Add(new FileProblem(File, at.Line, at.Column, key, whatWasFound, wouldDo));

    /// <summary>Adds a problem with the value of a node.</summary>
    public void Add(YamlNode node, string whatWasFound, string wouldDo) =>
        Add(node.Place, node.KeyPath, whatWasFound, wouldDo);

    /// <summary>Adds a problem that concerns the file as a whole.</summary>
    public void AddForFile(string whatWasFound, string wouldDo) =>
        Add(Place.First, FileProblem.WholeFile, whatWasFound, wouldDo);

    /// <summary>Takes over a problem that another file gave rise to, such as a curve that this one names.</summary>
    public void Add(FileProblem problem)
    {
        Count++;
        if (found.Count < MostKept)
        {
            found.Add(problem);
        }
    }
}
