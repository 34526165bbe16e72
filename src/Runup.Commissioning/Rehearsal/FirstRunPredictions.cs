using Runup.Commissioning.Checks;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Plan;
using Runup.Dynamics;
using Runup.Engineering.Drives;
using Runup.Engineering.Loads;
using Runup.Engineering.Mechanics;
using Runup.Engineering.Motors;
using Runup.Engineering.Motors.Ensemble;
using Runup.Profiles;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Commissioning.Rehearsal;

/// <summary>
/// What the readings of the first run are held against: steady readings from the circuit in the steady state, run-up and stop
/// from the time-domain engine, both with the settings as the drive holds them.
/// </summary>
/// <remarks>
/// The current is accepted from the 5 % to the 95 % point of the motors that the plate may stand for, the circuit that fits it best among them, and 3 % for the
/// display on either side (at least 4 % of rated current around the prediction); where the load drives the motor, 20 %. Common practice, no source: speed 2 %
/// of synchronous speed, voltage 5 % of rated, torque 12 % of rated. The DC bus is accepted between 1.28 and 1.43 times the supply voltage: derived for a six-pulse rectifier
/// from idle to full load.
/// </remarks>
public sealed class FirstRunPredictions : IFirstRunPredictions
{
    private const double DisplayError = 0.03;

    private readonly DriveSystem system;
    private readonly SettingSet held;
    private readonly Nameplate plate;
    private readonly VoltsPerHertz characteristic;

    private readonly int motors;
    private readonly MotorEnsemble? ensemble;

    private FirstRunPredictions(DriveSystem system, SettingSet held, Nameplate plate, int motors, MotorEnsemble? ensemble) =>
        (this.system, this.held, this.plate, this.motors, this.ensemble, characteristic) = (system, held, plate, motors, ensemble, Characteristic(held, plate));

    // Of all motors together, as the drive sees them.
    private double Rated_A => motors * plate.Current.Amperes;

    private double Rated_Nm => motors * plate.RatedTorque.NewtonMetres;

    /// <summary>The predictions for a job; null where motor or load are not known well enough.</summary>
    public static FirstRunPredictions? Of(JobContext context, SettingsPlan plan, DriveProfile profile, DriveSize size) =>
        RehearsalSystem.Of(context) is { } system && context.Nameplate is { } plate
            ? new(system, JobRehearsal.Held(plan, profile, size), plate, context.MotorCount, context.Printed.Known?.Now)
            : null;

    /// <inheritdoc/>
    public Expected Steady(ReadingKind kind, double frequencyHz, Coupling coupling)
    {
        var frequency = ElectricalFrequency.FromHertz(Math.Abs(frequencyHz));
        if (kind == ReadingKind.DcBusVoltage)
        {
            var line = system.SupplyVoltage.Volts;
            return Regenerates(frequencyHz, coupling)
                ? new(null, 1.28 * line, 1.01 * (system.BrakingResistor is null ? system.Drive.OvervoltageControl : system.Drive.ChopperLevel).Volts)
                : new(Solution(frequencyHz, coupling) is { } loaded ? LoadedBus.Of(system, loaded.Input, loaded.Current).Volts : Math.Sqrt(2) * line * 0.97, 1.28 * line, 1.43 * line);
        }

        if (kind == ReadingKind.OutputFrequency)
        {
            return Around(frequencyHz, Math.Max(0.1, 0.01 * frequency.Hertz));
        }

        return Solution(frequencyHz, coupling) is { } at ? Reading(kind, at, frequency, coupling, frequencyHz < 0 ? -1 : 1) : Expected.Nothing;
    }

    /// <inheritdoc/>
    public RampPrediction? Ramp(double frequencyHz, Coupling coupling)
    {
        var machine = MachineOf(coupling);
        if (JobRehearsal.To(JobRehearsal.On(system, machine), held, ElectricalFrequency.FromHertz(Math.Abs(frequencyHz))) is not RehearsalOutcome.Ran { Result: { } result })
        {
            return null;
        }

        var trace = result.Trace;
        var step = Math.Max(1, trace.Count / 400);
        var rated = Rated_Nm;
        return new RampPrediction
        {
            Columns = ["time_s", "output_frequency_Hz", "output_current_A", "dc_bus_V", "output_voltage_V", "speed_rpm", "torque_percent"],
            Rows =
            [
                .. from i in Enumerable.Range(0, trace.Count)
                   where i % step == 0
                   select (IReadOnlyList<double>)[trace.TimeS[i], trace.FrequencyHz[i], trace.CurrentA[i], trace.DcBusV[i], trace.VoltageV[i], trace.SpeedRpm[i], 100 * trace.TorqueNm[i] / rated],
            ],
            PeakCurrent = new(result.PeakCurrentA, null, (1.25 * result.PeakCurrentA) + (0.04 * Rated_A)),
            PeakDcBus = new(result.PeakDcBusV, null, 0.95 * system.Drive.OvervoltageTrip.Volts),
            TimeToSpeed = result.TimeToSpeedS is { } up ? Around(up, (0.1 * up) + 0.5) : Expected.Nothing,
            TimeToStop = result.TimeToStopS is { } down ? Around(down, (0.1 * down) + 0.5) : Expected.Nothing,
        };
    }

