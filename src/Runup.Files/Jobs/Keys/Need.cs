namespace Runup.Files.Jobs.Keys;

/// <summary>Whether a job is served without a key.</summary>
internal abstract record Need
{
    private Need()
    {
    }

    /// <summary>It may be left out.</summary>
    internal static Need No { get; } = new Never();

    /// <summary>It must be there.</summary>
    internal static Need Yes { get; } = new Always();

    /// <summary>It must be there when another key of the same group has one of some words.</summary>
    internal static Need When(string key, params string[] words) => new Conditional(key, words);

    /// <summary>It may be left out.</summary>
    internal sealed record Never : Need;

    /// <summary>It must be there.</summary>
    internal sealed record Always : Need;

    /// <summary>It must be there when another key has one of some words.</summary>
    /// <param name="Key">The other key.</param>
    /// <param name="Words">The words.</param>
    internal sealed record Conditional(string Key, IReadOnlyList<string> Words) : Need;
}
