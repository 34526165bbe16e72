using Runup.Commissioning.Checks.Plate;
using Runup.Commissioning.Diagnosis;
using Runup.Commissioning.Survey;
using Runup.Engineering.Motors;
using Runup.Engineering.Motors.Ensemble;

namespace Runup.Commissioning.Checks;

/// <summary>A motor alone: what its plate tells without supply, drive or machine.</summary>
public sealed class MotorContext
{
    private readonly Lazy<KnownMotor?> known;

    private MotorContext(MotorSurvey motor, PlateTrust trust, IReadOnlyList<ReadingRow>? rows)
    {
        Plate = PlateContext.For(motor);
        Nameplate = NameplateReading.Of(Plate);
        Fit = Nameplate is { } plate && Plate.IsInduction ? CircuitFit.Of(plate) : null;
        Prediction = Fit is CircuitFit.Fitted fitted && Nameplate is { } printed ? MotorPrediction.From(fitted, printed) : null;
        known = new(() => Fit is CircuitFit.Fitted && Nameplate is { } named ? KnownMotor.Of(motor, named, trust, rows) : null);
        Report = new([.. CheckList.OfPlate.Select(check => check.Judge(Plate))], PlateAssumptions.Of(Fit, trust));
    }

    /// <summary>The plate with what follows from its arithmetic.</summary>
    public PlateContext Plate { get; }

    /// <summary>The plate as the calculations take it; null where its figures are not those of something that turns.</summary>
    public Nameplate? Nameplate { get; }

    /// <summary>The circuit's fit; null for a motor of another kind or an unusable plate.</summary>
    public CircuitFit? Fit { get; }

    /// <summary>The motor's circuit; null where none fits.</summary>
    public EquivalentCircuit? Circuit => (Fit as CircuitFit.Fitted)?.Circuit;

    /// <summary>What the motor does at rated voltage and frequency; null without a circuit.</summary>
    public MotorPrediction? Prediction { get; }

    /// <summary>The motors that the plate may stand for; null without a circuit.</summary>
    public KnownMotor? Known => known.Value;

    /// <summary>The winding in delta on the star's voltage; null where the plate is not for both, or without a circuit.</summary>
    public DeltaOnStarVoltage? OnStarVoltage => Known is { Now: var now } && StarAndDelta.InUse(Plate.Plate) is { } inUse ? DeltaOnStarVoltage.Of(now, inUse) : null;

    /// <summary>The checks of the plate, with everything that was taken because the plate does not say it.</summary>
    public CheckReport Report { get; }

    /// <summary>The context of a motor.</summary>
    /// <param name="motor">The motor.</param>
    /// <param name="trust">How far its plate is taken at its word.</param>
    /// <param name="rows">What was read on it beside what was surveyed.</param>
    public static MotorContext For(MotorSurvey motor, PlateTrust trust = PlateTrust.WithTolerances, IReadOnlyList<ReadingRow>? rows = null) =>
        new(motor, trust, rows);
}
