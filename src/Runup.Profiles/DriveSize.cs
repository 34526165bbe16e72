using System.Collections.ObjectModel;
using Runup.Engineering.Drives;

namespace Runup.Profiles;

/// <summary>One size of a family of drives.</summary>
/// <param name="Name">The make's name of it, such as <c>7.5-400</c>.</param>
/// <param name="Rating">What it can carry.</param>
public sealed record DriveSize(string Name, DriveRating Rating)
{
    /// <summary>Factory values that this size has of its own, in counts, by parameter number.</summary>
    public IReadOnlyDictionary<string, long> Defaults { get; init; } = ReadOnlyDictionary<string, long>.Empty;

    /// <summary>Ranges that this size has of its own, by parameter number.</summary>
    public IReadOnlyDictionary<string, ParameterRange> Ranges { get; init; } = ReadOnlyDictionary<string, ParameterRange>.Empty;

    /// <inheritdoc/>
    public override string ToString() => Name;
}
