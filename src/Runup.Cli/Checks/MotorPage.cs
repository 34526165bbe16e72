using System.Globalization;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;
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
        if (motor.Prediction is { } best && motor.Circuit is { } circuit && motor.Ensemble is { } ensemble)
        {
            AtRated(page, best, MotorBands.Of(ensemble));
            Circuit(page, circuit);
        }
        else
        {
            page.Line("No prediction: no induction motor has this plate, or its kind is another.");
        }

        CheckPage.Findings(page, motor.Report);
    }

    private static void AtRated(Page page, MotorPrediction best, MotorBands bands)
    {
        page.Line("A plate does not determine a motor: of a hundred that fit it, five lie below the low figure, five above the high one.");
        page.Line();
        static IReadOnlyList<string> Row(string what, Band<double> band, double bestFit, string unit) =>
            [what, Text(band.P05), Text(band.P50), Text(band.P95), Text(bestFit), unit];
        page.Table(
            [new("at rated voltage and frequency"), new("low", Digits: true), new("middle", Digits: true), new("high", Digits: true), new("best fit", Digits: true), new("unit")],
            [
                Row("full-load torque", bands.RatedTorque.As(torque => torque.NewtonMetres), best.RatedTorque.NewtonMetres, "N·m"),
                ["", American(bands.RatedTorque.P05), American(bands.RatedTorque.P50), American(bands.RatedTorque.P95), American(best.RatedTorque), ""],
                Row("full-load current", bands.RatedCurrent.As(current => current.Amperes), best.RatedCurrent.Amperes, "A"),
                Row("power factor", bands.RatedPowerFactor.As(factor => factor.Ratio), best.RatedPowerFactor.Ratio, ""),
                Row("efficiency", bands.RatedEfficiency.As(efficiency => efficiency.Ratio * 100), best.RatedEfficiency.Ratio * 100, "%"),
                Row("no-load current", bands.NoLoadCurrent.As(current => current.Amperes), best.NoLoadCurrent.Amperes, "A"),
                Row("locked-rotor current", bands.LockedRotorCurrentRatio.As(ratio => ratio.Value), best.LockedRotorCurrentRatio.Value, "times rated"),
                Row("locked-rotor torque", bands.LockedRotorTorqueRatio.As(ratio => ratio.Value), best.LockedRotorTorqueRatio.Value, "times rated"),
                Row("breakdown torque", bands.BreakdownTorqueRatio.As(ratio => ratio.Value), best.BreakdownTorqueRatio.Value, "times rated"),
            ]);
    }

    private static void Circuit(Page page, EquivalentCircuit c)
    {
        page.Heading("Circuit that fits best, for each phase of the star equivalent, reactances at rated frequency");
        page.Table(
            [new("Rs Ω", Digits: true), new("Xls Ω", Digits: true), new("Xm Ω", Digits: true), new("Xlr Ω", Digits: true), new("Rr Ω", Digits: true), new("core loss Ω", Digits: true), new("friction W", Digits: true), new("stray W", Digits: true)],
            [[Text(c.StatorResistance.Ohms), Text(c.StatorLeakage.Ohms), Text(c.Magnetizing.Ohms), Text(c.RotorLeakage.Ohms), Text(c.RotorResistance.Ohms), c.CoreLoss is { } core ? Text(core.Ohms) : "none", Text(c.FrictionLoss.Watts), Text(c.StrayLoss.Watts)]]);
        if (c.SecondCage is { } second)
        {
            page.Line($"Second cage beside the first: {Text(second.Resistance.Ohms)} Ω, {Text(second.Leakage.Ohms)} Ω.");
        }
    }

    private static string American(Torque torque) => QuantityText.Write(Torque.Dimension, torque.NewtonMetres, UnitSystem.UnitedStates);

    private static string Text(double value) => value.ToString("G4", CultureInfo.InvariantCulture);
}