    /// <summary>Below zero in reverse, in which a hoist lowers: there its load drives, whereas friction opposes either way.</summary>
    private CircuitSolution? Solution(double frequencyHz, Coupling coupling)
    {
        var machine = MachineOf(coupling);
        var driven = frequencyHz < 0 && machine.Load is LoadCurve.Hoisting ? machine.Reversed : machine;
        return SteadySpeed.At(driven, system.Motor, characteristic, ElectricalFrequency.FromHertz(Math.Abs(frequencyHz)));
    }

    private bool Regenerates(double frequencyHz, Coupling coupling) => Solution(frequencyHz, coupling) is { AirGapPower.Watts: < 0 };

    private DrivenMachine MachineOf(Coupling coupling) => coupling == Coupling.Coupled ? system.Machine : RehearsalSystem.Uncoupled(system.Machine);

    private Expected Reading(ReadingKind kind, CircuitSolution at, ElectricalFrequency frequency, Coupling coupling, int sign)
    {
        switch (kind)
        {
            case ReadingKind.OutputCurrent:
                return Current(at, frequency);
            case ReadingKind.OutputVoltage:
                return OfMagnitude(Around(characteristic.At(frequency).Volts, 0.05 * plate.Voltage.Volts));
            case ReadingKind.Speed:
                return Around(sign * at.Speed.Rpm, 0.02 * plate.SynchronousSpeed.Rpm);
            case ReadingKind.Torque:
                return Around(sign * 100 * at.DevelopedTorque.NewtonMetres / Rated_Nm, 12);
            default:
                return Expected.Nothing;
        }
    }

    private Expected Current(CircuitSolution at, ElectricalFrequency frequency)
    {
        var (expected, margin) = (at.Current.Amperes, 0.04 * Rated_A);
        var torque_Nm = at.ShaftTorque.NewtonMetres / motors;
        if (ensemble is null || torque_Nm < -1e-6 * plate.RatedTorque.NewtonMetres)
        {
            return OfMagnitude(Around(expected, Math.Max(0.20 * expected, margin)));
        }

        var band = MotorForecast.Current(ensemble, characteristic.At(frequency), frequency, Torque.FromNewtonMetres(Math.Max(0, torque_Nm)));
        var (low, high) = (Math.Min(motors * band.P05.Amperes, expected), Math.Max(motors * band.P95.Amperes, expected));
        return OfMagnitude(new(expected, Math.Min(expected - margin, (1 - DisplayError) * low), Math.Max(expected + margin, (1 + DisplayError) * high)));
    }

    private static Expected Around(double value, double margin) => new(value, value - margin, value + margin);

    // What can't be negative has no lowest value below zero.
    private static Expected OfMagnitude(Expected band) => band.Low is <= 0 ? band with { Low = null } : band;

    internal static VoltsPerHertz Characteristic(SettingSet held, Nameplate plate) => new()
    {
        BaseFrequency = ElectricalFrequency.FromHertz(held.Number(Setting.BaseFrequency) ?? plate.Frequency.Hertz),
        MaximumVoltage = LineVoltage.FromVolts(held.Number(Setting.MaximumOutputVoltage) ?? plate.Voltage.Volts),
        RatedVoltage = LineVoltage.FromVolts(held.Number(Setting.MotorRatedVoltage) ?? plate.Voltage.Volts),
        Boost = Fraction.FromRatio(held.Number(Setting.TorqueBoost) ?? 0),
        Shape = string.Equals(held.Choice(Setting.VfCharacteristic), "quadratic", StringComparison.Ordinal) ? VoltageShape.Quadratic : VoltageShape.Linear,
    };
}
