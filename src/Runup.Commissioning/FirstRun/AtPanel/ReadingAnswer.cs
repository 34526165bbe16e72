using System.Buffers;
using Runup.Quantities;

namespace Runup.Commissioning.FirstRun.AtPanel;

/// <summary>What a person's answer to the question for a reading turned out to be; a closed set.</summary>
internal abstract record ReadingAnswer
{
    private const int ShortestInstrument = 3;
    private static readonly SearchValues<char> OfNumbers = SearchValues.Create("+-−0123456789., '’");
    private static readonly IReadOnlyDictionary<string, (Dimension Dimension, double PerSi)> Units = new Dictionary<string, (Dimension, double)>(StringComparer.Ordinal)
    {
        ["Hz"] = (Dimension.Frequency, 1),
        ["A"] = (Dimension.Current, 1),
        ["V"] = (Dimension.Voltage, 1),
        ["rpm"] = (Dimension.RotationalSpeed, 30 / Math.PI),
        ["s"] = (Dimension.Time, 1),
        ["%"] = (Dimension.Fraction, 100),
    };

    private static readonly Dimension[] OtherDimensions = [Dimension.Power, Dimension.Torque, Dimension.Temperature, .. Units.Values.Select(u => u.Dimension)];

    private ReadingAnswer()
    {
    }

    /// <summary>Reads an answer: a number, with its unit where it is another one, and with what it was read where that is not the usual; nothing; or a letter with its meaning.</summary>
    /// <param name="text">The answer.</param>
    /// <param name="unit">The unit of a bare number.</param>
    /// <param name="usual">From what it is read unless the answer says otherwise.</param>
    public static ReadingAnswer Read(string text, string unit, string usual)
    {
        var trimmed = text.Trim();
        var words = trimmed.Split((char[]?)null, 2, StringSplitOptions.RemoveEmptyEntries);
        return words switch
        {
            [] => new NotRead(),
            [var one] when Is(one, "b", "back") => new Back(),
            [var one] when Is(one, "t", "trip") => new Unclear("Say what the display shows, such as: t overcurrent"),
            [var one, var more] when Is(one, "t", "trip") => new Tripped(more),
            _ => Number(trimmed, unit, usual),
        };
    }

    private static bool Is(string word, string letter, string whole) =>
        string.Equals(word, letter, StringComparison.OrdinalIgnoreCase) || string.Equals(word, whole, StringComparison.OrdinalIgnoreCase);

    private static ReadingAnswer Number(string text, string unit, string usual)
    {
        var end = text.AsSpan().IndexOfAnyExcept(OfNumbers);
        var (number, rest) = end < 0 ? (text, "") : (text[..end].Trim(), text[end..].Trim());
        var first = rest.Split(' ', 2, StringSplitOptions.TrimEntries);
        var (dimension, perSi) = Units[unit];
        var spelling = IsUnit(dimension, first[0]) ? first[0] : null;
        var instrument = spelling is null ? rest : first.ElementAtOrDefault(1) ?? "";
        if (spelling is null && rest.Length > 0 && OtherDimensions.Any(d => IsUnit(d, first[0])))
        {
            return new Unclear($"{first[0]} is no unit of it; in {unit}, please");
        }

        return QuantityText.ReadSi(dimension, number.Length == 0 ? text : $"{number} {spelling ?? unit}") switch
        {
            Reading<double>.Problem problem => new Unclear($"{problem.Found}; {problem.WouldDo}"),
            Reading<double>.Value when instrument.Length is > 0 and < ShortestInstrument => new Unclear($"'{instrument}' is not understood; a number in {unit}, and behind it with what it was read, such as: 14,2 clamp meter"),
            Reading<double>.Value value => new Shows(value.Quantity * perSi, instrument.Length > 0 ? instrument : usual),
            _ => throw new InvalidOperationException("A reading is a value or a problem."),
        };
    }

    private static bool IsUnit(Dimension dimension, string word) => word.Length > 0 && QuantityText.ReadSi(dimension, $"1 {word}") is Reading<double>.Value;

    /// <summary>It was read.</summary>
    /// <param name="Value">In the unit asked for.</param>
    /// <param name="From">From what.</param>
    public sealed record Shows(double Value, string From) : ReadingAnswer;

    /// <summary>It was not read.</summary>
    public sealed record NotRead : ReadingAnswer;

    /// <summary>The one before is wanted again.</summary>
    public sealed record Back : ReadingAnswer;

    /// <summary>The drive tripped.</summary>
    /// <param name="Display">What its display shows.</param>
    public sealed record Tripped(string Display) : ReadingAnswer;

    /// <summary>Nothing that is understood.</summary>
    /// <param name="Why">What was found, and what would do.</param>
    public sealed record Unclear(string Why) : ReadingAnswer;
}
