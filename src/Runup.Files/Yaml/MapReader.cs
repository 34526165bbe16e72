using Runup.Quantities;

namespace Runup.Files.Yaml;

/// <summary>Reads a map key by key, and in the end reports the keys that nobody asked for.</summary>
/// <remarks>
/// Every method takes a key, and a sentence for when it is needed: with <c>needed</c> null the key may be missing, else a missing
/// key is a problem that ends in this sentence. What is missing or wrong comes back as null; the caller builds its record only if
/// <see cref="Problems"/> stayed empty.
/// </remarks>
/// <param name="map">The map.</param>
/// <param name="problems">Where problems go.</param>
public sealed class MapReader(YamlMap map, Problems problems)
{
    private readonly List<string> known = [];

    /// <summary>The map that is read.</summary>
    public YamlMap Map { get; } = map;

    /// <summary>Where problems go.</summary>
    public Problems Problems { get; } = problems;

    /// <summary>The value of a key, whatever it is.</summary>
    public YamlNode? Node(string key, string? needed = null)
    {
        known.Add(key);
        var node = Map.Find(key);
        if (node is null && needed is not null)
        {
            Problems.Add(Map.KeyPlace, PathOf(key), "it is missing", needed);
        }

        return node;
    }

    /// <summary>Text.</summary>
    public string? Text(string key, string? needed = null) => Node(key, needed)?.AsText(Problems);

    /// <summary><c>yes</c>, <c>no</c>, <c>true</c> or <c>false</c>.</summary>
    public bool? Flag(string key, string? needed = null) => Node(key, needed)?.AsFlag(Problems);

    /// <summary>A whole number within limits.</summary>
    public int? Whole(string key, int low, int high, string? needed = null) => Node(key, needed)?.AsWhole(low, high, Problems);

    /// <summary>A pure number within limits.</summary>
    public double? Number(string key, double low, double high, string? needed = null) => Node(key, needed)?.AsNumber(low, high, Problems);

    /// <summary>A quantity with its unit.</summary>
    public T? Quantity<T>(string key, string? needed = null)
        where T : struct, IQuantity<T> => Node(key, needed)?.AsQuantity<T>(Problems)?.Quantity;

    /// <summary>A decimal number exactly as written, such as a scale or a limit.</summary>
    public decimal? Exact(string key, string? needed = null) => Node(key, needed)?.AsExact(Problems);

    /// <summary>One of a list of words.</summary>
    public T? Choice<T>(string key, Choices<T> choices, string? needed = null)
        where T : struct => Node(key, needed)?.AsChoice(choices, Problems);

    /// <summary>One of a list of words, as the word itself.</summary>
    public string? Word(string key, Choices<string> choices, string? needed = null) => Node(key, needed)?.AsWord(choices, Problems);

    /// <summary>A group of keys.</summary>
    public MapReader? Group(string key, string? needed = null) => Node(key, needed)?.AsGroup(Problems);

    /// <summary>The values of a list; none where the key is missing.</summary>
    public IReadOnlyList<YamlNode> List(string key, string? needed = null) => Node(key, needed)?.AsList(Problems) ?? [];

    /// <summary>A list of groups; none where the key is missing.</summary>
    public IReadOnlyList<MapReader> Groups(string key, string? needed = null) =>
        [.. List(key, needed).Select(item => item.AsGroup(Problems)).OfType<MapReader>()];

    /// <summary>Adds a problem with the value of a key, or with the map where the key is missing.</summary>
    public void Fault(string key, string whatWasFound, string wouldDo) =>
        Problems.Add(Map.Find(key)?.Place ?? Map.KeyPlace, PathOf(key), whatWasFound, wouldDo);

    /// <summary>Reports each key that was not asked for, with the nearest one that would do.</summary>
    public void Done()
    {
        foreach (var entry in Map.Entries.Where(e => !known.Contains(e.Key, StringComparer.Ordinal)))
        {
            var nearest = Problems.AreTooMany ? null : Spelling.Nearest(entry.Key, known);
            Problems.Add(
                entry.Value.KeyPlace,
                entry.Value.KeyPath,
                "there is no such key here",
                nearest is null ? "one of " + Quote.List(known) + " would do" : $"`{nearest}` would do");
        }
    }

    private string PathOf(string key) => Map.KeyPath.Length == 0 ? key : $"{Map.KeyPath}.{key}";
}
