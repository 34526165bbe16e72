using System.Collections.ObjectModel;
using Runup.Engineering.Drives;

namespace Runup.Profiles;

/// <summary>One size of a family of drives.</summary>
/// <param name="Name">The make's name of it, such as <c>7.5-400</c>.</param>
/// <param name="Rating">What it can carry.</param>
public sealed record DriveSize(string Name, DriveRating Rating)
{
    /// <summary>The region whose drives these are; null where the family has none.</summary>
    public Region? Region { get; init; }

    /// <summary>Factory values that this size has of its own in any region, in counts, by parameter number.</summary>
    public IReadOnlyDictionary<string, long> Defaults { get; init; } = ReadOnlyDictionary<string, long>.Empty;

    /// <summary>Ranges that this size has of its own, by parameter number.</summary>
    public IReadOnlyDictionary<string, ParameterRange> Ranges { get; init; } = ReadOnlyDictionary<string, ParameterRange>.Empty;

    /// <summary>The factory value that size or region gives a parameter, in counts; null where the row's own holds.</summary>
    public long? DefaultOf(string number) =>
        Region is not null && Region.OfSizes.TryGetValue(Name, out var here) && here.TryGetValue(number, out var raw) ? raw
        : Defaults.TryGetValue(number, out raw) ? raw
        : Region is not null && Region.Defaults.TryGetValue(number, out raw) ? raw
        : null;

    /// <inheritdoc/>
    public override string ToString() => Name;
}
