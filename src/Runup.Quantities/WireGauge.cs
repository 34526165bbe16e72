namespace Runup.Quantities;

/// <summary>American wire gauge: diameter d = 0.005 in × 92^((36 − n)/39), with n = 0, −1, −2, −3 for 1/0 to 4/0.</summary>
/// <remarks>Valid from 40 AWG to 4/0 AWG for solid round wire; a stranded conductor of the same gauge has the same metal section within its make-up. Source: ASTM B258 (from memory).</remarks>
internal static class WireGauge
{
    private const double Inch = 0.0254;

    private static readonly string[] Aughts = ["1/0", "2/0", "3/0", "4/0"];

    /// <summary>The unit under which gauges are reported; they have no factor.</summary>
    internal static Unit Unit { get; } = new("AWG", 1, 0, []);

    /// <summary>Whether a text speaks of a gauge at all.</summary>
    internal static bool IsMeant(string text) => text.Contains("AWG", StringComparison.OrdinalIgnoreCase);

    /// <summary>The section in m² of <c>10 AWG</c>, <c>AWG 10</c>, <c>#10 AWG</c>, <c>2/0 AWG</c>, <c>00 AWG</c>; null where there is no such gauge.</summary>
    internal static double? Read(string text)
    {
        var size = text.Replace("AWG", "", StringComparison.OrdinalIgnoreCase).Replace("#", "", StringComparison.Ordinal).Trim();
        if (Array.IndexOf(Aughts, size) is >= 0 and var aught)
        {
            return Section(-aught);
        }

        if (size is "0" or "00" or "000" or "0000")
        {
            return Section(1 - size.Length);
        }

        return size is [>= '1' and <= '9'] or [>= '1' and <= '9', >= '0' and <= '9'] && int.Parse(size) is <= 40 and var number ? Section(number) : null;
    }

    /// <summary>The gauge that a section is, within one part in a thousand; null where it is none.</summary>
    internal static string? Write(double squareMetres)
    {
        for (var number = -3; number <= 40; number++)
        {
            if (Math.Abs((squareMetres / Section(number)) - 1) < 1e-3)
            {
                return (number <= 0 ? Aughts[-number] : number.ToString()) + " AWG";
            }
        }

        return null;
    }

    private static double Section(int number)
    {
        var diameter = 0.005 * Inch * Math.Pow(92, (36 - number) / 39.0);
        return Math.PI / 4 * diameter * diameter;
    }
}
