namespace Runup.Profiles;

/// <summary>One parameter of a drive family.</summary>
public sealed record Parameter
{
    /// <summary>Number on the maker's list.</summary>
    public required string Number { get; init; }
}
