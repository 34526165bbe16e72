namespace Runup.Store.Folder;

/// <summary>The file systems of a Linux machine, as <c>/proc/self/mountinfo</c> lists them.</summary>
/// <remarks>Form of a line: proc_pid_mountinfo(5).</remarks>
public static class MountTable
{
    /// <summary>Type of the file system that holds a path, such as ext4 or nfs4; null where the table does not say.</summary>
    /// <param name="mountinfo">The table's text.</param>
    /// <param name="path">A full path without symbolic links.</param>
    public static string? TypeOf(string mountinfo, string path)
    {
        string? type = null;
        var longest = -1;
        foreach (var line in mountinfo.Split('\n'))
        {
            var separator = line.IndexOf(" - ", StringComparison.Ordinal);
            var fields = line.Split(' ');
            if (separator < 0 || fields.Length < 5)
            {
                continue;
            }

            var point = Unescape(fields[4]);
            // Of two mounts on one point the later hides the earlier.
            if (Holds(point, path) && point.Length >= longest)
            {
                longest = point.Length;
                type = line[(separator + 3)..].Split(' ')[0];
            }
        }

        return type;
    }

    private static bool Holds(string point, string path) =>
        point is "/" || string.Equals(path, point, StringComparison.Ordinal) || path.StartsWith(point + "/", StringComparison.Ordinal);

    // Blank, tab, line feed and backslash stand as \040, \011, \012 and \134.
    private static string Unescape(string field) => field
        .Replace(@"\040", " ", StringComparison.Ordinal)
        .Replace(@"\011", "\t", StringComparison.Ordinal)
        .Replace(@"\012", "\n", StringComparison.Ordinal)
        .Replace(@"\134", @"\", StringComparison.Ordinal);
}
