using System.Globalization;

namespace Runup.Profiles;

/// <summary>What two states of one family of drives hold differently.</summary>
public static class Difference
{
    /// <summary>The kept parameters whose values differ, in the make's menu order; one that only one of the two knows differs.</summary>
    public static IReadOnlyList<ParameterDifference> Between(DriveProfile profile, ParameterValues left, ParameterValues right) =>
    [
        .. from parameter in profile.Parameters
           where parameter.IsKept && left[parameter.Number] != right[parameter.Number]
           select new ParameterDifference(parameter, Side(parameter, left), Side(parameter, right)),
    ];

    private static ShownValue? Side(Parameter parameter, ParameterValues values) =>
        values[parameter.Number] is { } raw ? DisplayText.Shown(parameter, raw, values) : null;
}

/// <summary>A parameter that differs; a side is null where its value is not known.</summary>
/// <param name="Parameter">The parameter.</param>
/// <param name="Left">The one state's value.</param>
/// <param name="Right">The other state's value.</param>
public sealed record ParameterDifference(Parameter Parameter, ShownValue? Left, ShownValue? Right);

/// <summary>A value as the display shows it.</summary>
/// <param name="Raw">In counts.</param>
/// <param name="Display">As the display shows it, without unit.</param>
/// <param name="Unit">Unit that the display stands in; null for choices and pure numbers.</param>
public sealed record ShownValue(long Raw, string Display, string? Unit)
{
    /// <summary>The display with its unit; a word such as "off" in a number's place has none.</summary>
    public string Text => Unit is not null && decimal.TryParse(Display, NumberStyles.Number, CultureInfo.InvariantCulture, out _) ? $"{Display} {Unit}" : Display;
}
