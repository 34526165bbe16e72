using Runup.Files.Profiles;

namespace Runup.Cli.DriveProfiles;

/// <summary>Where profiles are looked for: a site's folder, its <c>drives/</c>, then the product's.</summary>
internal static class ProfileFolders
{
    internal static IReadOnlyList<string> For(string folder) =>
        [folder, Path.Combine(folder, "drives"), Path.Combine(AppContext.BaseDirectory, "data", "drives")];

    /// <summary>The file of a name, or null.</summary>
    internal static string? Find(string folder, string name) =>
        For(folder).Select(f => Path.Combine(f, name + ProfileReader.Extension)).FirstOrDefault(File.Exists);

    /// <summary>The names of the profiles that are there.</summary>
    internal static IEnumerable<string> Known(string folder) =>
        For(folder).Select(f => f.Length == 0 ? "." : f).Where(Directory.Exists)
            .SelectMany(f => Directory.EnumerateFiles(f, "*" + ProfileReader.Extension))
            .Select(f => Path.GetFileName(f)[..^ProfileReader.Extension.Length])
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal);
}
