namespace Runup.Quantities;

/// <summary>Finds the word that a mistyped one was meant to be.</summary>
public static class Spelling
{
    private const int Longest = 64;

    /// <summary>The nearest of some words, or null where none is near: at most one edit in three letters.</summary>
    /// <remarks>
    /// An edit adds, drops or changes a letter or swaps two neighbours (optimal string alignment).
    /// Case does not count. Of equally near words the first wins.
    /// </remarks>
    public static string? Nearest(string word, IEnumerable<string> words)
    {
        string? nearest = null;
        var fewest = Math.Max(1, Math.Min(word.Length, Longest) / 3) + 1;
        foreach (var candidate in words)
        {
            if (word.Length > Longest || candidate.Length > Longest || Math.Abs(word.Length - candidate.Length) >= fewest)
            {
                continue;
            }

            var edits = Edits(word.ToUpperInvariant(), candidate.ToUpperInvariant());
            if (edits < fewest && edits < Math.Max(word.Length, candidate.Length))
            {
                fewest = edits;
                nearest = candidate;
            }
        }

        return nearest;
    }

    private static int Edits(string a, string b)
    {
        var table = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            for (var j = 0; j <= b.Length; j++)
            {
                table[i, j] = i == 0 || j == 0 ? i + j : Step(table, a, b, i, j);
            }
        }

        return table[a.Length, b.Length];
    }

    private static int Step(int[,] table, string a, string b, int i, int j)
    {
        var change = a[i - 1] == b[j - 1] ? 0 : 1;
        var least = Math.Min(Math.Min(table[i - 1, j] + 1, table[i, j - 1] + 1), table[i - 1, j - 1] + change);
        return i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1] ? Math.Min(least, table[i - 2, j - 2] + 1) : least;
    }
}
