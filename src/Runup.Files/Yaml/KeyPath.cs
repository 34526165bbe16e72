using System.Globalization;

namespace Runup.Files.Yaml;

/// <summary>A path such as <c>operation.cycle[2].speed</c>; entries of lists are counted from 1.</summary>
internal sealed class KeyPath
{
    private readonly string text;

    private KeyPath(string text, IReadOnlyList<object> steps)
    {
        this.text = text;
        Steps = steps;
    }

    /// <summary>Names of keys, and numbers of entries as whole numbers.</summary>
    internal IReadOnlyList<object> Steps { get; }

    /// <summary>The path, or null where the text is none.</summary>
    internal static KeyPath? Parse(string text)
    {
        var steps = new List<object>();
        foreach (var part in text.Split('.'))
        {
            var name = part;
            var numbers = new List<object>();
            while (name.EndsWith(']'))
            {
                var open = name.LastIndexOf('[');
                if (open < 0 || !int.TryParse(name.AsSpan(open + 1, name.Length - open - 2), NumberStyles.None, CultureInfo.InvariantCulture, out var number) || number < 1)
                {
                    return null;
                }

                numbers.Insert(0, number);
                name = name[..open];
            }

            if (name.Length == 0 || name.Any(c => !char.IsAsciiLetterOrDigit(c) && c != '-'))
            {
                return null;
            }

            steps.Add(name);
            steps.AddRange(numbers);
        }

        return new KeyPath(text, steps);
    }

    /// <summary>The node at the path, or null.</summary>
    internal YamlNode? Find(YamlNode root) => Find(root, Steps.Count);

    /// <summary>The node at the path's first steps, or null.</summary>
    internal YamlNode? Find(YamlNode root, int steps)
    {
        YamlNode? node = root;
        foreach (var step in Steps.Take(steps))
        {
            node = (node, step) switch
            {
                (YamlMap map, string name) => map.Find(name),
                (YamlList list, int number) when number <= list.Items.Count => list.Items[number - 1],
                _ => null,
            };
        }

        return node;
    }

    /// <summary>The path as written.</summary>
    public override string ToString() => text;
}
