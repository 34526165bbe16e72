namespace Runup.Commissioning.Checks.Plate;

/// <summary>Reads a plate on which power factor or efficiency or both are missing, against the band of usual motors.</summary>
internal sealed class UsualMagnitudes(PlateContext context)
{
    private const int PolesIfUnknown = 4;

    // An output that nobody makes in the unit written, and everybody in the other, is read in the other when that lies this much nearer to the usual middle.
    private const double ClearlyNearer = 0.1;
    private const double Unlikely = 0.3;

    private readonly PlateFigures figures = context.Figures;
    private readonly int poles = context.Speed.Poles ?? PolesIfUnknown;
    private readonly PowerWording wording = PowerWording.Of(context.Plate.Output);

    internal MagnitudeReading Read()
    {
        var asEntered = Place(1, ofOutput: true);
        var otherUnit = wording.OtherUnit;
        var asOther = Place(1 / otherUnit.Factor, ofOutput: true);
        var inside = asEntered is >= 0 and <= 1;
        if (inside && asOther is >= 0 and <= 1 && wording.IsOnlyMadeInOtherUnit && Distance(asEntered) > Distance(asOther) + ClearlyNearer)
        {
            return Slip(otherUnit.Kind, otherUnit.Factor);
        }

        if (inside)
        {
            return asOther is >= 0 and <= 1 && !wording.IsOnlyMadeInWrittenUnit
                ? new MagnitudeReading.EitherUnit(figures.Output_W / otherUnit.Factor)
                : new MagnitudeReading.Agree(Ratio(), Printed: false);
        }

        var best = MagnitudeSlips.Factors
            .Select(candidate => (candidate.Kind, candidate.Factor, Place: Place(1 / candidate.Factor, candidate.Kind.IsOfOutput())))
            .Where(candidate => candidate.Place is >= 0 and <= 1)
            .OrderBy(candidate => Distance(candidate.Place) + Reluctance(candidate.Kind))
            .ToList();
        return best.Count == 0 ? new MagnitudeReading.Unexplained(Ratio(), BasisOf()) : Slip(best[0].Kind, best[0].Factor);
    }

    private MagnitudeReading.Slip Slip(MagnitudeSlip kind, double factor) => new(kind, factor, Ratio(), BasisOf());

    /// <summary>Place of η·cos φ in the usual band on a logarithmic scale, 0 at its low end, 1 at its high end, after a correction of P/(√3·U·I).</summary>
    private double Place(double correction, bool ofOutput)
    {
        var (low, high) = Band(ofOutput ? figures.Output_W * correction : figures.Output_W);
        return Math.Log(figures.ImpliedProduct * correction / low) / Math.Log(high / low);
    }

    private (double Low, double High) Band(double output_W)
    {
        if (figures.PowerFactor is > 0.2 and <= 1 and var powerFactor)
        {
            var (low, high) = UsualMotors.Efficiency(output_W, poles, context.Speed.FullLoadSlip);
            return (powerFactor * low * 0.98, powerFactor * high * 1.02);
        }

        if (figures.Efficiency is > 0.2 and < 1 and var efficiency)
        {
            var (low, high) = UsualMotors.PowerFactor(output_W, poles);
            return (efficiency * low * 0.97, efficiency * high * 1.03);
        }

        return UsualMotors.Product(output_W, poles);
    }

    private double Ratio()
    {
        var (low, high) = Band(figures.Output_W);
        return figures.ImpliedProduct / Math.Sqrt(low * high);
    }

    /// <summary>Beyond the rotor's own loss it is physics, and not only unusual.</summary>
    private Basis BasisOf()
    {
        var (low, high) = Band(figures.Output_W);
        var slip = Math.Clamp(figures.SlipAt(figures.Frequency_Hz, poles), 0, 1);
        var impliedEfficiency = figures.ImpliedProduct / (figures.PowerFactor is > 0.2 and <= 1 and var powerFactor ? powerFactor : 1);
        var impliedPowerFactor = figures.ImpliedProduct / (figures.Efficiency is > 0.2 and < 1 and var efficiency ? efficiency : 1);
        return impliedEfficiency > 1 - slip || impliedPowerFactor > 1
            ? new Basis.Physics("η = P/(√3·U·I·cos φ) < 1 − s and cos φ ≤ 1")
            : new Basis.CommonPractice(
                $"η·cos φ = P/(√3·U·I) of motors of this output and pole number lies between {Said.Number(low, 2)} and {Said.Number(high, 2)} (efficiencies of IEC 60034-30-1, currents of NEC 430.250, usual power factors)");
    }

    /// <summary>How much less likely a slip is than the writing of one unit for the other.</summary>
    private double Reluctance(MagnitudeSlip kind) => kind switch
    {
        _ when kind == wording.OtherUnit.Kind => wording.IsOnlyMadeInOtherUnit ? 0 : wording.IsOnlyMadeInWrittenUnit ? 2 * Unlikely : Unlikely / 2,
        MagnitudeSlip.HorsepowerAsKilowatts or MagnitudeSlip.KilowattsAsHorsepower => 2 * Unlikely,
        MagnitudeSlip.RootThreeTooHigh or MagnitudeSlip.RootThreeTooLow => Unlikely / 2,
        _ => Unlikely,
    };

    private static double Distance(double place) => Math.Abs(place - 0.5);
}
