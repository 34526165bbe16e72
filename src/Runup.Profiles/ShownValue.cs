using System.Globalization;

namespace Runup.Profiles;

/// <summary>A value as the display shows it.</summary>
/// <param name="Raw">In counts.</param>
/// <param name="Display">As the display shows it, without unit.</param>
/// <param name="Unit">Unit that the display stands in; null for choices and pure numbers.</param>
public sealed record ShownValue(long Raw, string Display, string? Unit)
{
    /// <summary>The display with its unit; a word such as "off" in a number's place has none.</summary>
    public string Text => Unit is not null && decimal.TryParse(Display, NumberStyles.Number, CultureInfo.InvariantCulture, out _) ? $"{Display} {Unit}" : Display;
}
