using Runup.Files.Yaml;

namespace Runup.Files.Listings.Eds;

/// <summary>An electronic data sheet as sections of keys, each with its line. Names of sections and keys are the same in either case of letters.</summary>
internal sealed class EdsText
{
    private readonly Dictionary<string, EdsSection> byName = new(StringComparer.OrdinalIgnoreCase);

    private EdsText(IReadOnlyList<EdsSection> sections)
    {
        Sections = sections;
        foreach (var section in sections)
        {
            byName.TryAdd(section.Name, section);
        }
    }

    /// <summary>The sections in the file's order; no name stands twice.</summary>
    internal IReadOnlyList<EdsSection> Sections { get; }

    /// <summary>Reads the text; what is no section, key or comment is a problem with its line.</summary>
    internal static EdsText Read(string text, Problems problems)
    {
        var sections = new Dictionary<string, EdsSection>(StringComparer.OrdinalIgnoreCase);
        EdsSection? current = null;
        var number = 0;
        foreach (var line in text.Split('\n'))
        {
            number++;
            var plain = WithoutComment(line).Trim();
            if (plain.Length == 0)
            {
                continue;
            }

            if (plain[0] == '[')
            {
                current = Begin(plain, number, sections, problems);
            }
            else if (plain.IndexOf('=', StringComparison.Ordinal) is > 0 and var sign)
            {
                Add(current, plain[..sign].Trim(), plain[(sign + 1)..].Trim(), number, problems);
            }
            else
            {
                problems.Add(At(number), "(line)", Quote.Of(plain), "a section such as `[6046sub1]`, a key such as `DataType=0x0007`, or a remark behind `;` would do");
            }
        }

        return new EdsText([.. sections.Values.OrderBy(s => s.Line)]);
    }

    /// <summary>The section of a name, or null.</summary>
    internal EdsSection? Find(string name) => byName.GetValueOrDefault(name);

    internal static Place At(int line) => new(line, 1, 0, 0);

    private static EdsSection? Begin(string plain, int line, Dictionary<string, EdsSection> sections, Problems problems)
    {
        if (plain.Length < 3 || plain[^1] != ']')
        {
            problems.Add(At(line), "(line)", Quote.Of(plain), "a section's name in brackets would do");
            return null;
        }

        var section = new EdsSection(plain[1..^1].Trim(), line);
        if (sections.TryAdd(section.Name, section))
        {
            return section;
        }

        problems.Add(At(line), $"[{section.Name}]", $"the section stands twice: in line {sections[section.Name].Line} and in line {line}", "each section once");
        return null;
    }

    private static void Add(EdsSection? section, string key, string value, int line, Problems problems)
    {
        if (section is null)
        {
            if (line > 0 && !problems.Any)
            {
                problems.Add(At(line), key, "a key that stands in no section", "a section's name in brackets before it would do");
            }
        }
        else if (!section.Add(key, value, line))
        {
            problems.Add(At(line), $"[{section.Name}] {key}", $"the key stands twice, first in line {section.LineOf(key)}", "each key once in a section");
        }
    }

    // A remark begins a line; some writers put it behind a value, with a blank before.
    private static string WithoutComment(string line)
    {
        if (line.AsSpan().TrimStart().StartsWith(";"))
        {
            return "";
        }

        var behind = line.IndexOf(" ;", StringComparison.Ordinal);
        behind = behind < 0 ? line.IndexOf("\t;", StringComparison.Ordinal) : behind;
        return behind < 0 ? line : line[..behind];
    }
}

/// <summary>A section of an electronic data sheet.</summary>
/// <param name="name">Its name.</param>
/// <param name="line">Its line.</param>
internal sealed class EdsSection(string name, int line)
{
    private readonly Dictionary<string, (string Value, int Line)> keys = new(StringComparer.OrdinalIgnoreCase);

    internal string Name { get; } = name;

    internal int Line { get; } = line;

    internal IEnumerable<string> Keys => keys.Keys;

    /// <summary>The value of a key; empty where it is missing or has none.</summary>
    internal string this[string key] => keys.TryGetValue(key, out var found) ? found.Value : "";

    internal int LineOf(string key) => keys.TryGetValue(key, out var found) ? found.Line : Line;

    internal bool Add(string key, string value, int line) => keys.TryAdd(key, (value, line));
}
