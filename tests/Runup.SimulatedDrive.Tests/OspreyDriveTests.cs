using Runup.Engineering.Loads;
using Runup.Modbus;
using Runup.Modbus.Serving;
using Runup.Profiles;
using Runup.Quantities;

namespace Runup.SimulatedDrive.Tests;

/// <summary>
/// A drive of another way of thinking, spoken to by registers written by hand: register = twice the place in the make's list, 32 bits,
/// high word first; velocity mode of IEC 61800-7-201; error codes of CiA 402.
/// </summary>
public sealed class OspreyDriveTests
{
    private const ushort Controlword = 0;
    private const ushort Statusword = 2;
    private const ushort Target = 4;
    private const ushort ActualVelocity = 8;
    private const ushort AccelerationSpeed = 14;
    private const ushort AccelerationTime = 16;
    private const ushort RatedCurrent = 28;
    private const ushort RunSource = 64;
    private const ushort ReferenceSource = 66;
    private const ushort Store = 68;
    private const ushort ErrorCode = 70;
    private const ushort BusTimeOut = 72;
    private const ushort BusLossAction = 74;
    private const ushort Direction = 76;
    private const ushort Current = 88;
    private const ushort DcBus = 90;
    private const ushort OutputFrequency = 92;

    // "save", its first letter in the lowest byte (CiA 301).
    private const int Save = 0x65766173;

    [Fact]
    public void Half_of_a_value_is_refused() => Drive().Put(RatedCurrent, 1).Refusal.ShouldBe(ExceptionCode.IllegalDataAddress);

    [Fact]
    public void It_stores_on_its_signature()
    {
        var drive = Drive();
        Put(drive, RatedCurrent, 14_400).ShouldBe(DeviceAnswer.Done);
        Put(drive, Store, Save).ShouldBe(DeviceAnswer.Done);
        drive.PowerCycle();
        Of(drive, RatedCurrent).ShouldBe(14_400);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(0x73617665)]
    public void Another_signature_is_refused_and_nothing_is_stored(int signature)
    {
        var drive = Drive();
        Put(drive, RatedCurrent, 14_400).ShouldBe(DeviceAnswer.Done);
        Put(drive, Store, signature).Refusal.ShouldBe(ExceptionCode.IllegalDataValue);
        drive.PowerCycle();
        Of(drive, RatedCurrent).ShouldBe(14_200);
    }

    [Fact]
    public void It_runs_to_10_Hz_on_a_target_in_rpm_by_a_change_of_speed_over_time()
    {
        var drive = OnBus();
        Start(drive, 300, 0x7F);
        drive.MoveTo(TimeSpan.FromMilliseconds(500));

        // 3000 rpm in 2 s with two pole pairs are 50 Hz a second: in half a second, less the start, it has arrived.
        Of(drive, OutputFrequency).ShouldBe(1000);
        drive.MoveTo(TimeSpan.FromSeconds(2));
        Of(drive, ActualVelocity).ShouldBeInRange(290, 300);
        Of(drive, Current).ShouldBeInRange(200, 1000);
        new StatusWord((ushort)Of(drive, Statusword)).TargetReached.ShouldBeTrue();
        new StatusWord((ushort)Of(drive, Statusword)).State.ShouldBe(PowerState.OperationEnabled);
    }

