namespace Runup.Files.Yaml;

/// <summary>How much of a YAML file is read before it is refused; a job or a drive profile stays far below.</summary>
internal static class YamlLimits
{
    /// <summary>Largest file, in bytes.</summary>
    internal const int Bytes = 4 * 1024 * 1024;

    /// <summary>Deepest nesting of maps and lists.</summary>
    internal const int Depth = 24;

    /// <summary>Most values in one file.</summary>
    internal const int Nodes = 200_000;
}
