using YamlDotNet.Core;

namespace Runup.Files.Yaml;

/// <summary>Reads the part of YAML that Runup's files use, with the place of every value.</summary>
/// <remarks>
/// Maps, lists and scalars of one document. Anchors, aliases, tags and directives are refused: they let a small file grow large
/// and a value stand elsewhere than where it is read. No text makes this throw; whatever is wrong becomes a problem. A map may come
/// together with problems (a key that stands twice), so that its reader can add its own: all of a file at once.
/// </remarks>
public static class YamlTree
{
    /// <summary>Reads a file's top-level map; null with problems when there is none to be had, and maybe problems beside it.</summary>
    public static YamlMap? ReadFile(string path, Problems problems) =>
        TextOfFile.Read(path, YamlLimits.Bytes, problems) is { } text ? Read(text, problems) : null;

    /// <summary>Reads a text's top-level map; null with problems when there is none to be had.</summary>
    public static YamlMap? Read(string text, Problems problems)
    {
        var before = problems.Count;
        if (!YamlCharacters.AreFit(text, problems))
        {
            return null;
        }

        YamlNode? root;
        var builder = new YamlBuilder(text, problems);
        try
        {
            root = builder.Document();
        }
        catch (Exception e) when (e is InvalidOperationException or ArgumentException or IndexOutOfRangeException or FormatException or OverflowException)
        {
            // The parser throws these on some malformed texts (found by mutation), without a place.
            var (at, found, wouldDo) = YamlBrackets.LeftOpenAbove(text, builder.Reached.Line)
                ?? (builder.Reached, "text that is not YAML", "indent what stands in braces or brackets, and put values with unusual characters in quotes");
            problems.Add(at, FileProblem.WholeFile, found, wouldDo);
            return null;
        }
        catch (YamlException e)
        {
            var (found, wouldDo) = YamlSyntax.Explain(e);
            var at = Within(text, e.Start);
            if (YamlSyntax.IsOfBrackets(e) && YamlBrackets.LeftOpenAbove(text, at.Line) is { } open)
            {
                (at, found, wouldDo) = open;
            }

            problems.Add(at, FileProblem.WholeFile, found, wouldDo);
            return null;
        }

        if (root is YamlMap map)
        {
            return map;
        }

        if (problems.Count == before)
        {
            problems.AddForFile(root is null or YamlScalar { IsEmpty: true } ? "it holds nothing" : $"it holds {root.Described}", "lines of `key: value` would do");
        }

        return null;
    }

    // What is missing at the end of a text the parser puts on the line after the last.
    private static Place Within(string text, Mark at)
    {
        var lines = text.AsSpan().TrimEnd('\n').Count('\n') + 1;
        return at.Line > lines ? new Place(lines, 1, 0, 0) : new Place((int)Math.Max(1, at.Line), (int)Math.Max(1, at.Column), 0, 0);
    }
}
