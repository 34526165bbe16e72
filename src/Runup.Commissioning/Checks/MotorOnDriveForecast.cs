using Runup.Engineering.Motors.Ensemble;
using Runup.Quantities;

namespace Runup.Commissioning.Checks;

/// <summary>What the motors of an ensemble do on a drive whose voltage follows frequency straight up to the plate's.</summary>
public sealed record MotorOnDriveForecast
{
    private const double LowFrequency_Hz = 5;
    private static readonly double[] LowFrequencies_Hz = [LowFrequency_Hz, 10];
    private static readonly double[] PartsOfRated = [0.5, 1, 1.2];
    private static readonly double[] FieldWeakening = [1.2, 1.5, 2];
    private static readonly double[] BoostParts = [0, 1, 2];

    /// <summary>Current of the uncoupled motor, without boost, over frequency.</summary>
    public required IReadOnlyList<UncoupledForecast> Uncoupled { get; init; }

    /// <summary>Boost to break away against rated torque; null where most of the motors lack that torque at rated flux.</summary>
    public required BoostBand? Boost { get; init; }

    /// <summary>The uncoupled motor at the lowest frequency without that boost, with it and with twice as much.</summary>
    public required IReadOnlyList<UncoupledForecast> WithBoost { get; init; }

    /// <summary>Above rated frequency: breakdown torque over the torque that rated power asks for.</summary>
    public required IReadOnlyList<(ElectricalFrequency Frequency, Band<Ratio> Margin)> Breakdown { get; init; }

    /// <summary>The forecast of an ensemble.</summary>
    public static MotorOnDriveForecast Of(MotorEnsemble ensemble)
    {
        var (line, rated_Hz) = (ensemble.StraightLine, ensemble.Plate.Frequency.Hertz);
        var frequencies = LowFrequencies_Hz.Where(hertz => hertz < rated_Hz / 2).Concat(PartsOfRated.Select(part => part * rated_Hz));
        UncoupledForecast At(double hertz, double boost)
        {
            var frequency = ElectricalFrequency.FromHertz(hertz);
            var characteristic = line with { Boost = Fraction.FromRatio(boost) };
            return new(frequency, characteristic.At(frequency), Fraction.FromRatio(boost), MotorForecast.NoLoadCurrent(ensemble, characteristic, frequency));
        }

        var needed = MotorForecast.Boost(ensemble, line, ensemble.Plate.RatedTorque);
        var low_Hz = Math.Min(LowFrequency_Hz, rated_Hz / 10);
        return new MotorOnDriveForecast
        {
            Uncoupled = [.. frequencies.Select(hertz => At(hertz, 0))],
            Boost = needed,
            WithBoost = needed is null ? [] : [.. BoostParts.Select(part => At(low_Hz, part * needed.Boost.P50.Ratio))],
            Breakdown = [.. FieldWeakening.Select(part => ElectricalFrequency.FromHertz(part * rated_Hz)).Select(frequency =>
                (frequency, MotorForecast.BreakdownMargin(ensemble, line, frequency)))],
        };
    }
}

/// <summary>The current of the uncoupled motor at a frequency.</summary>
/// <param name="Frequency">Output frequency.</param>
/// <param name="Voltage">Output voltage there.</param>
/// <param name="Boost">Boost, of rated voltage.</param>
/// <param name="Current">Its current.</param>
public sealed record UncoupledForecast(ElectricalFrequency Frequency, LineVoltage Voltage, Fraction Boost, Band<LineCurrent> Current);
