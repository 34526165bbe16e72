using Runup.Files;
using Runup.Files.Yaml;

namespace Runup.Cli.Survey;

/// <summary>Where a key's value stands in a job file.</summary>
internal static class JobPlaces
{
    internal static (int Line, int Column)? Of(string text, string part, string key) =>
        YamlTree.Read(text, new Problems("")) is { } top && top.Find(part) is YamlMap map && map.Find(key) is { } value
            ? (value.Place.Line, value.Place.Column)
            : null;
}
