using Runup.Engineering;

namespace Runup.Commissioning.Checks.Plate;

/// <summary>Reads a plate on which power factor and efficiency are both printed.</summary>
/// <remarks>r = P/(√3·U·I·cos φ·η) is 1 on a sound plate; each slip of the pen has a factor of its own, and the nearest on a logarithmic scale explains it.</remarks>
[Source("common-practice", "plates that disagree by more than 10 % are read again")]
internal sealed class PrintedMagnitudes(PlateContext context, double printedProduct)
{
    // Practice: plates that disagree by more than 10 % are to be read again; a slip is taken for the cause within 9 % of its factor.
    internal const double LargestDisagreement = 0.10;
    private const double Reach = 0.09;
    private const double ServiceFactorReach = 0.04;

    internal MagnitudeReading Read()
    {
        var ratio = context.Figures.ImpliedProduct / printedProduct;
        if (Math.Abs(ratio - 1) <= Math.Max(LargestDisagreement, Rounding()))
        {
            return new MagnitudeReading.Agree(ratio, Printed: true);
        }

        if (Misread(ratio) is { } misread)
        {
            return misread;
        }

        var nearest = Candidates()
            .Select(candidate => (candidate.Kind, candidate.Factor, Distance: Math.Abs(Math.Log(ratio / candidate.Factor)), candidate.Reach))
            .Where(candidate => candidate.Distance <= candidate.Reach)
            .OrderBy(candidate => candidate.Distance)
            .ToList();
        var basis = new Basis.Physics("P = √3·U·I·cos φ·η");
        return nearest.Count == 0
            ? new MagnitudeReading.Unexplained(ratio, basis)
            : new MagnitudeReading.Slip(nearest[0].Kind, nearest[0].Factor, ratio, basis);
    }

    /// <summary>Whether one of the two factors is unusual as printed, and usual as the others imply it.</summary>
    private MagnitudeReading.Misread? Misread(double ratio)
    {
        var figures = context.Figures;
        var poles = context.Speed.Poles ?? 4;
        var (powerFactor, efficiency) = (UsualMotors.PowerFactor(figures.Output_W, poles), UsualMotors.Efficiency(figures.Output_W, poles, context.Speed.FullLoadSlip));
        var (impliedPowerFactor, impliedEfficiency) = (figures.PowerFactor!.Value * ratio, figures.Efficiency!.Value * ratio);
        var ofPowerFactor = IsOutside(figures.PowerFactor.Value, powerFactor) && !IsOutside(impliedPowerFactor, powerFactor);
        var ofEfficiency = IsOutside(figures.Efficiency.Value, efficiency) && !IsOutside(impliedEfficiency, efficiency);
        return ofPowerFactor == ofEfficiency ? null : new(ofPowerFactor, ofPowerFactor ? impliedPowerFactor : impliedEfficiency, ratio);
    }

    private static bool IsOutside(double value, (double Low, double High) usual) => value < usual.Low || value > usual.High;

    private IEnumerable<(MagnitudeSlip Kind, double Factor, double Reach)> Candidates()
    {
        foreach (var (kind, factor) in MagnitudeSlips.Factors)
        {
            yield return (kind, factor, Reach);
        }

        if (context.Plate.ServiceFactor?.Value.Value is > 1.05 and < 2 and var serviceFactor)
        {
            yield return (MagnitudeSlip.ServiceFactorCurrent, 1 / serviceFactor, ServiceFactorReach);
        }
    }

    private double Rounding()
    {
        var plate = context.Plate;
        var figures = context.Figures;
        return Part(plate.Output.RoundingSi, figures.Output_W) + Part(plate.Voltage.RoundingSi, figures.Voltage_V) + Part(plate.Current.RoundingSi, figures.Current_A)
            + Part(plate.PowerFactor?.RoundingSi, figures.PowerFactor) + Part(plate.Efficiency?.RoundingSi, figures.Efficiency);
    }

    private static double Part(double? halfDigit, double? value) => halfDigit / value is { } part && double.IsFinite(part) ? Math.Abs(part) : 0;
}
