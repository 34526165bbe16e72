using Runup.Commissioning.Checks;
using Runup.Commissioning.Rehearsal;
using Runup.Engineering.Drives;
using Runup.Engineering.Loads;
using Runup.Engineering.Motors;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Commissioning.Handover;

/// <summary>Points for the plots of a handover, worked out from the circuit that fits the plate.</summary>
public sealed record HandoverCurves
{
    private const int Points = 61;

    /// <summary>The plate's speed and torque.</summary>
    public required (ShaftSpeed Speed, Torque Torque) Plate { get; init; }

    /// <summary>The plate's frequency and voltage.</summary>
    public required (ElectricalFrequency Frequency, LineVoltage Voltage) PlateSupply { get; init; }

    /// <summary>Motor at rated voltage and frequency, from standstill to synchronous speed.</summary>
    public required IReadOnlyList<(ShaftSpeed Speed, Torque Torque)> OnTheLine { get; init; }

    /// <summary>The largest torque that the shaft gives on this drive, up to the highest frequency.</summary>
    public required IReadOnlyList<(ShaftSpeed Speed, Torque Torque)> AtCurrentLimit { get; init; }

    /// <summary>The current limit that it is worked out with.</summary>
    public required LineCurrent CurrentLimit { get; init; }

    /// <summary>The load at the motor's shaft; none where it is not known.</summary>
    public required IReadOnlyList<(ShaftSpeed Speed, Torque Torque)> Load { get; init; }

    /// <summary>Breakaway torque at the motor's shaft, or null.</summary>
    public Torque? Breakaway { get; init; }

    /// <summary>Output voltage against frequency, up to the highest frequency.</summary>
    public required IReadOnlyList<(ElectricalFrequency Frequency, LineVoltage Voltage)> Voltage { get; init; }

    /// <summary>The characteristic behind it.</summary>
    public required VoltsPerHertz Characteristic { get; init; }

    /// <summary>Highest output frequency.</summary>
    public required ElectricalFrequency Highest { get; init; }

    /// <summary>The curves of a job with the settings that its drive holds; null where the plate gives no circuit.</summary>
    public static HandoverCurves? Of(JobContext context, SettingSet held)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(held);
        if (context.Circuit is not { } circuit || context.Nameplate is not { } plate)
        {
            return null;
        }

        var limit = (held.Number(Setting.CurrentLimit) ?? context.Printed.CurrentLimit.Amperes) / context.MotorCount;
        var highest = held.Number(Setting.MaximumFrequency) ?? context.Job.Operation.MaximumFrequency.Value.Hertz;
        return limit > 0 && highest > 0
            ? Of(circuit, plate, FirstRunPredictions.Characteristic(held, plate), LineCurrent.FromAmperes(limit), ElectricalFrequency.FromHertz(highest), context.Machine.Machine)
            : null;
    }

    /// <summary>The curves of a motor on a drive.</summary>
    /// <param name="circuit">The motor.</param>
    /// <param name="plate">Its plate.</param>
    /// <param name="characteristic">Voltage against frequency.</param>
    /// <param name="currentLimit">Largest output current.</param>
    /// <param name="highest">Highest output frequency.</param>
    /// <param name="machine">The machine, or null where its torque is not known.</param>
    public static HandoverCurves Of(
        EquivalentCircuit circuit, Nameplate plate, VoltsPerHertz characteristic, LineCurrent currentLimit, ElectricalFrequency highest, DrivenMachine? machine)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        ArgumentNullException.ThrowIfNull(plate);
        ArgumentNullException.ThrowIfNull(characteristic);
        var drive = new MotorOnDrive(circuit, characteristic, currentLimit);
        var top = highest.SynchronousSpeed(circuit.Poles).At(Slip.FromRatio(0)).RadiansPerSecond;
        var speeds = Parts().Select(part => ShaftSpeed.FromRadiansPerSecond(top * part)).ToList();
        return new()
        {
            Plate = (plate.Speed, plate.RatedTorque),
            PlateSupply = (plate.Frequency, plate.Voltage),
            OnTheLine = [.. TorqueSpeed.Curve(circuit, plate.Voltage, plate.Frequency, Points).Select(s => (s.Speed, s.ShaftTorque))],
            AtCurrentLimit = [.. speeds.Select(speed => (speed, drive.LargestTorque(speed).Torque))],
            CurrentLimit = currentLimit,
            Load = machine is null ? [] : [.. speeds.Select(speed => (speed, machine.LoadTorque(speed)))],
            Breakaway = machine?.Breakaway is { } b ? Torque.FromNewtonMetres(b.NewtonMetres / machine.GearRatio / machine.GearEfficiency.Ratio) : null,
            Voltage = [.. Parts().Select(part => ElectricalFrequency.FromHertz(highest.Hertz * part)).Select(f => (f, characteristic.At(f)))],
            Characteristic = characteristic,
            Highest = highest,
        };
    }

    private static IEnumerable<double> Parts() => Enumerable.Range(0, Points).Select(i => (double)i / (Points - 1));
}
