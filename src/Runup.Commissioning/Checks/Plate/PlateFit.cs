using Runup.Engineering;

namespace Runup.Commissioning.Checks.Plate;

/// <summary>How well a plate's figures go together, as one likelihood: power balance, usual η and cos φ, usual slip, outputs, voltages and frequencies that are made.</summary>
/// <remarks>
/// Balance: normal in ln(P/(√3·U·I·cos φ·η)), 2.5 % wide. Factors and slip: normal on a logarithmic scale about the middle of the usual band, whose ends lie at 1.5 deviations
/// (slip: about a third of the largest usual slip, by a factor of two). What is not made as a series loses a fixed factor. Common practice, no source.
/// </remarks>
[Source("common-practice", "widths of the likelihood of a plate")]
internal sealed class PlateFit(PlateContext context)
{
    private const double BalanceWidth = 0.025;
    private const double LargestMiss = 0.08;
    private const double EndsAtDeviations = 1.5;
    private const double SmallestSlip = 0.002;
    private const double HighestOfHighSlipDesigns = 0.25;
    private const double UsualPartOfHighestSlip = 0.35;
    private const double OddOutput = 0.1;
    private const double OddVoltage = 0.03;
    private const double RareVoltage = 0.2;
    private const double OddFrequency = 0.03;
    private const double NotTheSupply = 0.1;
    private const double SlackOfBand = 0.05;
    private const double LeastSaid = 0.001;
    private const int MostUsualPoles = 16;

    /// <summary>Logarithm of the likelihood; null where the figures still don't go together.</summary>
    internal double? Of(PlateFigures plate)
    {
        var poles = plate.PrintedPoles is null ? plate.PolesFromSpeed(plate.Frequency_Hz) : plate.BuildablePoles ?? 0;
        if (!plate.AreUsable || poles is < 2 || (plate.PrintedPoles is null && poles > MostUsualPoles))
        {
            return null;
        }

        var slip = plate.SlipAt(plate.Frequency_Hz, poles);
        var isHighSlip = string.Equals(context.Plate.DesignLetter?.Value, "D", StringComparison.OrdinalIgnoreCase);
        var highest = isHighSlip ? HighestOfHighSlipDesigns : UsualMotors.HighestSlip(plate.Output_W);
        return slip < SmallestSlip || slip > highest || plate.Efficiency > 1 - slip
            ? null
            : OfMagnitudes(plate, poles, slip) + Normal(Math.Log(slip / (UsualPartOfHighestSlip * highest)) / Math.Log(2)) + OfSeries(plate);
    }

    /// <summary>Whether the plate as entered holds together: its product fits as printed, and its slip is one that an induction motor can have.</summary>
    internal static bool GoesTogether(PlateContext context)
    {
        var figures = context.Figures;
        return context.Speed is SpeedReading.Fits or SpeedReading.HighSlip
            && !(figures.Efficiency > 1 - context.Speed.FullLoadSlip)
            && figures.PrintedProduct is { } product && Math.Abs((figures.ImpliedProduct / product) - 1) <= PrintedMagnitudes.LargestDisagreement;
    }

    /// <summary>What the figures then come to, in words.</summary>
    internal static string InWords(PlateFigures plate) => plate.PrintedProduct is { } product
        ? $"the figures then agree to {Said.Percent(Math.Max(LeastSaid, Math.Abs((plate.ImpliedProduct / product) - 1)), 1)}"
        : $"η·cos φ is then {Said.Number(plate.ImpliedProduct, 2)}";

    private static double? OfMagnitudes(PlateFigures plate, int poles, double slip)
    {
        var (powerFactor, efficiency) = (UsualMotors.PowerFactor(plate.Output_W, poles), UsualMotors.Efficiency(plate.Output_W, poles, slip));
        return (plate.PowerFactor, plate.Efficiency) switch
        {
            ({ } cos, { } eta) when plate.PrintedProduct is { } product => Math.Abs(Math.Log(plate.ImpliedProduct / product)) > LargestMiss
                ? null
                : Normal(Math.Log(plate.ImpliedProduct / product) / BalanceWidth) + Within(cos, powerFactor) + Within(eta, efficiency),
            ({ } cos, null) => Within(plate.ImpliedProduct / cos, efficiency) + Within(cos, powerFactor),
            (null, { } eta) => Within(plate.ImpliedProduct / eta, powerFactor) + Within(eta, efficiency),
            _ => Within(plate.ImpliedProduct, UsualMotors.Product(plate.Output_W, poles)),
        };
    }

    /// <summary>Place in a band; null beyond its ends and some slack.</summary>
    private static double? Within(double value, (double Low, double High) band)
    {
        if (!(value > band.Low * (1 - SlackOfBand) && value < Math.Min(1, band.High * (1 + SlackOfBand))))
        {
            return null;
        }

        var half = Math.Log(band.High / band.Low) / 2;
        return Normal(EndsAtDeviations * Math.Log(value / Math.Sqrt(band.Low * band.High)) / half);
    }

    private double OfSeries(PlateFigures plate)
    {
        var kW = plate.Output_W / 1000;
        var isMade = UsualMotors.IsKilowattRating(kW) || UsualMotors.IsHorsepowerRating(plate.Output_W / PlateFigures.WattsPerHorsepower);
        var (isVoltage, atThisFrequency) = UsualVoltages.Has(plate.Voltage_V, plate.Frequency_Hz);
        var isFrequency = Math.Abs(plate.Frequency_Hz - 50) < 1 || Math.Abs(plate.Frequency_Hz - 60) < 1;
        var isOfSupply = context.Supply is not { } supply || VoltageMatch.Suits(plate.Voltage_V, supply.Voltage.Value.Volts);
        return Math.Log((isMade ? 1 : OddOutput) * (atThisFrequency ? 1 : isVoltage ? RareVoltage : OddVoltage) * (isFrequency ? 1 : OddFrequency) * (isOfSupply ? 1 : NotTheSupply));
    }

    private static double Normal(double deviations) => -0.5 * deviations * deviations;
}
