using System.Globalization;
using Runup.Engineering;

namespace Runup.Commissioning.Checks.Plate;

/// <summary>Every single slip of the pen that is tried on a plate whose figures disagree.</summary>
/// <remarks>The priors are relative and common practice, without a source: units and columns are mixed up more often than a digit is.</remarks>
[Source("common-practice", "how often each slip of the pen is made")]
internal sealed class SlipCandidates(PlateContext context)
{
    private const double Unit = 0.25;
    private const double Thousand = 0.05;
    private const double RootThree = 0.15;
    private const double TwoToOne = 0.06;
    private const double Frequency = 0.12;
    private const double FrequencyAgainstItsColumn = 0.01;
    private const double Poles = 0.10;
    private const double Exchanged = 0.10;
    private const double Point = 0.03;
    private const double AtServiceFactor = 0.05;
    private const double AtUnwrittenServiceFactor = 0.03;
    private const double UsualServiceFactor = 1.15;
    private const double Interchanged = 0.02;
    private const double Misread = 0.02;

    private const string StarAndDelta = "star and delta, or line and phase, taken for one another";
    private const string OtherColumn = "the other of two columns";
    private const string DecimalPoint = "decimal point";

    private static readonly int[] PoleNumbers = [2, 4, 6, 8, 10, 12];

    private readonly PlateFigures figures = context.Figures;
    private readonly PowerWording wording = PowerWording.Of(context.Plate.Output);

    /// <summary>What the columns of a plate, and a decimal point, make of voltage or current.</summary>
    internal static IReadOnlyList<(MagnitudeSlip Kind, double Factor, double Prior, string Words)> Columns { get; } =
    [
        (MagnitudeSlip.RootThreeTooLow, Math.Sqrt(3), RootThree, StarAndDelta),
        (MagnitudeSlip.RootThreeTooHigh, 1 / Math.Sqrt(3), RootThree, StarAndDelta),
        (MagnitudeSlip.Halved, 2, TwoToOne, OtherColumn),
        (MagnitudeSlip.Doubled, 0.5, TwoToOne, OtherColumn),
        (MagnitudeSlip.TenTooMuch, 10, Point, DecimalPoint),
        (MagnitudeSlip.TenTooLittle, 0.1, Point, DecimalPoint),
    ];

    internal IEnumerable<SlipCandidate> All() => [.. OfUnit(), .. OfColumns(), .. new ColumnSlips(context).All(), .. OfSpeed(), .. OfFactors(), .. OfDigits()];

    private IEnumerable<SlipCandidate> OfUnit()
    {
        var number = wording.Number;
        var watts = wording.InHorsepower ? number * 1000 : number * PlateFigures.WattsPerHorsepower;
        var metric = number * PlateFigures.WattsPerMetricHorsepower;
        var what = wording.InHorsepower ? $"the output is {Said.Number(number)} kW"
            : figures.Frequency_Hz < 55 ? $"the output is {Said.Number(number)} hp or PS ({Said.Kilowatts(watts)} or {Said.Kilowatts(metric)})"
            : $"the output is {Said.Number(number)} hp ({Said.Kilowatts(watts)})";
        yield return new(what, figures with { Output_W = watts }, Unit, wording.OtherUnit.Kind);
        yield return new($"the output is {Said.Kilowatts(figures.Output_W / 1000)}", figures with { Output_W = figures.Output_W / 1000 }, Thousand, MagnitudeSlip.ThousandTooMuch);
        yield return new($"the output is {Said.Kilowatts(figures.Output_W * 1000)}", figures with { Output_W = figures.Output_W * 1000 }, Thousand, MagnitudeSlip.ThousandTooLittle);
    }

    private IEnumerable<SlipCandidate> OfColumns()
    {
        foreach (var (kind, factor, prior, words) in Columns)
        {
            var (current, voltage) = (figures.Current_A * factor, UsualVoltages.Nearest(figures.Voltage_V * factor));
            yield return new($"the current is {Said.Number(current)} A ({words})", figures with { Current_A = current }, prior / 2, kind);
            yield return new($"the voltage is {Said.Number(voltage)} V ({words})", figures with { Voltage_V = voltage }, prior / 2, kind);
        }

        foreach (var (serviceFactor, prior) in ServiceFactors())
        {
            var current = figures.Current_A / serviceFactor;
            yield return new(
                $"the current is {Said.Number(current)} A (that at a service factor of {Said.Number(serviceFactor)} was put down)",
                figures with { Current_A = current },
                prior,
                MagnitudeSlip.ServiceFactorCurrent);
        }
    }

