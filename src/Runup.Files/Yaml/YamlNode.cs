namespace Runup.Files.Yaml;

/// <summary>A value in a YAML file with its place: a scalar, a map or a list, and nothing else.</summary>
public abstract class YamlNode
{
    private protected YamlNode(string keyPath, Place keyPlace, Place place)
    {
        KeyPath = keyPath;
        KeyPlace = keyPlace;
        Place = place;
    }

    /// <summary>Path of the key, such as <c>operation.cycle[2].speed</c>; entries of lists are counted from 1.</summary>
    public string KeyPath { get; }

    /// <summary>Where the key stands; for an entry of a list or the whole file, where the value begins.</summary>
    public Place KeyPlace { get; }

    /// <summary>Where the value stands.</summary>
    public Place Place { get; }

    /// <summary>What the value is, in words for a message.</summary>
    public abstract string Described { get; }
}

/// <summary>A single value as text; what it means is for its reader to say.</summary>
public sealed class YamlScalar : YamlNode
{
    internal YamlScalar(string keyPath, Place keyPlace, Place place, string text, bool isPlain)
        : base(keyPath, keyPlace, place)
    {
        Text = text;
        IsPlain = isPlain;
    }

    /// <summary>The text, without quotes.</summary>
    public string Text { get; }

    /// <summary>Whether it stands without quotes.</summary>
    public bool IsPlain { get; }

    /// <summary>Whether the key has no value at all, or YAML's word for none.</summary>
    public bool IsEmpty => IsPlain && Text is "" or "~" or "null";

    /// <inheritdoc/>
    public override string Described => IsEmpty ? "no value" : Quote.Of(Text);
}

/// <summary>Keys with values, in the order of the file.</summary>
public sealed class YamlMap : YamlNode
{
    internal YamlMap(string keyPath, Place keyPlace, Place place, bool isFlow, IReadOnlyList<YamlEntry> entries)
        : base(keyPath, keyPlace, place)
    {
        IsFlow = isFlow;
        Entries = entries;
    }

    /// <summary>Whether it is written in braces.</summary>
    public bool IsFlow { get; }

    /// <summary>The entries; no key stands twice.</summary>
    public IReadOnlyList<YamlEntry> Entries { get; }

    /// <inheritdoc/>
    public override string Described => "a group of keys";

    /// <summary>The value of a key, or null.</summary>
    public YamlNode? Find(string key)
    {
        foreach (var entry in Entries)
        {
            if (string.Equals(entry.Key, key, StringComparison.Ordinal))
            {
                return entry.Value;
            }
        }

        return null;
    }
}

/// <summary>A key and its value.</summary>
/// <param name="Key">The key.</param>
/// <param name="Value">The value, which knows where the key stands.</param>
public sealed record YamlEntry(string Key, YamlNode Value);

/// <summary>Values in order.</summary>
public sealed class YamlList : YamlNode
{
    internal YamlList(string keyPath, Place keyPlace, Place place, bool isFlow, IReadOnlyList<YamlNode> items)
        : base(keyPath, keyPlace, place)
    {
        IsFlow = isFlow;
        Items = items;
    }

    /// <summary>Whether it is written in brackets.</summary>
    public bool IsFlow { get; }

    /// <summary>The values.</summary>
    public IReadOnlyList<YamlNode> Items { get; }

    /// <inheritdoc/>
    public override string Described => "a list";
}
