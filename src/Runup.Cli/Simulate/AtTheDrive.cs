using System.Globalization;
using Runup.Commissioning.Rehearsal;
using Runup.Dynamics;
using Runup.Settings;
using Runup.SimulatedDrive;

namespace Runup.Cli.Simulate;

/// <summary>What a person does at the simulated drive's terminals and at the coupling, and has it measure.</summary>
internal static class AtTheDrive
{
    /// <summary>What it does and shows now.</summary>
    internal static string Status(VirtualDrive drive)
    {
        var now = drive.Now;
        var does = now.State switch
        {
            DriveState.Tripped => $"tripped by {now.Trip.Name()}",
            DriveState.Unpowered => "without power",
            DriveState.Stopped => "stopped",
            DriveState.Running => "running",
            DriveState.Stopping => "stopping",
            DriveState.QuickStopping => "stopping quickly",
            _ => throw new InvalidOperationException("The set of states is closed."),
        };
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{does}: {now.OutputFrequencyHz:0.00} Hz, {now.OutputCurrentA:0.00} A, DC bus {now.DcBusV:0} V, shaft {now.SpeedRpm:0} rpm");
    }

    internal static string Input(VirtualDrive drive, string number, bool voltage) =>
        int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var input)
            ? TypedLines.Said(drive.PutInput(input, voltage), $"input {input} is {(voltage ? "on" : "off")}")
            : $"'{number}' is no input; a number such as input 3 on would do";

    internal static string Couple(ServedDrive served, bool coupled)
    {
        var machine = RehearsalSystem.Of(served.Job.Context)!.Machine;
        return TypedLines.Said(
            served.Host.Drive.CoupleAtRest(coupled ? machine : RehearsalSystem.Uncoupled(machine)),
            coupled ? "the machine is on the motor's shaft" : "the motor turns alone");
    }

    internal static string Tune(VirtualDrive drive, AutoTune kind) => TypedLines.Said(
        drive.TuneAtPanel(kind), kind == AutoTune.Stationary ? "it measures its motor, which stays at rest; some twenty seconds of its time" : "it measures its motor, at rest and then turning; the machine should be uncoupled");

    /// <summary>What it found, as motor.measured of a job file takes it.</summary>
    internal static string Tuned(ServedDrive served) => served.Host.Drive switch
    {
        { IsTuning: true } => "it is still measuring",
        { Tuned: null } => "it has not measured its motor",
        { Tuned: AutoTuneOutcome.Failed failed } => $"it found nothing: {failed.Why}",
        { Tuned: AutoTuneOutcome.Done { Motor: var motor } } => Words(motor, served),
        _ => throw new InvalidOperationException("The set of outcomes is closed."),
    };

    private static string Words(TunedMotor motor, ServedDrive served)
    {
        var plate = served.Job.Context.Printed.Nameplate!;
        var magnetizing_A = plate.Voltage.Phase.Volts / (motor.Leakage.Ohms + motor.Magnetizing.Ohms);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"found, as motor.measured of the job takes it: stator-resistance: {motor.StatorResistance.Ohms:0.###} ohm, leakage-inductance: {1000 * motor.Leakage.Ohms / plate.Frequency.RadiansPerSecond:0.##} mH, magnetizing-current: {magnetizing_A:0.##} A");
    }
}
