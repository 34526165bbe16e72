namespace Runup.Outside.Tests;

/// <summary>Where the repository lies on this computer.</summary>
internal static class RepositoryRoot
{
    internal static string Folder { get; } = Find();

    private static string Find()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Runup.slnx")))
        {
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("No Runup.slnx above the tests.");
        }

        return folder;
    }
}
