using Runup.Commissioning.Plan;
using Runup.Files;
using Runup.Files.Profiles;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Reports.Tests.Example;

/// <summary>The invented make Tern with a plan of settings for the pump.</summary>
internal static class ExampleDrive
{
    public static DriveProfile Tern { get; } = Read();

    public static DriveSize Size { get; } = Tern.FindSize("7.5-400")!;

    public static SettingsPlan Plan { get; } = new(
    [
        new(Setting.MotorRatedPower, N(7500), Rank.Must, "Plate: 7.5 kW in delta.", "job file, motor.plate.output"),
        new(Setting.MotorRatedVoltage, N(400), Rank.Must, "Plate: 400 V in delta.", "job file, motor.plate.voltage"),
        new(Setting.MotorRatedCurrent, N(14.4), Rank.Must, "Plate: 14.4 A in delta.", "job file, motor.plate.current"),
        new(Setting.MotorRatedSpeed, N(1460 * Math.PI / 30), Rank.Must, "Plate: full-load speed, not the synchronous one.", "job file, motor.plate.speed"),
        new(Setting.BaseFrequency, N(50), Rank.Must, "Full voltage at the plate's frequency: 400 V / 50 Hz = 8 V/Hz.", "job file, motor.plate.frequency"),
        new(Setting.MaximumFrequency, N(50), Rank.Must, "As the job asks; the pump's largest speed of 1800 rpm is not reached.", "job file, operation.maximum-frequency"),
        new(Setting.MinimumFrequency, N(20), Rank.Should, "As the job asks, so that the pump lifts the non-return valve.", "job file, operation.minimum-frequency"),
        new(Setting.VfCharacteristic, new SettingValue.Choice("quadratic"), Rank.May, "Torque falls with the square of speed: less voltage below, less loss and noise.", "common practice, no source"),
        new(Setting.AccelerationTime, N(8), Rank.Should, "8 s asked for. Shortest at the current limit: t = J·ω/(T_max − T_load) = 0.155 · 152.9 / (63.1 − 18.7) = 0.53 s.", "job file, operation.acceleration; equation of motion", 0.53, null),
        new(Setting.DecelerationTime, N(12), Rank.Should, "12 s asked for, slow for the non-return valve. The losses take the energy at 3.1 s without a resistor.", "job file, operation.deceleration", 3.1, null),
        new(Setting.CurrentLimit, N(18.7), Rank.Must, "Least of 130 % of the motor's current and 110 % of the drive's 17 A.", "drive profile, overload cycle normal", 14.4, 18.7),
        new(Setting.OverloadTripClass, new SettingValue.Choice("10"), Rank.Should, "Pump: starts light.", "IEC 60947-4-1 (from memory)"),
        new(Setting.RunCommandSource, new SettingValue.Choice("bus"), Rank.Must, "As the job asks.", "job file, control.run-from"),
        new(Setting.PermittedDirection, new SettingValue.Choice("forward"), Rank.Must, "The pump must not turn backwards.", "job file, operation.directions"),
        new(Setting.FrequencyReferenceSource, new SettingValue.Choice("bus"), Rank.Must, "As the job asks.", "job file, control.reference-from"),
        new(Setting.BusTimeout, N(2), Rank.Must, "As the job asks: the control system is silent no longer than 0.5 s.", "job file, bus.time-out"),
        new(Setting.BusLossAction, new SettingValue.Choice("ramp"), Rank.Must, "A pump is stopped on its ramp, for the valve.", "job file, bus.on-loss"),
        new(Setting.RestartAfterPowerLoss, new SettingValue.Choice("off"), Rank.Must, "As the job asks.", "job file, operation.restart-after-power-loss"),
    ]);

    public static IReadOnlyList<SheetLine> Sheet { get; } = Profiles.Sheet.For(Tern, Size, Plan.Values, ParameterValues.Defaults(Tern, Size));

    /// <summary>The top of the repository.</summary>
    public static string Root
    {
        get
        {
            var root = AppContext.BaseDirectory;
            while (!File.Exists(Path.Combine(root, "Runup.slnx")))
            {
                root = Path.GetDirectoryName(root)!;
            }

            return root;
        }
    }

    private static SettingValue.Number N(double si) => new(si);

    private static DriveProfile Read()
    {
        var file = Path.Combine(Root, "data", "drives", "tern.drive.yaml");
        var problems = new Problems(file);
        return ProfileReader.ReadFile(file, problems) ?? throw new InvalidOperationException("The profile of the make Tern has problems.");
    }
}
