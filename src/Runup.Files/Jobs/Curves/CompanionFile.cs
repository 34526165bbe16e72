using Runup.Files.Yaml;

namespace Runup.Files.Jobs.Curves;

/// <summary>Finds a file that a job names: beside the job or beneath, never elsewhere.</summary>
internal static class CompanionFile
{
    /// <summary>The path of the named file; null with a problem where the name leads out of the job's folder.</summary>
    internal static string? Find(YamlScalar scalar, Desk desk)
    {
        var name = scalar.Text.Trim();
        // A backslash is a name's letter on one system and a separator on the other; a colon names a drive or a stream.
        var isWithin = name.Length < 200 && !Path.IsPathRooted(name) && name.AsSpan().IndexOfAny("\\:") < 0 && !name.Split('/').Any(p => p is "" or "." or "..");
        if (!isWithin)
        {
            desk.Problems.Add(scalar, $"the file {Quote.Of(name)}", "a file in the job's folder would do, named without `..` and with `/` between folders");
            return null;
        }

        if (desk.Folder is null)
        {
            desk.Problems.Add(scalar, $"the file {Quote.Of(name)}", "a job that names other files is read from its folder");
            return null;
        }

        if (LeadsOut(desk.Folder, name))
        {
            desk.Problems.Add(scalar, $"the file {Quote.Of(name)} is a link that leads out of the job's folder", "the file itself, put into the job's folder, would do");
            return null;
        }

        return Path.Combine(desk.Folder, name);
    }

    // Along the name, folder by folder: a link may stand at any of them.
    private static bool LeadsOut(string folder, string name)
    {
        // Of a job named without a folder the folder is empty: the one where the person stands.
        var root = Path.GetFullPath(folder.Length == 0 ? "." : folder);
        var at = root;
        foreach (var part in name.Split('/'))
        {
            at = Path.Combine(at, part);
            if (LinkOf(at) is { } target && !target.StartsWith(Path.TrimEndingDirectorySeparator(root) + Path.DirectorySeparatorChar, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }

    private static string? LinkOf(string path)
    {
        try
        {
            return new FileInfo(path).ResolveLinkTarget(returnFinalTarget: true)?.FullName;
        }
        catch (IOException)
        {
            // Nothing there, or a link to itself: whoever reads it says so.
            return null;
        }
    }
}
