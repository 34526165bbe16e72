using Runup.Commissioning.Survey;
using Runup.Engineering;

namespace Runup.Commissioning.Checks;

/// <summary>How the motor is cooled, from its IC code.</summary>
[Source("iec-60034-6", "short code, last digit")]
internal static class Cooling
{
    /// <summary>Whether a fan of its own cools the motor at every speed; null where the code says nothing of it.</summary>
    /// <remarks>
    /// IEC 60034-6 (from memory): the last digit of the short code names how the secondary coolant moves: 0 free convection, 1 self-circulation by the shaft,
    /// 6 or 7 a separate component, 8 relative displacement (the wind of the driven fan, which falls with speed, too). IC411 and TEFC have the fan on the shaft,
    /// IC416 and TEBC one of their own.
    /// </remarks>
    internal static bool? HasOwnFan(Job job) => job.Motor.Plate.Cooling?.Value is { } code ? HasOwnFan(code) : null;

    private static bool? HasOwnFan(string code)
    {
        var text = code.Trim().ToUpperInvariant().Replace(" ", string.Empty, StringComparison.Ordinal);
        return text switch
        {
            "TEBC" or "TENV" => true,
            "TEFC" or "TEAO" or "ODP" or "DP" => false,
            _ when text.StartsWith("IC", StringComparison.Ordinal) && char.IsAsciiDigit(text[^1]) => text[^1] switch
            {
                '1' or '8' => false,
                '0' or '5' or '6' or '7' => true,
                _ => null,
            },
            _ => null,
        };
    }
}
