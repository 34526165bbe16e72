using Runup.Commissioning.Survey;
using Runup.Engineering;
using Runup.Engineering.Motors;

namespace Runup.Commissioning.Checks.Plate;

/// <summary>Whether a plate is for both connections, so that the winding may be run in delta on the star's voltage to √3 times its frequency.</summary>
[Source("common-practice", "230/400 V and 265/460 V windings in delta on the star's voltage")]
internal static class StarAndDelta
{
    // Of 400/690 V windings nobody runs the delta on 690 V without the maker's word.
    private const double HighestStar_V = 520;

    // A delta of 230 V at 60 Hz may be that of twelve leads, which have no star.
    private const double EuropeanBelow_Hz = 55;

    /// <summary>The connection of the column in use, where the delta's voltage is so low that the star's is that of a usual supply; else null.</summary>
    internal static WindingConnection? InUse(PlateSurvey plate)
    {
        var (volts, hertz) = (plate.Voltage.Value.Volts, plate.Frequency.Value.Hertz);
        bool Has(Func<double, bool> isRight) => plate.OtherRatings.Any(other => isRight(other.Voltage.Value.Volts * hertz / (other.Frequency?.Value.Hertz ?? hertz)));
        return plate.Connection?.Value switch
        {
            WindingConnection.Delta or null when volts * Math.Sqrt(3) <= HighestStar_V && ((plate.Connection is not null && hertz < EuropeanBelow_Hz) || Has(other => VoltageMatch.AreRootThreeApart(other, volts))) => WindingConnection.Delta,
            WindingConnection.Star or null when volts <= HighestStar_V && Has(other => VoltageMatch.AreRootThreeApart(volts, other)) => WindingConnection.Star,
            _ => null,
        };
    }
}
