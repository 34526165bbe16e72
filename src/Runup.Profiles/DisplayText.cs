using System.Globalization;

namespace Runup.Profiles;

/// <summary>A parameter's value as the drive's display shows it.</summary>
public static class DisplayText
{
    /// <summary>The digits or the choice that the display shows, without unit; counts in angle brackets for a choice that the profile does not name.</summary>
    /// <param name="parameter">The parameter.</param>
    /// <param name="raw">Its value in counts.</param>
    /// <param name="values">What the drive holds, which may choose the unit.</param>
    public static string Of(Parameter parameter, long raw, ParameterValues values) => parameter.Form switch
    {
        ParameterForm.Choices c => c.Values.FirstOrDefault(v => v.Raw == raw)?.Label ?? Unnamed(raw),
        ParameterForm.Numeric n => Special(n, raw) ?? (n.Digits is Profiles.Digits.Decimal ? Digits(Scale(n, values), raw) : BitText.Of(n, raw)),
        _ => throw new InvalidOperationException("Every form of parameter is told apart."),
    };

    /// <summary>The unit that the display's digits stand in; null for choices and pure numbers.</summary>
    public static string? Unit(Parameter parameter, ParameterValues values)
    {
        if (parameter.Form is not ParameterForm.Numeric n)
        {
            return null;
        }

        var symbol = UnitOf(n, values).Symbol;
        return symbol.Length == 0 ? null : symbol;
    }

    /// <summary>What the display shows with its unit; a word such as "off" in a number's place has none.</summary>
    public static ShownValue Shown(Parameter parameter, long raw, ParameterValues values) => new(raw, Of(parameter, raw, values), Unit(parameter, values));

    /// <summary>Reads what a person saw on the display.</summary>
    /// <param name="parameter">The parameter.</param>
    /// <param name="text">The digits (decimal point or comma) with or without the unit, the choice, or the choice's number.</param>
    /// <param name="values">What the drive holds, which may choose the unit.</param>
    public static DisplayReading Read(Parameter parameter, string text, ParameterValues values)
    {
        var trimmed = text.Trim();
        return parameter.Form switch
        {
            ParameterForm.Choices c => ReadChoice(c, trimmed),
            ParameterForm.Numeric n when n.Specials.FirstOrDefault(s => Same(s.Label, trimmed)) is { } special => new DisplayReading.Value(special.Raw),
            ParameterForm.Numeric { Digits: not Profiles.Digits.Decimal } n => BitText.Read(n, trimmed),
            ParameterForm.Numeric n => ReadDigits(n, WithoutUnit(trimmed, Unit(parameter, values)), values),
            _ => throw new InvalidOperationException("Every form of parameter is told apart."),
        };
    }

    /// <summary>The scale that holds while the drive has these values.</summary>
    internal static DisplayScale Scale(ParameterForm.Numeric form, ParameterValues values) => UnitOf(form, values).Scale;

    /// <summary>The unit and scale that hold while the drive has these values.</summary>
    internal static (string Symbol, DisplayScale Scale) UnitOf(ParameterForm.Numeric form, ParameterValues values) => form.Unit switch
    {
        ParameterUnit.Fixed f => (f.Symbol, form.Scale),
        ParameterUnit.ChosenBy c when c.Units.FirstOrDefault(u => u.When == values[c.Parameter]) is { } unit => (unit.Symbol, unit.Scale),
        ParameterUnit.ChosenBy c => ("", form.Scale),
        _ => throw new InvalidOperationException("Every kind of unit is told apart."),
    };

    private static string Digits(DisplayScale scale, long raw) =>
        scale.Value(raw).ToString("F" + scale.Decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static string? Special(ParameterForm.Numeric form, long raw) =>
        form.Specials.FirstOrDefault(s => s.Raw == raw) is { Label.Length: > 0 } special ? special.Label : null;

    private static string Unnamed(long raw) => string.Create(CultureInfo.InvariantCulture, $"<{raw}>");

    private static bool Same(string label, string text) => label.Length > 0 && string.Equals(label, text, StringComparison.OrdinalIgnoreCase);

    private static string WithoutUnit(string text, string? unit) =>
        unit is not null && text.EndsWith(unit, StringComparison.OrdinalIgnoreCase) ? text[..^unit.Length].TrimEnd() : text;

    private static DisplayReading ReadChoice(ParameterForm.Choices form, string text)
    {
        var named = form.Values.FirstOrDefault(v => Same(v.Label, text))
            ?? form.Values.FirstOrDefault(v => long.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var raw) && v.Raw == raw);
        return named is null
            ? new DisplayReading.Unreadable($"\"{text}\" is none of its choices: {string.Join(", ", form.Values.Select(v => v.Label))}.")
            : new DisplayReading.Value(named.Raw);
    }

    private static DisplayReading ReadDigits(ParameterForm.Numeric form, string text, ParameterValues values)
    {
        var scale = Scale(form, values);
        const NumberStyles Style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;
        if (!decimal.TryParse(text.Replace(',', '.').Replace('−', '-'), Style, CultureInfo.InvariantCulture, out var value))
        {
            return new DisplayReading.Unreadable($"\"{text}\" is not a number as the display shows it.");
        }

        return scale.Nearest(value) is { } raw && scale.Value(raw) == value
            ? new DisplayReading.Value(raw)
            : new DisplayReading.Unreadable($"\"{text}\" is finer than the display, which counts in {scale.PerCount.ToString(CultureInfo.InvariantCulture)}.");
    }
}

/// <summary>What a text seen on a display turned out to be.</summary>
public abstract record DisplayReading
{
    private DisplayReading()
    {
    }

    /// <summary>A value.</summary>
    /// <param name="Raw">In counts.</param>
    public sealed record Value(long Raw) : DisplayReading;

    /// <summary>Not something that this parameter's display shows.</summary>
    /// <param name="Why">What is wrong with it.</param>
    public sealed record Unreadable(string Why) : DisplayReading;
}
