using Runup.Quantities;

namespace Runup.Engineering.Drives;

/// <summary>Losses of a drive whose maker gives no figure.</summary>
public static class DriveLosses
{
    private const double ShareOfNominalPower = 0.01;

    /// <summary>What a drive takes from its own bus while the motor brakes lightly: 1 % of its nominal power.</summary>
    /// <remarks>Common practice, no source; low on purpose, so that a deceleration without resistor is not promised too short.</remarks>
    [Source("common-practice", "drive loss while braking lightly")]
    public static (ElectricalPower Loss, Assumption Assumption) WhileBraking(DriveRating drive)
    {
        var watts = ShareOfNominalPower * drive.NominalPower.Watts;
        return (ElectricalPower.FromWatts(watts), new Assumption(
            "loss of the drive while the motor brakes (1 % of its nominal power)",
            FormattableString.Invariant($"{watts:G3} W"),
            Assumption.CommonPractice,
            FromMemory: false));
    }
}
