using Runup.Engineering.Numerics;

namespace Runup.Engineering.Motors.Ensemble;

/// <summary>The rated points that a plate allows: what is printed within its rounding, what is not within a band, all off by tolerances where these count.</summary>
internal sealed class PlateBeliefs
{
    // An efficiency that nobody printed: losses by the class are declared minima, an unknown class spreads over IE1 to IE4.
    private const double LossSpreadOfClass = 0.12;
    private const double LossSpreadUnknown = 0.25;
    private const double SmallestSlip = 1e-5;
    private const double LargestPowerFactor = 0.9995;

    private readonly RatedPoint nominal;
    private readonly PlateTolerance tolerance;
    private readonly double slipRounding;
    private readonly double currentRounding;
    private readonly double powerFactorRounding;
    private readonly double efficiencyRounding;
    private readonly double? printedPowerFactor;
    private readonly double? printedEfficiency;
    private readonly double lossSpread;

    internal PlateBeliefs(Nameplate plate, PlateReading reading, PlateTrust trust)
    {
        nominal = reading.Point;
        tolerance = PlateTolerance.For(nominal.Output_W, nominal.PowerFactor, trust);
        printedPowerFactor = GaveUp(reading, PlateDatum.PowerFactor) ? null : plate.PowerFactor?.Ratio;
        printedEfficiency = GaveUp(reading, PlateDatum.Efficiency) ? null : plate.Efficiency?.Ratio;
        lossSpread = plate.EfficiencyClass is null ? LossSpreadUnknown : LossSpreadOfClass;
        slipRounding = Usable(plate.Rounding.SpeedRadiansPerSecond / plate.SynchronousSpeed.RadiansPerSecond);
        currentRounding = Usable(plate.Rounding.CurrentAmperes / nominal.Current_A);
        powerFactorRounding = Usable(plate.Rounding.PowerFactor / nominal.PowerFactor);
        efficiencyRounding = Usable(plate.Rounding.Efficiency / nominal.Efficiency);
    }

    internal RatedPoint Nominal => nominal;

    /// <summary>A rated point from places between 0 and 1; false where they ask for one that no motor has.</summary>
    internal bool TryPoint(ReadOnlySpan<double> places, out RatedPoint point)
    {
        var (powerFactor, efficiency) = Declared(places);
        powerFactor += Spread(places[Place.PowerFactorTolerance]) * tolerance.PowerFactor / 2;
        efficiency = 1 - ((1 - efficiency) * Math.Exp(Spread(places[Place.EfficiencyTolerance]) * tolerance.Losses / 2));
        var slip = (nominal.Slip + (Both(places[Place.SpeedRounding]) * slipRounding)) * (1 + (Spread(places[Place.SlipTolerance]) * tolerance.Slip / 2));
        point = nominal with
        {
            Slip = slip,
            PowerFactor = powerFactor,
            Efficiency = efficiency,
            Current_A = nominal.Output_W / (3 * nominal.Phase_V * powerFactor * efficiency),
        };
        return slip > SmallestSlip && powerFactor is > 0.05 and < LargestPowerFactor && efficiency > 0.02 && efficiency < 1 - slip;
    }

    /// <summary>Power factor and efficiency as the maker means them: the rounding of current, power factor and efficiency, brought to agree with one another.</summary>
    private (double PowerFactor, double Efficiency) Declared(ReadOnlySpan<double> places)
    {
        var product = nominal.PowerFactor * nominal.Efficiency * Math.Exp(-Both(places[Place.CurrentRounding]) * currentRounding);
        if ((printedPowerFactor, printedEfficiency) is ({ } powerFactor, { } efficiency))
        {
            // What is left over is shared by how coarsely each is printed, as for normal errors.
            var (p, e) = (powerFactor * (1 + (Both(places[Place.PowerFactorRounding]) * powerFactorRounding)), efficiency * (1 + (Both(places[Place.Efficiency]) * efficiencyRounding)));
            var (pWeight, eWeight) = (powerFactorRounding * powerFactorRounding, efficiencyRounding * efficiencyRounding);
            var all = pWeight + eWeight + (currentRounding * currentRounding);
            var excess = Math.Log(p * e / product);
            return all > 0
                ? (p * Math.Exp(-excess * pWeight / all), e * Math.Exp(-excess * eWeight / all))
                : (nominal.PowerFactor, nominal.Efficiency);
        }

        if (printedPowerFactor is { } only)
        {
            var p = only * (1 + (Both(places[Place.PowerFactorRounding]) * powerFactorRounding));
            return (p, product / p);
        }

        var e2 = printedEfficiency is { } printed
            ? printed * (1 + (Both(places[Place.Efficiency]) * efficiencyRounding))
            : 1 - ((1 - nominal.Efficiency) * Math.Exp(Spread(places[Place.Efficiency]) * lossSpread));
        return (product / e2, e2);
    }

    private static bool GaveUp(PlateReading reading, PlateDatum datum) => reading.GaveUp.Any(gave => gave.Datum == datum);

    private static double Usable(double rounding) => double.IsFinite(rounding) ? Math.Clamp(Math.Abs(rounding), 0, 0.2) : 0;

    private static double Both(double place) => (2 * place) - 1;

    private static double Spread(double place) => Gaussian.Quantile(place);
}
