using System.Globalization;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;
using Runup.Engineering.Motors.Ensemble;
using Runup.Engineering.Standards;

namespace Runup.Cli.Checks;

/// <summary>What the motor should show on a drive, for people.</summary>
internal static class MotorOnDrivePage
{
    private static readonly double[] Overloads = [1.5, 2, 6];

    internal static void Write(Page page, MotorContext motor, MotorEnsemble ensemble)
    {
        var forecast = MotorOnDriveForecast.Of(ensemble);
        var rated_A = ensemble.Plate.Current.Amperes;
        page.Heading("On a drive, uncoupled, voltage in proportion to frequency, no boost");
        page.Table(
            [new("Hz", Digits: true), new("V", Digits: true), new("low A", Digits: true), new("middle A", Digits: true), new("high A", Digits: true), new("middle, of rated", Digits: true)],
            forecast.Uncoupled.Select(at => Row(at, rated_A)));
        Boost(page, forecast, rated_A);
        page.Heading("Above rated frequency, at rated voltage");
        page.Table(
            [new("Hz", Digits: true), new("breakdown torque over what rated power asks for: low", Digits: true), new("middle", Digits: true), new("high", Digits: true)],
            forecast.Breakdown.Select(at => (IReadOnlyList<string>)[MotorPage.Digits(at.Frequency.Hertz), MotorPage.Figure(at.Margin.P05.Value), MotorPage.Figure(at.Margin.P50.Value), MotorPage.Figure(at.Margin.P95.Value)]));
        DeltaPage.Write(page, motor);
        page.Line();
        foreach (var line in Rules(motor, ensemble))
        {
            page.Line(line);
        }
    }

    private static void Boost(Page page, MotorOnDriveForecast forecast, double rated_A)
    {
        page.Line();
        if (forecast.Boost is not { } needed)
        {
            page.Line("Most motors with this plate lack rated torque at standstill with rated flux; no boost gives it.");
            return;
        }

        page.Line(string.Create(
            CultureInfo.InvariantCulture,
            $"To break away against full-load torque: a boost of {needed.Boost.P05.Percent:0.0} to {needed.Boost.P95.Percent:0.0} % of rated voltage (middle {needed.Boost.P50.Percent:0.0} %); the drive then gives {needed.Current.P05.Amperes:G3} to {needed.Current.P95.Amperes:G3} A."));
        page.Heading("What boost does to the uncoupled motor at a low frequency");
        page.Table(
            [new("boost %", Digits: true), new("Hz", Digits: true), new("V", Digits: true), new("low A", Digits: true), new("middle A", Digits: true), new("high A", Digits: true), new("middle, of rated", Digits: true)],
            forecast.WithBoost.Select(at => (IReadOnlyList<string>)[at.Boost.Percent.ToString("0.0", CultureInfo.InvariantCulture), .. Row(at, rated_A)]));
        page.Line("A current that rises while frequency falls, uncoupled, means more boost than the motor needs; with too little it will not break away.");
    }

    private static IEnumerable<string> Rules(MotorContext motor, MotorEnsemble ensemble)
    {
        if (motor.Plate.Plate.ServiceFactor?.Value.Value is > 1 and var service)
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"Service factor {service:0.##}: meant for sine-wave supply. On a drive count on the plate's output and {ensemble.Plate.Current.Amperes:G4} A (NEMA MG 1, from memory).");
        }

        if (TripClass.Of("10") is { } ten)
        {
            var times = string.Join(", ", Overloads.Select(over => string.Create(CultureInfo.InvariantCulture, $"{ten.TripTime(over).Seconds:0} s at {over:0.#} times rated current")));
            yield return $"Overload protection of class 10, cold, by the plain I²t law: trips after {times}.";
        }

        yield return motor.Plate.Motor.ContinuousTorque is null
            ? "Continuous torque at low speed: undecided without the maker's curve (motor.continuous-torque)."
            : "Continuous torque at low speed: by the maker's curve in the job.";
    }

    private static IReadOnlyList<string> Row(UncoupledForecast at, double rated_A) =>
    [
        MotorPage.Digits(at.Frequency.Hertz), MotorPage.Figure(at.Voltage.Volts), MotorPage.Figure(at.Current.P05.Amperes), MotorPage.Figure(at.Current.P50.Amperes),
        MotorPage.Figure(at.Current.P95.Amperes), string.Create(CultureInfo.InvariantCulture, $"{100 * at.Current.P50.Amperes / rated_A:0} %"),
    ];
}
