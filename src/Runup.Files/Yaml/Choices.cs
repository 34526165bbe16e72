namespace Runup.Files.Yaml;

/// <summary>The words that a key takes, each with what it stands for. Read without regard to case, written as listed.</summary>
/// <typeparam name="T">What the words stand for.</typeparam>
public sealed class Choices<T>
{
    private readonly string[] words;
    private readonly T[] values;
    private readonly int listed;

    /// <summary>Makes the list.</summary>
    /// <param name="words">The words that messages and schemas list.</param>
    /// <param name="alsoRead">Other words that are read.</param>
    public Choices(IReadOnlyList<(string Word, T Value)> words, IReadOnlyList<(string Word, T Value)>? alsoRead = null)
    {
        listed = words.Count;
        this.words = new string[listed + (alsoRead?.Count ?? 0)];
        values = new T[this.words.Length];
        for (var i = 0; i < values.Length; i++)
        {
            (this.words[i], values[i]) = i < listed ? words[i] : alsoRead![i - listed];
        }
    }

    internal Choices(string[] words, T[] values)
    {
        this.words = words;
        this.values = values;
        listed = words.Length;
    }

    /// <summary>The words that messages and schemas list.</summary>
    public IEnumerable<string> Words => words.Take(listed);

    /// <summary>Finds what a word stands for.</summary>
    public bool TryFind(string word, out T value)
    {
        for (var i = 0; i < words.Length; i++)
        {
            if (string.Equals(words[i], word, StringComparison.OrdinalIgnoreCase))
            {
                value = values[i];
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
    public static Choices<string> Words(params string[] words) => new(words, words);

    /// <summary>Words with what they stand for.</summary>
    public static Choices<T> Of<T>(params IReadOnlyList<(string Word, T Value)> words) => new(words);
}