    [Fact]
    public void Without_the_ramp_bits_it_stands()
    {
        var drive = OnBus();
        Start(drive, 300, 0x0F);
        drive.MoveTo(TimeSpan.FromSeconds(2));
        drive.State.ShouldBe(PowerState.OperationEnabled);
        Of(drive, OutputFrequency).ShouldBe(0);
        Put(drive, Controlword, 0x7F);
        drive.MoveTo(TimeSpan.FromSeconds(4));
        Of(drive, OutputFrequency).ShouldBe(1000);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, -300)]
    public void A_target_below_zero_is_followed_where_both_directions_are_permitted(int permitted, int rpm)
    {
        var drive = OnBus();
        Put(drive, Direction, permitted).ShouldBe(DeviceAnswer.Done);
        Start(drive, -300, 0x7F);
        drive.MoveTo(TimeSpan.FromSeconds(2));
        ((double)Of(drive, ActualVelocity)).ShouldBe(rpm, 10);
    }

    [Fact]
    public void A_ramp_of_no_speed_is_refused()
    {
        var drive = Drive();
        Put(drive, AccelerationSpeed, 0).Refusal.ShouldBe(ExceptionCode.IllegalDataValue);
        Of(drive, AccelerationSpeed).ShouldBe(1500);
    }

    [Fact]
    public void A_lost_bus_is_shown_by_its_error_code_until_a_person_resets_it()
    {
        var drive = OnBus();
        Put(drive, BusTimeOut, 40).ShouldBe(DeviceAnswer.Done);
        Put(drive, BusLossAction, 1).ShouldBe(DeviceAnswer.Done);
        Start(drive, 300, 0x7F);
        drive.MoveTo(TimeSpan.FromMilliseconds(390));
        drive.State.ShouldBe(PowerState.OperationEnabled);
        drive.MoveTo(TimeSpan.FromMilliseconds(410));
        drive.State.ShouldBe(PowerState.Fault);
        Of(drive, ErrorCode).ShouldBe(0x7500);
        drive.ResetAtPanel();
        Of(drive, ErrorCode).ShouldBe(0);
    }

    [Fact]
    public void An_overvoltage_has_the_code_of_the_DC_link()
    {
        // A fan of much inertia is stopped within a second with overvoltage control off: the bus has nowhere to put the energy.
        var drive = OnBus(new DrivenMachine
        {
            Load = new LoadCurve.Constant(Torque.FromNewtonMetres(1)),
            MachineInertia = Inertia.FromKilogramSquareMetres(1),
            MotorInertia = Inertia.FromKilogramSquareMetres(0.035),
        });
        Put(drive, 82, 0).ShouldBe(DeviceAnswer.Done);
        Put(drive, 18, 3000).ShouldBe(DeviceAnswer.Done);
        Put(drive, 20, 1).ShouldBe(DeviceAnswer.Done);
        Put(drive, AccelerationTime, 20).ShouldBe(DeviceAnswer.Done);
        Start(drive, 1500, 0x7F);
        drive.MoveTo(TimeSpan.FromSeconds(15));
        Put(drive, Controlword, 0x07);
        drive.MoveTo(TimeSpan.FromSeconds(20));
        drive.State.ShouldBe(PowerState.Fault);
        Of(drive, ErrorCode).ShouldBe(0x3210);
    }

    [Fact]
    public void A_size_for_one_phase_runs_on_230_V()
    {
        var drive = Drive("0.75-230", SmallMotor, SmallPump, 230);

        // The peak of 230 V, less what diodes and supply take, in mV.
        drive.MoveTo(TimeSpan.FromMilliseconds(100));
        Of(drive, DcBus).ShouldBeInRange(300_000, 326_000);
        PutOnBus(drive);
        Start(drive, 1500, 0x7F);
        drive.MoveTo(TimeSpan.FromSeconds(6));
        Of(drive, OutputFrequency).ShouldBe(5000);
        Of(drive, ActualVelocity).ShouldBeInRange(1400, 1500);
        Of(drive, ErrorCode).ShouldBe(0);
    }

    // Invented plate of a 0.75 kW motor in delta.
    private static Engineering.Motors.Nameplate SmallMotor { get; } = new()
    {
        Output = ShaftPower.FromWatts(750),
        Voltage = LineVoltage.FromVolts(230),
        Current = LineCurrent.FromAmperes(3.2),
        Frequency = ElectricalFrequency.FromHertz(50),
        Speed = ShaftSpeed.FromRpm(1415),
        PowerFactor = PowerFactor.FromRatio(0.76),
        Efficiency = Efficiency.FromRatio(0.796),
    };

    private static DrivenMachine SmallPump { get; } = new()
    {
        Load = new LoadCurve.Quadratic(Torque.FromNewtonMetres(4.2), ShaftSpeed.FromRpm(1415)),
        MachineInertia = Inertia.FromKilogramSquareMetres(0.004),
        MotorInertia = Inertia.FromKilogramSquareMetres(0.0021),
    };

    private static VirtualDrive Drive(DrivenMachine? machine = null) => Drive("7.5-400", Bench.Plate, machine ?? Bench.Pump, 400);

    private static VirtualDrive Drive(string size, Engineering.Motors.Nameplate plate, DrivenMachine machine, double volts) =>
        Bench.Drive(Bench.Osprey, size, plate, machine, volts);

    private static VirtualDrive OnBus(DrivenMachine? machine = null)
    {
        var drive = Drive(machine);
        PutOnBus(drive);
        return drive;
    }

    private static void PutOnBus(VirtualDrive drive)
    {
        Put(drive, AccelerationSpeed, 3000).ShouldBe(DeviceAnswer.Done);
        Put(drive, AccelerationTime, 2).ShouldBe(DeviceAnswer.Done);
        Put(drive, ReferenceSource, 3).ShouldBe(DeviceAnswer.Done);
        Put(drive, RunSource, 2).ShouldBe(DeviceAnswer.Done);
    }

    private static void Start(VirtualDrive drive, int rpm, int run)
    {
        Put(drive, Target, rpm).ShouldBe(DeviceAnswer.Done);
        foreach (var word in (int[])[0x06, 0x07, run])
        {
            Put(drive, Controlword, word).ShouldBe(DeviceAnswer.Done);
        }
    }

    private static DeviceAnswer Put(VirtualDrive drive, ushort register, int value) => drive.Put(register, (ushort)(value >> 16), (ushort)value);

    private static int Of(VirtualDrive drive, ushort register) => drive.Words(register, 2) is [var high, var low] ? (high << 16) | low : throw new InvalidOperationException();
}
