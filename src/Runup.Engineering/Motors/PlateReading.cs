using System.Globalization;
using Runup.Engineering.Standards;
using Runup.Quantities;

namespace Runup.Engineering.Motors;

/// <summary>One way to read power factor and efficiency off a plate, with what it takes for granted and what it gives up.</summary>
internal sealed record PlateReading(RatedPoint Point, IReadOnlyList<Assumption> Assumptions, IReadOnlyList<GivenUp> GaveUp)
{
    // Stator copper, core, friction and stray take at least this share of the input beside the rotor copper; no power factor above this is a loaded motor's.
    private const double SmallestLossShare = 0.002;
    private const double LargestPowerFactor = 0.995;
    private const string DefaultClass = "IE2";
    private const double DefaultEfficiency = 0.85;

    /// <summary>
    /// The readings in order of preference. Output, voltage, current and speed are kept, so that η·cos φ = P/(√3 U I) holds in each;
    /// first the printed power factor is kept, then the printed efficiency, then a typical efficiency, then whatever is possible at all.
    /// </summary>
    internal static IEnumerable<PlateReading> Candidates(Nameplate plate)
    {
        var product = PlateBalance.ImpliedProduct(plate);
        var printedPowerFactor = plate.PowerFactor?.Ratio;
        var printedEfficiency = plate.Efficiency?.Ratio;
        var efficiencies = new List<(double Efficiency, Assumption? Assumption)>();
        if (printedPowerFactor is { } powerFactor)
        {
            efficiencies.Add((product / powerFactor, printedEfficiency is null ? FromProduct("efficiency", product / powerFactor) : null));
        }

        if (printedEfficiency is { } printed)
        {
            efficiencies.Add((printed, printedPowerFactor is null ? FromProduct("power factor", product / printed) : null));
        }

        efficiencies.Add(Typical(plate));
        var whateverIsPossible = Math.Sqrt(product * HighestEfficiency(plate));
        efficiencies.Add((whateverIsPossible, new Assumption(
            "efficiency (midway between what the current and what the slip allow)", Percent(whateverIsPossible), Assumption.CommonPractice, false)));
        return efficiencies
            .Where(candidate => candidate.Efficiency < HighestEfficiency(plate) && product / candidate.Efficiency < LargestPowerFactor)
            .Select(candidate => Read(plate, candidate.Efficiency, product / candidate.Efficiency, candidate.Assumption));
    }

    private static PlateReading Read(Nameplate plate, double efficiency, double powerFactor, Assumption? assumption)
    {
        var consistent = PlateBalance.Of(plate) is PlateBalance.Consistent;
        var gaveUp = new List<GivenUp>();
        if (plate.Efficiency?.Ratio is { } printedEfficiency && printedEfficiency != efficiency && !consistent)
        {
            gaveUp.Add(new GivenUp(PlateDatum.Efficiency, printedEfficiency, efficiency, "output, voltage and current leave no room for it beside the power factor"));
        }

        if (plate.PowerFactor?.Ratio is { } printedPowerFactor && Math.Abs(printedPowerFactor - powerFactor) > 1e-12 * powerFactor)
        {
            gaveUp.Add(new GivenUp(PlateDatum.PowerFactor, printedPowerFactor, powerFactor, "with it, output, voltage and current would ask for an efficiency that the slip forbids"));
        }

        var point = new RatedPoint
        {
            Output_W = plate.Output.Watts,
            Phase_V = plate.Voltage.Phase.Volts,
            Current_A = plate.Current.Amperes,
            Frequency_Hz = plate.Frequency.Hertz,
            PolePairs = plate.Poles.Pairs,
            Slip = plate.RatedSlip.Ratio,
            PowerFactor = powerFactor,
            Efficiency = efficiency,
        };
        return new PlateReading(point, assumption is null ? [] : [assumption], gaveUp);
    }

    /// <summary>The rotor copper alone leaves 1 − s.</summary>
    private static double HighestEfficiency(Nameplate plate) => (1 - plate.RatedSlip.Ratio) * (1 - SmallestLossShare);

    private static (double, Assumption?) Typical(Nameplate plate)
    {
        var isAmerican = plate.EfficiencyClass is null && plate.Frequency.Hertz == 60;
        var className = plate.EfficiencyClass ?? (isAmerican ? EfficiencyClass.EnergyEfficient : DefaultClass);
        var what = plate.EfficiencyClass is null
            ? $"efficiency (no class printed: {(isAmerican ? "energy efficient" : className)})"
            : $"efficiency (class {plate.EfficiencyClass})";
        if (EfficiencyClass.Nominal(className, plate.Output, plate.Poles, plate.Frequency) is { } nominal)
        {
            return (nominal.Value.Ratio, new Assumption(what, Percent(nominal.Value.Ratio), nominal.Source, nominal.FromMemory));
        }

        className = isAmerican ? DefaultClass : className;
        return EfficiencyClass.Nominal(className, plate.Output, plate.Poles, ElectricalFrequency.FromHertz(50)) is { } at50
            ? (at50.Value.Ratio, new Assumption($"{what}, 50 Hz table for want of another", Percent(at50.Value.Ratio), at50.Source, at50.FromMemory))
            : (DefaultEfficiency, new Assumption("efficiency (no class table for this motor)", Percent(DefaultEfficiency), Assumption.CommonPractice, false));
    }

    private static Assumption FromProduct(string what, double value) => new(
        $"{what} (from output, voltage, current and the other of the two)",
        string.Create(CultureInfo.InvariantCulture, $"{value:F3}"),
        "P / (√3 U I) = η cos φ",
        false);

    private static string Percent(double ratio) => string.Create(CultureInfo.InvariantCulture, $"{ratio * 100:F1} %");
}
