using Runup.Profiles;

namespace Runup.Commissioning.Entry.ByHand;

/// <summary>What a person's answer at the display turned out to be; a closed set.</summary>
internal abstract record HandAnswer
{
    private HandAnswer()
    {
    }

    /// <summary>Reads an answer as it was typed. An empty one says that the display shows what was expected; none at all ends it.</summary>
    /// <param name="text">The answer, or null.</param>
    /// <param name="question">What was asked.</param>
    /// <param name="size">The drive's size, on which the range depends.</param>
    /// <param name="values">What the drive holds, which may choose the unit.</param>
    public static HandAnswer Read(string? text, DisplayQuestion question, DriveSize size, ParameterValues values)
    {
        if (text is null)
        {
            return new Quit();
        }

        var trimmed = text.Trim();
        if (trimmed.Length == 0)
        {
            return new Shows(question.Expected.Raw);
        }

        var words = trimmed.Split((char[]?)null, 2, StringSplitOptions.RemoveEmptyEntries);
        return (words[0].ToUpperInvariant(), words.Length) switch
        {
            _ when IsLabel(question.Parameter, trimmed) => Shown(question.Parameter, trimmed, size, values),
            ("Q" or "QUIT", 1) => new Quit(),
            ("B" or "BACK", 1) => new Back(),
            ("S" or "SKIP", 1) => new Unclear("Say why it is left out, such as: s the panel is locked"),
            ("S" or "SKIP", _) => new LeftOut(words[1]),
            _ => Shown(question.Parameter, trimmed, size, values),
        };
    }

    private static HandAnswer Shown(Parameter parameter, string text, DriveSize size, ParameterValues values) =>
        DisplayText.Read(parameter, text, values) switch
        {
            DisplayReading.Value value when parameter.Accepts(value.Raw, size) => new Shows(value.Raw),
            _ => new Unclear($"\"{text}\" it can't show: {CouldShow(parameter, size, values)}."),
        };

    private static string CouldShow(Parameter parameter, DriveSize size, ParameterValues values)
    {
        if (parameter.Form is ParameterForm.Choices choices)
        {
            return $"it shows one of {string.Join(", ", choices.Values.Select(v => v.Label))}";
        }

        var (range, form) = (parameter.Range(size), (ParameterForm.Numeric)parameter.Form);
        var unit = DisplayText.Unit(parameter, values) is { } symbol ? $" {symbol}" : "";
        var steps = DisplayText.Of(parameter, range.Low + form.Step, values) is var next && form.Step > 1 ? $", the next after the lowest being {next}" : "";
        var words = form.Specials.Where(s => s.Label.Length > 0).Select(s => $" or {s.Label}");
        return $"of size {size.Name} it shows {DisplayText.Of(parameter, range.Low, values)} to {DisplayText.Of(parameter, range.High, values)}{unit}{steps}{string.Concat(words)}";
    }

    private static bool IsLabel(Parameter parameter, string text)
    {
        var labels = parameter.Form switch
        {
            ParameterForm.Choices c => c.Values,
            ParameterForm.Numeric n => n.Specials,
            _ => throw new InvalidOperationException("Every form of parameter is told apart."),
        };
        return labels.Any(l => string.Equals(l.Label, text, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>The display shows this.</summary>
    /// <param name="Raw">In counts.</param>
    public sealed record Shows(long Raw) : HandAnswer;

    /// <summary>It is left out.</summary>
    /// <param name="Why">The person's reason.</param>
    public sealed record LeftOut(string Why) : HandAnswer;

    /// <summary>The parameter before is wanted once more.</summary>
    public sealed record Back : HandAnswer;

    /// <summary>No more answers for now.</summary>
    public sealed record Quit : HandAnswer;

    /// <summary>Nothing that the display can show, and nothing that is understood.</summary>
    /// <param name="Why">What was found, and what would do, in one line.</param>
    public sealed record Unclear(string Why) : HandAnswer;
}
