using Runup.Engineering.Drives;
using Runup.Quantities;

namespace Runup.Engineering.Motors.Ensemble;

/// <summary>A reading that may be taken next.</summary>
public enum ReadingToTake
{
    /// <summary>Resistance between two terminals, winding at a known temperature; 1 %.</summary>
    WindingResistance,

    /// <summary>Current of the uncoupled motor at rated voltage and frequency; 2 %.</summary>
    NoLoadCurrent,

    /// <summary>Current and speed under some load; 2 %, one turn a minute.</summary>
    LoadedCurrent,

    /// <summary>A drive's tuning at standstill, leakage; 5 %.</summary>
    TunedLeakage,
}

/// <summary>A figure whose band readings narrow.</summary>
public enum NarrowedFigure
{
    /// <summary>Current of the uncoupled motor.</summary>
    NoLoadCurrent,

    /// <summary>Locked-rotor current.</summary>
    LockedRotorCurrent,

    /// <summary>Breakdown torque.</summary>
    BreakdownTorque,

    /// <summary>Boost for rated torque at standstill.</summary>
    BreakawayBoost,
}

/// <summary>The reading that would narrow the bands most, and the band that it would narrow most.</summary>
/// <remarks>
/// Computed, not a rule: each of some members is taken for the true motor in turn, what the instrument would show on it reweights the others, and the half-widths
/// after are held against those before; the geometric mean over members, and over figures, decides.
/// </remarks>
/// <param name="Reading">The reading to take.</param>
/// <param name="Figure">The figure that it tells most about.</param>
/// <param name="Before">Half-width of that figure's band now, (p95 − p05)/(2 p50).</param>
/// <param name="After">What is to be expected after.</param>
public sealed record NextReading(ReadingToTake Reading, NarrowedFigure Figure, double Before, double After)
{
    private const int TrueMotors = 12;
    private const double WorthWhile = 0.9;

    /// <summary>The best of the readings that were not taken yet; null where none narrows any band by a tenth.</summary>
    public static NextReading? Best(MotorEnsemble ensemble, IReadOnlyCollection<ReadingToTake> taken)
    {
        var figures = Figures(ensemble);
        NextReading? best = null;
        var bestGain = Math.Log(WorthWhile);
        foreach (var reading in Enum.GetValues<ReadingToTake>().Except(taken))
        {
            var (gain, narrowed) = Gain(ensemble, figures, reading);
            if (gain < bestGain)
            {
                (best, bestGain) = (narrowed, gain);
            }
        }

        return best;
    }

    private static (double Gain, NextReading Narrowed) Gain(MotorEnsemble ensemble, double[][] figures, ReadingToTake reading)
    {
        var members = ensemble.Members;
        var (on, shown) = (Instrument(ensemble.Plate, reading).On(ensemble.Trust), new (double Figure, double Deviation)[members.Length]);
        for (var index = 0; index < members.Length; index++)
        {
            shown[index] = ensemble.Weights[index] > 0 ? on(members[index]) : default;
        }

        var logs = new double[figures.Length];
        foreach (var truth in ensemble.Systematic(TrueMotors))
        {
            var weights = Reweighted(ensemble, shown, shown[truth].Figure);
            for (var figure = 0; figure < figures.Length; figure++)
            {
                logs[figure] += Math.Log(HalfWidth(figures[figure], weights) / HalfWidth(figures[figure], ensemble.Weights)) / TrueMotors;
            }
        }

        var most = Array.IndexOf(logs, logs.Min());
        var before = HalfWidth(figures[most], ensemble.Weights);
        return (logs.Average(), new NextReading(reading, (NarrowedFigure)most, before, before * Math.Exp(logs[most])));
    }

    private static double[] Reweighted(MotorEnsemble ensemble, (double Figure, double Deviation)[] shown, double truth)
    {
        var logs = new double[shown.Length];
        for (var index = 0; index < logs.Length; index++)
        {
            logs[index] = ensemble.Weights[index] > 0 ? ReadingEvidence.Of(truth, shown[index].Figure, shown[index].Deviation) : double.NegativeInfinity;
        }

        var largest = logs.Max();
        for (var index = 0; index < logs.Length; index++)
        {
            logs[index] = ensemble.Weights[index] * Math.Exp(logs[index] - largest);
        }

        return logs;
    }

    private static double HalfWidth(double[] figure, ReadOnlySpan<double> weights) => Math.Max(1e-6, Ensemble.Band.Of(figure, weights)?.HalfWidth() ?? 1e-6);

    private static InstrumentReading Instrument(Nameplate plate, ReadingToTake reading)
    {
        static Fraction Error(double ratio) => Fraction.FromRatio(ratio);
        var halfSlip = plate.SynchronousSpeed.At(Slip.FromRatio(plate.RatedSlip.Ratio / 2));
        return reading switch
        {
            ReadingToTake.WindingResistance => new InstrumentReading.WindingResistance(default, Temperature.FromCelsius(20), Error(0.01)),
            ReadingToTake.NoLoadCurrent => new InstrumentReading.NoLoadCurrent(default, plate.Voltage, plate.Frequency, Error(0.02)),
            ReadingToTake.LoadedCurrent => new InstrumentReading.LoadedCurrent(default, plate.Voltage, plate.Frequency, halfSlip, Error(0.02)),
            ReadingToTake.TunedLeakage => new InstrumentReading.TunedLeakage(default, Error(0.05)),
            _ => throw new ArgumentOutOfRangeException(nameof(reading), reading, "The set is closed."),
        };
    }

    private static double[][] Figures(MotorEnsemble ensemble)
    {
        var straight = ensemble.StraightLine;
        double Boost(in MotorMember member) =>
            TorqueBoost.For(member.Values, member.Phase_V, straight, member.RatedTorque_Nm)?.Boost ?? double.NaN;
        return
        [
            ensemble.Figures((in MotorMember member) => member.Uncoupled(member.Phase_V, member.Frequency_Hz).Current_A),
            ensemble.Figures((in MotorMember member) => member.LockedRotorCurrent),
            ensemble.Figures((in MotorMember member) => member.BreakdownTorque),
            ensemble.Figures(Boost),
        ];
    }
}
