using Runup.Dynamics;
using Runup.Engineering.Loads;
using Runup.Engineering.Motors;
using Runup.Files;
using Runup.Files.Profiles;
using Runup.Modbus;
using Runup.Modbus.Serving;
using Runup.Profiles;
using Runup.Quantities;

namespace Runup.SimulatedDrive.Tests;

/// <summary>A 7.5 kW pump set on an invented drive; invented data.</summary>
internal static class Bench
{
    internal const ushort Command = 1000;
    internal const ushort Reference = 1001;
    internal const ushort Status = 1002;
    internal const ushort OutputFrequency = 1003;
    internal const ushort LastTrip = 1010;

    internal static DriveProfile Tern { get; } = Read("tern");

    internal static DriveProfile Osprey { get; } = Read("osprey");

    internal static VirtualDrive Drive() => Drive(Tern, "7.5-400", Plate, Pump, 400);

    internal static VirtualDrive Drive(DriveProfile profile, string size, Nameplate plate, DrivenMachine machine, double volts) => new(profile, profile.FindSize(size)!, new DriveSystem
    {
        Motor = ((CircuitFit.Fitted)CircuitFit.Of(plate)).Circuit,
        Machine = machine,
        Drive = profile.FindSize(size)!.Rating,
        SupplyVoltage = LineVoltage.FromVolts(volts),
        SupplyFrequency = ElectricalFrequency.FromHertz(50),
    });

    internal static DrivenMachine Pump { get; } = new()
    {
        Load = new LoadCurve.Quadratic(Torque.FromNewtonMetres(42), ShaftSpeed.FromRpm(1460)),
        MachineInertia = Inertia.FromKilogramSquareMetres(0.12),
        MotorInertia = Inertia.FromKilogramSquareMetres(0.035),
    };

    internal static ushort Word(this VirtualDrive drive, ushort register) => drive.Words(register, 1)[0];

    internal static ushort[] Words(this VirtualDrive drive, ushort register, int count)
    {
        var words = new ushort[count];
        drive.ReadHoldingRegisters(new RegisterRange(new RegisterAddress(register), count), words).ShouldBe(DeviceAnswer.Done);
        return words;
    }

    internal static DeviceAnswer Put(this VirtualDrive drive, ushort register, params ushort[] words) =>
        words.Length == 1
            ? drive.WriteRegister(new RegisterAddress(register), words[0])
            : drive.WriteRegisters(new RegisterRange(new RegisterAddress(register), words.Length), words);

    /// <summary>Bus forward, reference from the bus, ramps of a second.</summary>
    internal static VirtualDrive OnBus()
    {
        var drive = Drive();
        drive.Put(220, 4).ShouldBe(DeviceAnswer.Done);
        drive.Put(221, 3).ShouldBe(DeviceAnswer.Done);
        drive.Put(170, 200, 0).ShouldBe(DeviceAnswer.Done);
        drive.Put(172, 200, 0).ShouldBe(DeviceAnswer.Done);
        return drive;
    }

    internal static void Start(this VirtualDrive drive, double hertz)
    {
        drive.Put(Reference, (ushort)Math.Round(hertz * 100));
        drive.Put(Command, 6);
        drive.Put(Command, 7);
        drive.Put(Command, 15);
    }

    internal static Nameplate Plate { get; } = new()
    {
        Output = ShaftPower.FromWatts(7500),
        Voltage = LineVoltage.FromVolts(400),
        Current = LineCurrent.FromAmperes(14.4),
        Frequency = ElectricalFrequency.FromHertz(50),
        Speed = ShaftSpeed.FromRpm(1460),
        PowerFactor = PowerFactor.FromRatio(0.83),
        Efficiency = Efficiency.FromRatio(0.904),
    };

    private static DriveProfile Read(string make)
    {
        var path = Path.Combine(AppContext.BaseDirectory, "data", "drives", make + ProfileReader.Extension);
        var problems = new Problems(path);
        var profile = ProfileReader.ReadFile(path, problems);
        problems.InOrder().ShouldBeEmpty();
        return profile!;
    }
}
