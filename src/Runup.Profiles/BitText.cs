using System.Globalization;
using System.Numerics;

namespace Runup.Profiles;

/// <summary>Values that a display writes in binary or hexadecimal digits: as many as the highest value has, with a letter behind that says which.</summary>
internal static class BitText
{
    /// <summary>The digits of a value with their letter.</summary>
    internal static string Of(ParameterForm.Numeric form, long raw)
    {
        var bits = BitOperations.Log2((ulong)Math.Max(1, form.High)) + 1;
        return form.Digits is Digits.Binary
            ? raw.ToString($"b{bits}", CultureInfo.InvariantCulture) + "b"
            : raw.ToString($"X{(bits + 3) / 4}", CultureInfo.InvariantCulture) + "h";
    }

    /// <summary>Reads digits, with or without their letter.</summary>
    internal static DisplayReading Read(ParameterForm.Numeric form, string text)
    {
        var (letter, style, name) = form.Digits is Digits.Binary ? ('b', NumberStyles.AllowBinarySpecifier, "binary") : ('h', NumberStyles.AllowHexSpecifier, "hexadecimal");

        // A b is a hexadecimal digit, too, but an h is no binary one.
        var digits = text.EndsWith(letter.ToString(), StringComparison.OrdinalIgnoreCase) ? text[..^1] : text;
        return digits.Length is > 0 and <= 32 && long.TryParse(digits, style, CultureInfo.InvariantCulture, out var raw)
            ? new DisplayReading.Value(raw)
            : new DisplayReading.Unreadable($"\"{text}\" is not a {name} number as the display shows it.");
    }
}
