using Runup.Engineering.Drives;

namespace Runup.Commissioning.Checks;

/// <summary>The figures of the drive that a check states; null where not computed.</summary>
/// <param name="DeratedCurrentA">Continuous current under its conditions; null where the maker does not permit them.</param>
/// <param name="CurrentMarginPercent">Over the motors' rated current; negative if it is not enough.</param>
/// <param name="LossesW">What the drive loses as heat at rated current, as the maker states it; null where the profile does not say.</param>
public sealed record DriveFigures(double? DeratedCurrentA, double? CurrentMarginPercent, double? LossesW)
{
    /// <summary>The figures of a job.</summary>
    public static DriveFigures Of(JobContext context)
    {
        var permitted = context.Conditions.Derated as DeratedCurrent.Permitted;
        var needed = context.Printed.RatedCurrent.Amperes;
        return new(
            permitted?.Current.Amperes,
            permitted is not null && needed > 0 ? 100 * ((permitted.Current.Amperes / needed) - 1) : null,
            context.Rating.Losses?.Watts);
    }
}
