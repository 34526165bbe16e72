using System.Text.RegularExpressions;
using Runup.Profiles;

namespace Runup.Files.Listings;

/// <summary>Units as tables print them: alone, in brackets, with a resolution before or a whole behind.</summary>
internal static partial class UnitCell
{
    // Beside the trade's spellings, which the quantities know; in any case of letters.
    private static readonly (string Symbol, string[] Spellings)[] Known =
    [
        ("s", ["sec", "sec.", "secs", "s.", "second", "seconds"]),
        ("ms", ["msec", "milliseconds"]),
        ("min", ["min.", "mins", "minutes"]),
        ("h", ["hours", "hrs", "hr"]),
        ("Hz", ["hz", "hertz"]),
        ("kHz", ["khz"]),
        ("V", ["volt", "volts", "vac", "v ac", "vdc", "v dc", "vrms"]),
        ("A", ["amp", "amps", "arms", "a rms", "aac", "ampere", "amperes"]),
        ("rpm", ["rpm", "rpm.", "r/min", "rev/min", "min-1", "1/min", "min⁻¹", "/min", "u/min"]),
        ("%", ["%", "pct", "percent", "per cent", "pc"]),
        ("‰", ["‰", "per mille", "0/00"]),
        ("Ω", ["ohm", "ohms", "ω", "Ω"]),
        ("mΩ", ["mohm"]),
        ("kW", ["kw", "kilowatts"]),
        ("W", ["w", "watt", "watts"]),
        ("hp", ["hp"]),
        ("°C", ["deg c", "°c", "degc"]),
        ("bit/s", ["bps", "baud"]),
        ("N·m", ["nm"]),
    ];

    private static readonly Dictionary<string, string> Spellings = Known
        .SelectMany(k => k.Spellings.Select(s => (Spelling: s, k.Symbol)))
        .DistinctBy(k => k.Spelling, StringComparer.OrdinalIgnoreCase)
        .ToDictionary(k => k.Spelling, k => k.Symbol, StringComparer.OrdinalIgnoreCase);

    private static readonly HashSet<string> NoUnit = new(StringComparer.OrdinalIgnoreCase) { "-", "–", "—", "none", "n/a", "1", ".", "/" };

    /// <summary>The unit of a cell in the trade's spelling; null where it is none that is known.</summary>
    internal static string? Read(string text)
    {
        var plain = text.Trim().Trim('[', ']', '(', ')', ',', ';').Trim();
        if (plain.Length == 0 || NoUnit.Contains(plain))
        {
            return null;
        }

        var cut = Resolution().Match(plain);
        plain = cut.Success ? plain[cut.Length..].Trim() : plain;
        if (Symbol(plain) is { } known)
        {
            return known;
        }

        // A rate is another unit than the quantity that changes.
        if (Rate().Match(plain) is { Success: true } rate && Symbol(rate.Groups["of"].Value) is { } changing && Symbol(rate.Groups["in"].Value) is { } time)
        {
            return $"{changing}/{time}";
        }

        // "% of rated current", "%In", "A rms": the first word is the unit.
        if (plain.StartsWith('%') || plain.StartsWith('‰'))
        {
            return plain[..1];
        }

        var first = plain.Split(' ', ',', ';', '/')[0];
        return first.Length < plain.Length && plain.Length < 32 ? Symbol(first) : null;
    }

    /// <summary>The unit with which a text begins, as it stands there; empty where it begins with none.</summary>
    internal static string Leading(string text)
    {
        var match = First().Match(text);
        return match.Success && Symbol(match.Value.Trim()) is not null ? match.Value : "";
    }

    private static string? Symbol(string text) =>
        Spellings.TryGetValue(text, out var unit) ? unit : text.Length > 0 && ProfileUnit.Find(text) is { } found && found.Unit.Symbol.Length > 0 ? found.Unit.Symbol : null;

    [GeneratedRegex(@"^(?:[x×*]?\s*\d+(?:[.,]\d+)?\s*=?\s*(?:\d+(?:[.,]\d+)?)?\s*[x×*]?)\s*(?=[A-Za-zΩ%‰°µ])", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Resolution();

    [GeneratedRegex(@"^(?<of>[A-Za-z%]+)\s*(?:/|per|p\.)\s*(?<in>s|sec\.?|seconds?|min\.?|minutes?)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Rate();

    [GeneratedRegex(@"^(?:r/min|1/min|rev/min|min-1|[A-Za-zΩµ°%‰]+)(?=$|[\s,;)\]])", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex First();
}
