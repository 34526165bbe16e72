namespace Runup.Store.Folder;

/// <summary>Whether a folder may hold a database in write-ahead mode, which needs memory that all its users share, on one computer.</summary>
/// <remarks>
/// Source: SQLite documentation, "Write-Ahead Logging": all processes must be on the same host; it does not work over a network file system.
/// Folders that a program copies to other computers behind our back can't be told from others by any general mark, so they are not looked for.
/// </remarks>
public static class FolderFitness
{
    private static readonly IReadOnlySet<string> Shared = new HashSet<string>(
        ["nfs", "nfs4", "cifs", "smb3", "smbfs", "ncpfs", "afs", "9p", "virtiofs", "vboxsf", "vmhgfs", "ceph", "glusterfs", "lustre", "gfs2", "ocfs2", "davfs", "fuse"],
        StringComparer.Ordinal);

    /// <summary>Why a file system can't hold the record, or null.</summary>
    /// <param name="fileSystem">Its type as Linux names it.</param>
    public static string? Objection(string fileSystem) =>
        Shared.Contains(fileSystem) || fileSystem.StartsWith("fuse.", StringComparison.Ordinal)
            ? $"it lies on a network or shared file system ({fileSystem})"
            : null;

    /// <summary>Why a folder of this computer can't hold the record, or null.</summary>
    internal static string? ObjectionTo(string folder) =>
        OperatingSystem.IsLinux() ? OnLinux(folder) : Elsewhere(folder);

    private static string? OnLinux(string folder)
    {
        const string table = "/proc/self/mountinfo";
        return File.Exists(table) && MountTable.TypeOf(File.ReadAllText(table), Resolved(folder)) is { } type ? Objection(type) : null;
    }

    private static string? Elsewhere(string folder)
    {
        var full = Resolved(folder);
        return full.StartsWith(@"\\", StringComparison.Ordinal) || new DriveInfo(Path.GetPathRoot(full)!).DriveType == DriveType.Network
            ? "it lies on a network drive"
            : null;
    }

    // Any folder on the way may be a link to elsewhere.
    private static string Resolved(string folder)
    {
        var full = Path.GetFullPath(folder);
        var root = Path.GetPathRoot(full)!;
        var resolved = root;
        foreach (var part in full[root.Length..].Split(Path.DirectorySeparatorChar, StringSplitOptions.RemoveEmptyEntries))
        {
            resolved = Path.Combine(resolved, part);
            resolved = new DirectoryInfo(resolved).ResolveLinkTarget(returnFinalTarget: true)?.FullName ?? resolved;
        }

        return resolved;
    }
}
