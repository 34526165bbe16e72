using Runup.Files.Jobs.Keys;
using Runup.Files.Jobs.Sections;

namespace Runup.Files.Jobs;

/// <summary>The one table of the job file's keys: reader, JSON Schema, template and edits are all made from it.</summary>
internal static class JobKeys
{
    /// <summary>The top of the file.</summary>
    internal static JobSection Top { get; } = new(new KeyList());

    /// <summary>The path of a key that is known by this name elsewhere in the file; null where there is none, or more than one.</summary>
    internal static string? PlaceOf(string name)
    {
        var places = Paths(Top, "").Where(p => string.Equals(p[(p.LastIndexOf('.') + 1)..], name, StringComparison.Ordinal)).Take(2).ToList();
        return places.Count == 1 ? places[0] : null;
    }

    /// <summary>The key of a path such as <c>motor.plate.output</c>, or null; entries of lists are left out.</summary>
    internal static Key? Find(string path)
    {
        Section? section = Top;
        Key? key = null;
        foreach (var name in path.Split('.'))
        {
            key = section?.Keys.FirstOrDefault(k => string.Equals(k.Name, name, StringComparison.Ordinal));
            section = key?.Section;
        }

        return key;
    }

    /// <summary>The paths of all keys beneath a group, in the order of the template.</summary>
    internal static IEnumerable<string> Paths(Section section, string prefix)
    {
        foreach (var key in section.Keys)
        {
            yield return prefix + key.Name;
            foreach (var path in key.Section is { } inner ? Paths(inner, $"{prefix}{key.Name}.") : [])
            {
                yield return path;
            }
        }
    }
}
