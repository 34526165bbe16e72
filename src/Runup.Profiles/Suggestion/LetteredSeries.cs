namespace Runup.Profiles;

/// <summary>Rows that count by letters, such as speed A, B and C: for the scorer they count by numbers, as most tables do.</summary>
internal static class LetteredSeries
{
    private const string Letters = "ABCD";

    /// <summary>The rows, with 1, 2, 3 in the place of letters where names differ in these alone and begin with A.</summary>
    internal static IReadOnlyList<ListedParameter> Numbered(IReadOnlyList<ListedParameter> rows)
    {
        var lettered = new Dictionary<(string, string), string>();
        foreach (var (words, at) in rows.SelectMany(r => Places(r.Name)))
        {
            var key = Around(words, at);
            lettered[key] = lettered.GetValueOrDefault(key, "") + words[at];
        }

        return [.. rows.Select(r => Places(r.Name).Where(p => IsSeries(lettered[Around(p.Words, p.At)])).Select(p => (ListedParameter?)With(r, p.Words, p.At)).FirstOrDefault() ?? r)];
    }

    private static bool IsSeries(string letters) => letters.Contains('A', StringComparison.Ordinal) && letters.Contains('B', StringComparison.Ordinal) && letters.Distinct().Count() == letters.Length;

    private static (string, string) Around(string[] words, int at) => (string.Join(' ', words[..at]), string.Join(' ', words[(at + 1)..]));

    private static IEnumerable<(string[] Words, int At)> Places(string name)
    {
        var words = name.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        for (var i = 1; i < words.Length; i++)
        {
            if (words[i].Length == 1 && Letters.Contains(words[i][0], StringComparison.Ordinal))
            {
                yield return (words, i);
            }
        }
    }

    private static ListedParameter With(ListedParameter row, string[] words, int at) =>
        row with { Name = string.Join(' ', [.. words[..at], ((char)('1' + words[at][0] - 'A')).ToString(), .. words[(at + 1)..]]) };
}
