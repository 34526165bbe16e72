namespace Runup.Files.Yaml;

/// <summary>The words that a key takes, each with what it stands for. Read without regard to case, written as listed.</summary>
/// <typeparam name="T">What the words stand for.</typeparam>
public sealed class Choices<T>
{
    private readonly (string Word, T Value)[] known;
    private readonly int listed;

    /// <summary>Makes the list.</summary>
    /// <param name="words">The words that messages and schemas list.</param>
    /// <param name="alsoRead">Other words that are read.</param>
    public Choices(IReadOnlyList<(string Word, T Value)> words, IReadOnlyList<(string Word, T Value)>? alsoRead = null)
    {
        listed = words.Count;
        known = [.. words, .. alsoRead ?? []];
    }

    /// <summary>The words that messages and schemas list.</summary>
    public IEnumerable<string> Words => known.Take(listed).Select(k => k.Word);

    /// <summary>Finds what a word stands for.</summary>
    public bool TryFind(string word, out T value)
    {
        foreach (var (candidate, meaning) in known)
        {
            if (string.Equals(candidate, word, StringComparison.OrdinalIgnoreCase))
            {
                value = meaning;
                return true;
            }
        }

        value = default!;
        return false;
    }
}

/// <summary>Makes lists of words.</summary>
public static class Choices
{
    /// <summary>Words that stand for themselves.</summary>
    public static Choices<string> Words(params IReadOnlyList<string> words) => new([.. words.Select(w => (w, w))]);

    /// <summary>Words with what they stand for.</summary>
    public static Choices<T> Of<T>(params IReadOnlyList<(string Word, T Value)> words) => new(words);
}
