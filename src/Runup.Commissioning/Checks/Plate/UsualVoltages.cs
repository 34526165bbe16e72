using Runup.Engineering;

namespace Runup.Commissioning.Checks.Plate;

/// <summary>The voltages that motors are wound for, and the frequency at which they are usual.</summary>
[Source("common-practice", "voltages on motors' plates")]
internal static class UsualVoltages
{
    // A voltage as printed; and one reckoned by √3, of rounded figures.
    private const double AsPrinted = 0.006;
    private const double AsReckoned = 0.012;

    private static readonly double[] AtEither = [115, 190, 200, 220, 230, 380, 440];
    private static readonly double[] At50 = [240, 290, 346, 400, 415, 420, 500, 525, 550, 660, 690];
    private static readonly double[] At60 = [208, 265, 277, 460, 480, 575, 600];

    /// <summary>Whether motors are wound for it at this frequency, at another one only, or at none.</summary>
    internal static (bool IsMade, bool AtThisFrequency) Has(double voltage_V, double frequency_Hz)
    {
        var (own, other) = Math.Abs(frequency_Hz - 60) < 1 ? (At60, At50) : (At50, At60);
        var atThis = Holds(AtEither, voltage_V) || Holds(own, voltage_V);
        return (atThis || Holds(other, voltage_V), atThis);
    }

    /// <summary>The usual voltage that it stands for; itself where none is near.</summary>
    internal static double Nearest(double voltage_V)
    {
        var nearest = AtEither.Concat(At50).Concat(At60).MinBy(usual => Math.Abs(usual - voltage_V));
        return IsNear(voltage_V, nearest, AsReckoned) ? nearest : voltage_V;
    }

    private static bool Holds(double[] voltages, double voltage_V) => Array.Exists(voltages, usual => IsNear(voltage_V, usual, AsPrinted));

    private static bool IsNear(double voltage_V, double usual, double within) => Math.Abs((voltage_V / usual) - 1) < within;
}
