namespace Runup.Engineering;

/// <summary>Where a formula or figure comes from; a test resolves the key in <c>data/references.yaml</c>.</summary>
/// <param name="key">Key in the list of references.</param>
/// <param name="place">Clause, table or equation.</param>
[AttributeUsage(AttributeTargets.All, AllowMultiple = true)]
public sealed class SourceAttribute(string key, string place) : Attribute
{
    /// <summary>Key in the list of references.</summary>
    public string Key { get; } = key;

    /// <summary>Clause, table or equation.</summary>
    public string Place { get; } = place;
}
