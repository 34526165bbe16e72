namespace Runup.Profiles;

/// <summary>Finds the words of the trade in a text, also abbreviated.</summary>
internal sealed class WordReader
{
    private const int LongestSpelling = 4;
    private const double UnknownWeight = 0.55;
    private const double NearSays = 0.85;

    private readonly Dictionary<string, List<(string Word, double Strength)>> spellings = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<(string Word, double Strength)>> brought = new(StringComparer.Ordinal);
    private readonly List<(string Spelling, string Word)> single = [];
    private readonly Dictionary<string, TradeWord> words;
    private readonly Dictionary<string, IReadOnlyList<(string, double)>> known = new(StringComparer.Ordinal);

    internal WordReader(IEnumerable<TradeWord> words)
    {
        this.words = new(StringComparer.Ordinal);
        foreach (var word in words)
        {
            this.words.Add(word.Name, word);
            var exact = word.Spellings.Prepend(word.Name.Replace('-', ' ')).Select(s => (Spelling: s, Strength: 1.0));
            foreach (var (spelling, strength) in exact.Concat(word.Near.Select(s => (s, NearSays))))
            {
                var parts = TextWords.Of(spelling);
                var key = string.Join(' ', parts);
                var of = spellings.TryGetValue(key, out var list) ? list : spellings[key] = [];
                if (of.All(o => !string.Equals(o.Word, word.Name, StringComparison.Ordinal)))
                {
                    of.Add((word.Name, strength));
                    if (parts.Count == 1 && strength >= 1)
                    {
                        single.Add((key, word.Name));
                    }
                }
            }
        }

        // Spellings of several words, each word brought to its own first: "power up" is found in "pwr up", too.
        foreach (var (key, of) in spellings.Where(s => s.Key.Contains(' ', StringComparison.Ordinal)).ToList())
        {
            brought.TryAdd(Brought(key.Split(' ')), of);
        }
    }

    /// <summary>How much a word says; an unknown one says something else than what is looked for.</summary>
    internal double Weight(string word) => words.TryGetValue(word, out var known) ? known.Weight : char.IsAsciiDigit(word[0]) ? 0.8 : UnknownWeight;

    /// <summary>Whether a word makes something else of what the others say.</summary>
    internal bool Spoils(string word) => words.TryGetValue(word, out var known) && known.Spoils;

    internal List<Spoken> Read(string text)
    {
        var parts = TextWords.Of(text);
        var spoken = new List<Spoken>();
        for (var i = 0; i < parts.Count;)
        {
            var length = Math.Min(LongestSpelling, parts.Count - i);
            while (length > 1 && Several(parts, i, length) is null)
            {
                length--;
            }

            var piece = string.Join(' ', parts.Skip(i).Take(length));
            var readings = length > 1 ? Several(parts, i, length)! : spellings.TryGetValue(piece, out var exact) ? exact : Abbreviated(piece);
            var weight = readings.Count == 0 ? Weight(piece) : readings.Max(r => Weight(r.Item1));
            spoken.Add(new Spoken(piece, readings.Count == 0 ? [(piece, 1.0)] : readings, weight));
            i += length;
        }

        return spoken;
    }

    private List<(string Word, double Strength)>? Several(List<string> parts, int from, int length)
    {
        var piece = parts.GetRange(from, length);
        return spellings.TryGetValue(string.Join(' ', piece), out var exact) ? exact : brought.GetValueOrDefault(Brought(piece));
    }

    private string Brought(IEnumerable<string> parts) => string.Join(' ', parts.Select(part =>
        (spellings.TryGetValue(part, out var exact) ? exact : Abbreviated(part)) is [var only, ..] && Likeness(part, only.Word) > 0 ? only.Word : part));

    private IReadOnlyList<(string Word, double Strength)> Abbreviated(string piece)
    {
        if (piece.Length < 3 || !char.IsLetter(piece[0]))
        {
            return [];
        }

        if (known.TryGetValue(piece, out var before))
        {
            return before;
        }

        var best = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var (spelling, word) in single)
        {
            var strength = Likeness(piece, spelling);
            if (strength > best.GetValueOrDefault(word))
            {
                best[word] = strength;
            }
        }

        var top = best.Values.DefaultIfEmpty(0).Max();
        return known[piece] = [.. best.Where(b => b.Value >= top - 0.051).Select(b => (b.Key, b.Value))];
    }

    private static double Likeness(string piece, string spelling)
    {
        if (piece[0] != spelling[0] || spelling.Length < 4)
        {
            return 0;
        }

        if (spelling.StartsWith(piece, StringComparison.Ordinal))
        {
            return 0.9;
        }

        var common = piece.AsSpan().CommonPrefixLength(spelling);
        if (common >= 5 && common >= 0.65 * Math.Max(piece.Length, spelling.Length))
        {
            return 0.85;
        }

        if (piece.Length >= 5 && OneSlip(piece, spelling))
        {
            return 0.8;
        }

        return piece.Length <= 5 && piece.Length < spelling.Length && !piece[1..].Any(c => c is 'a' or 'e' or 'i' or 'o' or 'u') && IsWithin(piece, spelling) ? 0.75 : 0;
    }

    // frq within frequency: letters left out, the order kept.
    private static bool IsWithin(string piece, string spelling)
    {
        var at = 0;
        foreach (var c in spelling)
        {
            if (at < piece.Length && piece[at] == c)
            {
                at++;
            }
        }

        return at == piece.Length;
    }

    private static bool OneSlip(string piece, string spelling)
    {
        if (Math.Abs(piece.Length - spelling.Length) > 1)
        {
            return false;
        }

        var head = piece.AsSpan().CommonPrefixLength(spelling);
        var (a, b) = (piece[head..], spelling[head..]);
        return a.Length == 0 || b.Length == 0
            || (a.Length == b.Length ? Same(a[1..], b[1..]) : a.Length > b.Length ? Same(a[1..], b) : Same(a, b[1..]));
    }

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.Ordinal);
}
