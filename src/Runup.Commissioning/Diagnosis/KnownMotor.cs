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
    // Of a reading that the motors lead to expect it is about 0 to 2, at the edge of what the plate allows about −2; common practice, no source.
    private const double Unlikely = -5;

    /// <summary>Whether anything was read that tells of the motor.</summary>
    public bool HasReadings => Readings.Used.Count > 0;

    /// <summary>Whether the readings, in the mean, are hardly those of a motor with this plate: e⁵ times less likely than the width of their own errors allows.</summary>
    public bool ReadingsContradict => HasReadings && (Now.LogEvidence - FromPlate.LogEvidence) / Readings.Used.Count < Unlikely;

    /// <summary>What is known of a motor; null where no induction motor has its plate.</summary>
    public static KnownMotor? Of(
        MotorSurvey motor, Nameplate plate, PlateTrust trust = PlateTrust.WithTolerances, IReadOnlyList<ReadingRow>? rows = null, ulong seed = MotorEnsemble.DefaultSeed)
    {
        if (MotorEnsemble.Of(plate, trust, seed: seed) is not { } fromPlate)
        {
            return null;
        }

        var readings = MotorReadings.Of(motor, plate, rows ?? []);
        return new KnownMotor(fromPlate, readings.Used.Count > 0 ? fromPlate.After(readings.Used) : fromPlate, readings);
    }
}