    /// <summary>That of the plate; where none was entered and the plate may be one of NEMA's, the usual one.</summary>
    private IEnumerable<(double ServiceFactor, double Prior)> ServiceFactors()
    {
        if (context.Plate.ServiceFactor?.Value.Value is { } printed)
        {
            return printed is > 1.05 and < 2 ? [(printed, AtServiceFactor)] : [];
        }

        return wording.InHorsepower || context.Plate.Standard?.Value == "NEMA" ? [(UsualServiceFactor, AtUnwrittenServiceFactor)] : [];
    }

    private IEnumerable<SlipCandidate> OfSpeed()
    {
        foreach (var frequency in (double[])[50, 60])
        {
            if (Math.Abs(figures.Frequency_Hz - frequency) > 1)
            {
                var prior = new ColumnSlips(context).Contradicts(frequency) ? FrequencyAgainstItsColumn : Frequency;
                yield return new($"the frequency is {Said.Number(frequency)} Hz", figures with { Frequency_Hz = frequency }, prior);
            }
        }

        foreach (var poles in PoleNumbers)
        {
            if (figures.PrintedPoles is { } printed && poles != printed)
            {
                var pairs = poles == 2 * printed ? " (pole pairs put down)" : string.Empty;
                yield return new(FormattableString.Invariant($"the motor has {poles} poles{pairs}"), figures with { PrintedPoles = poles }, Poles / PoleNumbers.Length);
            }
        }

        foreach (var factor in (double[])[10, 0.1])
        {
            yield return new($"the speed is {Said.Number(figures.Speed_rpm * factor, 4)} rpm (decimal point)", figures with { Speed_rpm = figures.Speed_rpm * factor }, Point);
        }
    }

    private IEnumerable<SlipCandidate> OfFactors()
    {
        if (figures is { PowerFactor: { } powerFactor, Efficiency: { } efficiency })
        {
            yield return new(
                $"efficiency and power factor are interchanged: {Said.Percent(powerFactor)} and {Said.Number(efficiency)}",
                figures with { PowerFactor = efficiency, Efficiency = powerFactor },
                Exchanged);
        }
    }

    private IEnumerable<SlipCandidate> OfDigits() =>
    [
        .. Digits(wording.Number, "0.##", value => ($"the output is {Said.Number(value)} {(wording.InHorsepower ? "hp" : "kW")}", figures with { Output_W = figures.Output_W * value / wording.Number })),
        .. Digits(figures.Voltage_V, "0.#", value => ($"the voltage is {Said.Number(value)} V", figures with { Voltage_V = value })),
        .. Digits(figures.Current_A, "0.##", value => ($"the current is {Said.Number(value, 4)} A", figures with { Current_A = value })),
        .. Digits(figures.Speed_rpm, "0.#", value => ($"the speed is {Said.Number(value, 4)} rpm", figures with { Speed_rpm = value })),
        .. Digits(figures.PowerFactor, "0.0##", value => ($"the power factor is {Said.Number(value)}", figures with { PowerFactor = value })),
        .. Digits(figures.Efficiency * 100, "0.##", value => ($"the efficiency is {Said.Percent(value / 100)}", figures with { Efficiency = value / 100 })),
    ];

    private static IEnumerable<SlipCandidate> Digits(double? value, string format, Func<double, (string What, PlateFigures Meant)> undone)
    {
        if (value is not { } number)
        {
            yield break;
        }

        var written = number.ToString(format, CultureInfo.InvariantCulture);
        foreach (var interchanged in DigitSlips.Interchanged(written))
        {
            var (what, meant) = undone(interchanged);
            yield return new($"{what} (two digits interchanged)", meant, Interchanged / written.Length);
        }

        foreach (var (misread, share) in DigitSlips.Misread(written))
        {
            var (what, meant) = undone(misread);
            yield return new($"{what} (one digit)", meant, Misread * share);
        }
    }
}
