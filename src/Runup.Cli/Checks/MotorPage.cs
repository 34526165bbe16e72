using System.Globalization;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;

namespace Runup.Cli.Checks;

/// <summary>What the plate tells of the motor, for people.</summary>
internal static class MotorPage
{
    internal static void Write(Page page, string? tag, MotorContext motor)
    {
        page.Heading($"{tag ?? "Motor"}: what the plate tells");
        if (motor.Prediction is { } p && motor.Circuit is { } c)
        {
            page.Table(
                [new("at rated voltage and frequency"), new("best fit", Digits: true), new("unit")],
                [
                    ["full-load slip", Text(p.RatedSlip.Ratio * 100), "%"],
                    ["full-load torque", Text(p.RatedTorque.NewtonMetres), "N·m"],
                    ["full-load current", Text(p.RatedCurrent.Amperes), "A"],
                    ["power factor", Text(p.RatedPowerFactor.Ratio), ""],
                    ["efficiency", Text(p.RatedEfficiency.Ratio * 100), "%"],
                    ["no-load current", Text(p.NoLoadCurrent.Amperes), "A"],
                    ["locked-rotor current", Text(p.LockedRotorCurrentRatio.Value), "times rated"],
                    ["locked-rotor torque", Text(p.LockedRotorTorqueRatio.Value), "times rated"],
                    ["breakdown torque", Text(p.BreakdownTorqueRatio.Value), "times rated"],
                ]);
            page.Heading("Circuit, for each phase of the star equivalent, reactances at rated frequency");
            page.Table(
                [new("Rs Ω", Digits: true), new("Xls Ω", Digits: true), new("Xm Ω", Digits: true), new("Xlr Ω", Digits: true), new("Rr Ω", Digits: true), new("core loss Ω", Digits: true), new("friction W", Digits: true), new("stray W", Digits: true)],
                [[Text(c.StatorResistance.Ohms), Text(c.StatorLeakage.Ohms), Text(c.Magnetizing.Ohms), Text(c.RotorLeakage.Ohms), Text(c.RotorResistance.Ohms), c.CoreLoss is { } core ? Text(core.Ohms) : "none", Text(c.FrictionLoss.Watts), Text(c.StrayLoss.Watts)]]);
            page.Line();
            page.Line("One motor that fits the plate; a plate does not determine a motor, and bands come later.");
        }
        else
        {
            page.Line("No prediction: no induction motor has this plate, or its kind is another.");
        }

        CheckPage.Findings(page, motor.Report);
    }

    private static string Text(double value) => value.ToString("G4", CultureInfo.InvariantCulture);
}
