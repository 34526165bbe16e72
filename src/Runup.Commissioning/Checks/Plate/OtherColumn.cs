using Runup.Commissioning.Survey;

namespace Runup.Commissioning.Checks.Plate;

/// <summary>The columns of the plate that are not in use.</summary>
internal static class OtherColumn
{
    private const double Near = 0.03;

    /// <summary>The column with about this current, or null.</summary>
    internal static OtherRating? WithCurrent(PlateSurvey plate, double current_A) =>
        plate.OtherRatings.FirstOrDefault(other => other.Current is { } current && Math.Abs((current.Value.Amperes / current_A) - 1) < Near);

    /// <summary>The column whose voltage suits a supply, or null.</summary>
    internal static OtherRating? Suiting(PlateSurvey plate, double supply_V) =>
        plate.OtherRatings.FirstOrDefault(other => VoltageMatch.Suits(other.Voltage.Value.Volts, supply_V));
}
