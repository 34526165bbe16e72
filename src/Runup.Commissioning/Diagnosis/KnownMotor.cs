using Runup.Commissioning.Survey;
using Runup.Engineering.Motors;
using Runup.Engineering.Motors.Ensemble;

namespace Runup.Commissioning.Diagnosis;

/// <summary>The motors that a plate may stand for, before and after what was read on the motor.</summary>
/// <param name="FromPlate">By the plate alone.</param>
/// <param name="Now">With the readings; the same where there are none.</param>
/// <param name="Readings">The readings.</param>
public sealed record KnownMotor(MotorEnsemble FromPlate, MotorEnsemble Now, MotorReadings Readings)
{
    /// <summary>Whether anything was read that tells of the motor.</summary>
    public bool HasReadings => Readings.Used.Count > 0;

    /// <summary>What is known of a motor; null where no induction motor has its plate.</summary>
    public static KnownMotor? Of(MotorSurvey motor, Nameplate plate, PlateTrust trust = PlateTrust.WithTolerances, IReadOnlyList<ReadingRow>? rows = null)
    {
        if (MotorEnsemble.Of(plate, trust) is not { } fromPlate)
        {
            return null;
        }

        var readings = MotorReadings.Of(motor, plate, rows ?? []);
        return new KnownMotor(fromPlate, readings.Used.Count > 0 ? fromPlate.After(readings.Used) : fromPlate, readings);
    }
}
