using System.Globalization;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;
using Runup.Engineering.Motors.Ensemble;
using Runup.Quantities;

namespace Runup.Cli.Checks;

/// <summary>A winding for both connections, run in delta on the star's voltage, for people.</summary>
internal static class DeltaPage
{
    private static readonly Unit PoundFoot = Torque.Dimension.Units.Single(unit => unit.Symbol == "lb·ft");
    private static readonly Unit Horsepower = ShaftPower.Dimension.Units.Single(unit => unit.Symbol == "hp");

    internal static void Write(Page page, MotorContext motor)
    {
        if (motor.OnStarVoltage is not { } delta)
        {
            return;
        }

        var corner = string.Create(CultureInfo.InvariantCulture, $"{delta.Voltage.Volts:0} V, {delta.Frequency.Hertz:0.#} Hz");
        page.Heading($"Joined in delta and led on rated flux to {corner}");
        page.Table(
            [new($"at {corner}"), new("low", Digits: true), new("middle", Digits: true), new("high", Digits: true), new("unit")],
            [
                Row("torque at rated current", delta.Torque.As(torque => torque.NewtonMetres), "N·m"),
                Row("", delta.Torque.As(torque => PoundFoot.FromSi(torque.NewtonMetres)), "lb·ft"),
                Row("output at rated current", delta.Power.As(power => power.Watts / 1000), "kW"),
                Row("", delta.Power.As(power => Horsepower.FromSi(power.Watts)), "hp"),
                ["speed at rated current", Rpm(delta.Speed.P05), Rpm(delta.Speed.P50), Rpm(delta.Speed.P95), "rpm"],
                Row("current at rated torque", delta.Current.As(current => current.Amperes), "A"),
                Row("breakdown torque", delta.Breakdown.As(ratio => ratio.Value), "times rated"),
            ]);
        page.Line(string.Create(
            CultureInfo.InvariantCulture,
            $"Size the drive by {delta.RatedCurrent.Amperes:G4} A, the delta's current, from a supply of {delta.Voltage.Volts:0} V. Bearings, balance, fan and what is driven must be for the speed, the winding for a drive: ask the maker."));
    }

    private static IReadOnlyList<string> Row(string what, Band<double> band, string unit) =>
        [what, MotorPage.Figure(band.P05), MotorPage.Figure(band.P50), MotorPage.Figure(band.P95), unit];

    private static string Rpm(ShaftSpeed speed) => speed.Rpm.ToString("0", CultureInfo.InvariantCulture);
}
