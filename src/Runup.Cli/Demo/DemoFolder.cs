using System.Globalization;
using Runup.Cli.Terminal;

namespace Runup.Cli.Demo;

/// <summary>The folder of a demo: a copy of the demo site, never over something that is there.</summary>
internal static class DemoFolder
{
    internal static string Prepare(string? wanted)
    {
        var folder = wanted ?? Free("runup-demo");
        if (string.IsNullOrWhiteSpace(folder))
        {
            throw new Complaint(ExitStatus.BadInput, "runup: the folder's name is empty; a new or empty folder would do");
        }

        if (File.Exists(folder) || (Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any()))
        {
            throw new Complaint(ExitStatus.BadInput, $"runup: {folder} is there and not empty; a new or empty folder would do");
        }

        try
        {
            Copy(folder);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new Complaint(ExitStatus.BadInput, $"runup: the folder {folder} can't be made or written into; a new folder in a place where you may write would do");
        }

        return folder;
    }

    private static void Copy(string folder)
    {
        var site = Path.Combine(AppContext.BaseDirectory, "demo", "ostrevad");
        foreach (var file in Directory.EnumerateFiles(site, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(folder, Path.GetRelativePath(site, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }

    private static string Free(string name) =>
        Enumerable.Range(1, 1000)
            .Select(n => n == 1 ? name : string.Create(CultureInfo.InvariantCulture, $"{name}-{n}"))
            .First(folder => !Directory.Exists(folder) && !File.Exists(folder));
}
