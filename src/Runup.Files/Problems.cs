using Runup.Files.Yaml;

namespace Runup.Files;

/// <summary>Collects everything that is wrong in one file, so that a person hears of all of it at once.</summary>
/// <param name="file">The file as the person named it.</param>
public sealed class Problems(string file)
{
    private readonly List<FileProblem> found = [];

    /// <summary>The file as the person named it.</summary>
    public string File { get; } = file;

    /// <summary>Whether anything is wrong.</summary>
    public bool Any => found.Count > 0;

    /// <summary>How many there are, to tell whether a part of the reading added one.</summary>
    public int Count => found.Count;

    /// <summary>The problems in the order of the file.</summary>
    public IReadOnlyList<FileProblem> InOrder() => [.. found.OrderBy(p => p.Line).ThenBy(p => p.Column)];

    /// <summary>Adds a problem at a place.</summary>
    public void Add(Place at, string key, string whatWasFound, string wouldDo) =>
        found.Add(new FileProblem(File, at.Line, at.Column, key, whatWasFound, wouldDo));

    /// <summary>Adds a problem with the value of a node.</summary>
    public void Add(YamlNode node, string whatWasFound, string wouldDo) =>
        Add(node.Place, node.KeyPath, whatWasFound, wouldDo);

    /// <summary>Adds a problem that concerns the file as a whole.</summary>
    public void AddForFile(string whatWasFound, string wouldDo) =>
        Add(Place.First, FileProblem.WholeFile, whatWasFound, wouldDo);

    /// <summary>Takes over a problem that another file gave rise to, such as a curve that this one names.</summary>
    public void Add(FileProblem problem) => found.Add(problem);
}
