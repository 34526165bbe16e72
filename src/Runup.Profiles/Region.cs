using System.Collections.ObjectModel;

namespace Runup.Profiles;

/// <summary>A part of the world for which drives leave the factory with values of their own, such as 60 Hz and hp.</summary>
/// <param name="Name">The profile's name of it.</param>
public sealed record Region(string Name)
{
    /// <summary>Factory values there where the size has none of its own, in counts, by parameter number.</summary>
    public IReadOnlyDictionary<string, long> Defaults { get; init; } = ReadOnlyDictionary<string, long>.Empty;

    /// <summary>Factory values there of single sizes, by the size's name; they win over the size's own.</summary>
    public IReadOnlyDictionary<string, IReadOnlyDictionary<string, long>> OfSizes { get; init; } = ReadOnlyDictionary<string, IReadOnlyDictionary<string, long>>.Empty;

    /// <inheritdoc/>
    public override string ToString() => Name;
}
