using System.Globalization;
using Runup.Commissioning.Survey;
using Runup.Engineering;
using Runup.Engineering.Motors;
using Runup.Engineering.Motors.Ensemble;
using Runup.Quantities;

namespace Runup.Commissioning.Diagnosis;

/// <summary>What the readings of a motor tell of the motor itself, and which of them tell nothing.</summary>
/// <param name="Used">The readings, each with its error.</param>
/// <param name="Taken">Kinds that need not be asked for again.</param>
/// <param name="NotUsed">Rows that tell nothing of the motor, with the reason.</param>
/// <param name="Assumptions">What was taken because nobody said it.</param>
public sealed record MotorReadings(
    IReadOnlyList<InstrumentReading> Used,
    IReadOnlyCollection<ReadingToTake> Taken,
    IReadOnlyList<string> NotUsed,
    IReadOnlyList<Assumption> Assumptions)
{
    private const double UsualResistanceError = 0.01;
    private const double UsualTuningError = 0.05;

    /// <summary>The readings of a motor: what was surveyed as measured, then the rows of a file.</summary>
    public static MotorReadings Of(MotorSurvey motor, Nameplate plate, IReadOnlyList<ReadingRow> rows)
    {
        var read = new Reader(plate);
        read.Surveyed(motor.Measured);
        read.Rows(rows);
        read.CoastDown([.. rows.Where(IsCoasting)], motor.Inertia);
        return new MotorReadings(read.Used, read.Taken, read.NotUsed, read.Assumptions);
    }

    private static bool IsCoasting(ReadingRow row) => string.Equals(row.State, ReadingRow.Coasting, StringComparison.OrdinalIgnoreCase);

    private sealed class Reader(Nameplate plate)
    {
        private readonly HashSet<ReadingToTake> taken = [];

        internal List<InstrumentReading> Used { get; } = [];

        internal List<string> NotUsed { get; } = [];

        internal List<Assumption> Assumptions { get; } = [];

        internal IReadOnlyCollection<ReadingToTake> Taken => taken;

        internal void Surveyed(MotorMeasurements measured)
        {
            if (measured.WindingResistance is { Value.Ohms: > 0 } winding)
            {
                Add(ReadingToTake.WindingResistance, new InstrumentReading.WindingResistance(winding.Value, measured.WindingTemperature?.Value, Error(winding, UsualResistanceError)));
            }

            if (measured.NoLoadCurrent is { Value.Amperes: > 0 } noLoad)
            {
                Add(ReadingToTake.NoLoadCurrent, new InstrumentReading.NoLoadCurrent(noLoad.Value, plate.Voltage, plate.Frequency, Error(noLoad, ReadingRow.UsualError.Ratio)));
            }

            if (measured.StatorResistance is { Value.Ohms: > 0 } stator)
            {
                // Between two terminals there are two phases of the star equivalent.
                var between = Resistance.FromOhms(2 * stator.Value.Ohms);
                Add(ReadingToTake.WindingResistance, new InstrumentReading.WindingResistance(between, measured.WindingTemperature?.Value, Error(stator, UsualTuningError)));
            }

            if (measured.LeakageInductance is { Value.Henries: > 0 } leakage)
            {
                Add(ReadingToTake.TunedLeakage, new InstrumentReading.TunedLeakage(leakage.Value, Error(leakage, UsualTuningError)));
            }

            if (measured.MagnetizingCurrent is { Value.Amperes: > 0 } magnetizing)
            {
                Add(ReadingToTake.NoLoadCurrent, new InstrumentReading.TunedMagnetizingCurrent(magnetizing.Value, Error(magnetizing, UsualTuningError)));
            }
        }

        internal void Rows(IReadOnlyList<ReadingRow> rows)
        {
            var telling = rows.Where(row => !IsCoasting(row)).ToList();
            var currents = telling.Count(row => WhyNot(row) is null);
            var resistances = telling.Where(row => row.WindingResistance is { Ohms: > 0 }).ToList();
            foreach (var row in resistances)
            {
                Add(ReadingToTake.WindingResistance, new InstrumentReading.WindingResistance(
                    row.WindingResistance!.Value, row.WindingTemperature, Fraction.FromRatio(UsualResistanceError * Math.Sqrt(resistances.Count))));
            }

            foreach (var row in telling.Where(row => row.WindingResistance is null || row.Current is not null))
            {
                if (WhyNot(row) is { } reason)
                {
                    NotUsed.Add(string.Create(CultureInfo.InvariantCulture, $"line {row.Line}: {reason}"));
                    continue;
                }

                Current(row, currents);
            }

            if (currents > 1)
            {
                Assumptions.Add(new("readings of current share the error of their instrument, so that many tell little more than one", $"{currents} readings", Assumption.CommonPractice, false));
            }
        }

        internal void CoastDown(IReadOnlyList<ReadingRow> rows, Datum<Inertia>? inertia)
        {
            if (rows.Count == 0)
            {
                return;
            }

            var points = rows.Where(row => row is { Time: not null, Speed: not null, Coupled: not true }).ToList();
            if (inertia is not { Value.KilogramSquareMetres: > 0 } known || points.Count < 2)
            {
                NotUsed.Add("the coast-down: it needs two rows or more with time and speed, uncoupled, and the rotor's inertia (motor.inertia)");
                return;
            }

            var rated = plate.Speed.RadiansPerSecond;
            var slope = Slope(points.Select(row => (row.Time!.Value.Seconds, Math.Atan(Math.Abs(row.Speed!.Value.RadiansPerSecond) / rated))).ToList());
            if (!(slope < 0))
            {
                NotUsed.Add("the coast-down: the speed does not fall");
                return;
            }

            Used.Add(new InstrumentReading.CoastDown(-slope, known.Value, Fraction.FromRatio(known.Error?.Ratio ?? 0.10)));
        }

        private void Current(ReadingRow row, int sharing)
        {
            var frequency = ElectricalFrequency.FromHertz(Math.Abs(row.Frequency!.Value.Hertz));
            var voltage = row.OutputVoltage ?? StraightLine(frequency);
            var error = Fraction.FromRatio(row.CurrentError.Ratio * Math.Sqrt(sharing));
            if (row.Coupled != true && row.Coupled is not null)
            {
                var isRated = Math.Abs((frequency.Hertz / plate.Frequency.Hertz) - 1) < 0.1;
                Add(isRated ? ReadingToTake.NoLoadCurrent : null, new InstrumentReading.NoLoadCurrent(row.Current!.Value, voltage, frequency, error));
            }
            else if (row.Speed is { } speed)
            {
                var turning = ShaftSpeed.FromRadiansPerSecond(Math.Abs(speed.RadiansPerSecond));
                Add(ReadingToTake.LoadedCurrent, new InstrumentReading.LoadedCurrent(row.Current!.Value, voltage, frequency, turning, error));
            }
            else
            {
                var torque = Torque.FromNewtonMetres(row.Torque!.Value.Ratio * plate.RatedTorque.NewtonMetres);
                Add(null, new InstrumentReading.TorqueCurrent(row.Current!.Value, voltage, frequency, torque, error));
            }
        }

        private static string? WhyNot(ReadingRow row) => row switch
        {
            { Trip: { Length: > 0 } } => "the drive had tripped",
            { Current: null } or { Current.Amperes: 0 } => "no current was read",
            { Frequency: null } or { Frequency.Hertz: 0 } => "a current without its output frequency tells nothing of the motor",
            { Coupled: null, Speed: null, Torque: null } => "it does not say whether the machine was coupled",
            { Coupled: true, Speed: null, Torque: null } => "a current under load needs the speed or the torque beside it",
            _ => null,
        };

        private LineVoltage StraightLine(ElectricalFrequency frequency)
        {
            const string What = "output voltage where none was read: in proportion to frequency up to the plate's, without boost";
            if (Assumptions.TrueForAll(assumption => assumption.What != What))
            {
                Assumptions.Add(new(What, "U = U_N·f/f_N", Assumption.CommonPractice, false));
            }

            return LineVoltage.FromVolts(plate.Voltage.Volts * Math.Min(1, frequency.Hertz / plate.Frequency.Hertz));
        }

        private void Add(ReadingToTake? kind, InstrumentReading reading)
        {
            Used.Add(reading);
            if (kind is { } known)
            {
                taken.Add(known);
            }
        }

        private static Fraction Error<T>(Datum<T> datum, double usual) => Fraction.FromRatio(Math.Max(1e-4, datum.Error?.Ratio ?? usual));

        /// <summary>Least squares.</summary>
        private static double Slope(List<(double Time_s, double Angle)> points)
        {
            var (time, angle) = (points.Average(point => point.Time_s), points.Average(point => point.Angle));
            var spread = points.Sum(point => (point.Time_s - time) * (point.Time_s - time));
            return spread > 0 ? points.Sum(point => (point.Time_s - time) * (point.Angle - angle)) / spread : 0;
        }
    }
}
