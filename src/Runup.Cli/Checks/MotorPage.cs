using System.Globalization;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Diagnosis;
using Runup.Engineering.Motors;
using Runup.Engineering.Motors.Ensemble;
using Runup.Quantities;

namespace Runup.Cli.Checks;

/// <summary>What the plate tells of the motor, for people.</summary>
internal static class MotorPage
{
    internal static void Write(Page page, string? tag, MotorContext motor)
    {
        page.Heading($"{tag ?? "Motor"}: what the plate tells");
        if (motor.Prediction is { } best && motor.Circuit is { } circuit && motor.Known is { } known)
        {
            page.Line("A plate does not determine a motor: of a hundred that fit it, five lie below the low figure, five above the high one.");
            page.Line();
            AtRated(page, best, known);
            MotorReadingsPage.Write(page, known);
            MotorOnDrivePage.Write(page, motor, known.Now);
            Circuit(page, circuit);
        }
        else if (motor.Circuit is { } only)
        {
            page.Line("No bands: hardly any motor has this plate. What may be wrong with it stands below.");
            Circuit(page, only);
        }
        else
        {
            page.Line("No prediction: no induction motor has this plate, or its kind is another.");
        }

        CheckPage.Findings(page, motor.Report);
    }

    private static void AtRated(Page page, MotorPrediction best, KnownMotor known)
    {
        var (now, before) = (MotorBands.Of(known.Now), MotorBands.Of(known.FromPlate));
        IReadOnlyList<string> Row(string what, Func<MotorBands, Band<double>> of, double bestFit, string unit)
        {
            var (band, plate) = (of(now), of(before));
            string[] figures = [what, Figure(band.P05), Figure(band.P50), Figure(band.P95)];
            return known.HasReadings ? [.. figures, Figure(plate.P05), Figure(plate.P95), unit] : [.. figures, Figure(bestFit), unit];
        }

        Column[] columns = [new("at rated voltage and frequency"), new("low", Digits: true), new("middle", Digits: true), new("high", Digits: true)];
        Column[] others = known.HasReadings ? [new("before: low", Digits: true), new("high", Digits: true)] : [new("best fit", Digits: true)];
        page.Table(
            [.. columns, .. others, new("unit")],
            [
                Row("full-load torque", bands => bands.RatedTorque.As(torque => torque.NewtonMetres), best.RatedTorque.NewtonMetres, "N·m"),
                Row("", bands => bands.RatedTorque.As(American), American(best.RatedTorque), "lb·ft"),
                Row("full-load current", bands => bands.RatedCurrent.As(current => current.Amperes), best.RatedCurrent.Amperes, "A"),
                Row("power factor", bands => bands.RatedPowerFactor.As(factor => factor.Ratio), best.RatedPowerFactor.Ratio, ""),
                Row("efficiency", bands => bands.RatedEfficiency.As(efficiency => efficiency.Ratio * 100), best.RatedEfficiency.Ratio * 100, "%"),
                Row("no-load current", bands => bands.NoLoadCurrent.As(current => current.Amperes), best.NoLoadCurrent.Amperes, "A"),
                Row("locked-rotor current", bands => bands.LockedRotorCurrentRatio.As(ratio => ratio.Value), best.LockedRotorCurrentRatio.Value, "times rated"),
                Row("locked-rotor torque", bands => bands.LockedRotorTorqueRatio.As(ratio => ratio.Value), best.LockedRotorTorqueRatio.Value, "times rated"),
                Row("breakdown torque", bands => bands.BreakdownTorqueRatio.As(ratio => ratio.Value), best.BreakdownTorqueRatio.Value, "times rated"),
            ]);
    }

    private static void Circuit(Page page, EquivalentCircuit c)
    {
        page.Heading("Circuit that fits the plate best, for each phase of the star equivalent, reactances at rated frequency");
        page.Table(
            [new("Rs Ω", Digits: true), new("Xls Ω", Digits: true), new("Xm Ω", Digits: true), new("Xlr Ω", Digits: true), new("Rr Ω", Digits: true), new("core loss Ω", Digits: true), new("friction W", Digits: true), new("stray W", Digits: true)],
            [[Digits(c.StatorResistance.Ohms), Digits(c.StatorLeakage.Ohms), Digits(c.Magnetizing.Ohms), Digits(c.RotorLeakage.Ohms), Digits(c.RotorResistance.Ohms), c.CoreLoss is { } core ? Digits(core.Ohms) : "none", Digits(c.FrictionLoss.Watts), Digits(c.StrayLoss.Watts)]]);
        if (c.SecondCage is { } second)
        {
            page.Line($"Second cage beside the first: {Digits(second.Resistance.Ohms)} Ω, {Digits(second.Leakage.Ohms)} Ω.");
        }
    }

    private static readonly Unit PoundFoot = Torque.Dimension.Units.Single(unit => unit.Symbol == "lb·ft");

    private static double American(Torque torque) => PoundFoot.FromSi(torque.NewtonMetres);

    /// <summary>Three digits: a band has no more to say.</summary>
    internal static string Figure(double value) => value.ToString("G3", CultureInfo.InvariantCulture);

    internal static string Digits(double value) => value.ToString("G4", CultureInfo.InvariantCulture);
}
