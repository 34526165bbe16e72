using Runup.Modbus;
using Runup.Modbus.Serving;
using Runup.Profiles;

namespace Runup.SimulatedDrive.Tests;

public sealed class VirtualDriveTests
{
    [Fact]
    public void It_wakes_with_factory_values() => Bench.Drive().Word(105).ShouldBe((ushort)400);

    [Fact]
    public void A_value_beyond_its_range_is_refused_and_nothing_is_changed()
    {
        var drive = Bench.Drive();
        drive.Put(105, 501).Refusal.ShouldBe(ExceptionCode.IllegalDataValue);
        drive.Word(105).ShouldBe((ushort)400);
    }

    [Fact]
    public void A_register_that_is_not_there_is_refused() =>
        Bench.Drive().Put(9999, 1).Refusal.ShouldBe(ExceptionCode.IllegalDataAddress);

    [Fact]
    public void Half_of_a_32_bit_value_is_refused() =>
        Bench.Drive().Put(170, 500).Refusal.ShouldBe(ExceptionCode.IllegalDataAddress);

    [Fact]
    public void A_reading_cannot_be_written() =>
        Bench.Drive().Put(Bench.OutputFrequency, 1).Refusal.ShouldBe(ExceptionCode.IllegalDataAddress);

    [Fact]
    public void Of_several_registers_with_one_bad_value_none_is_written()
    {
        var drive = Bench.Drive();
        drive.Put(106, 145, 1460, 9999).Refusal.ShouldNotBeNull();
        drive.Word(107).ShouldBe((ushort)1450);
    }

    [Fact]
    public void What_was_not_stored_is_lost_at_power_off()
    {
        var drive = Bench.Drive();
        drive.Put(105, 380).ShouldBe(DeviceAnswer.Done);
        drive.PowerCycle();
        drive.Word(105).ShouldBe((ushort)400);
    }

    [Fact]
    public void What_was_stored_is_kept()
    {
        var drive = Bench.Drive();
        drive.Put(105, 380).ShouldBe(DeviceAnswer.Done);
        drive.Put(900, 1).ShouldBe(DeviceAnswer.Done);
        drive.PowerCycle();
        drive.Word(105).ShouldBe((ushort)380);
    }

    [Fact]
    public void Control_words_are_ignored_while_commands_come_from_the_panel()
    {
        var drive = Bench.Drive();
        drive.Start(10);
        drive.MoveTo(TimeSpan.FromSeconds(1));
        drive.State.ShouldBe(PowerState.SwitchOnDisabled);
        drive.Word(Bench.OutputFrequency).ShouldBe((ushort)0);
    }

    [Fact]
    public void It_runs_to_the_reference_by_its_ramp()
    {
        var drive = Bench.OnBus();
        drive.Start(25);
        drive.MoveTo(TimeSpan.FromMilliseconds(500));
        drive.Word(Bench.OutputFrequency).ShouldBeInRange((ushort)1150, (ushort)1350);
        drive.MoveTo(TimeSpan.FromSeconds(3));
        drive.Word(Bench.OutputFrequency).ShouldBe((ushort)2500);
        new StatusWord(drive.Word(Bench.Status)).TargetReached.ShouldBeTrue();
    }

    [Fact]
    public void A_parameter_for_standstill_is_refused_while_it_runs()
    {
        var drive = Bench.OnBus();
        drive.Start(25);
        drive.MoveTo(TimeSpan.FromSeconds(1));
        drive.Put(105, 380).Refusal.ShouldBe(ExceptionCode.ServerDeviceFailure);
    }

    [Fact]
    public void Reverse_is_not_followed_where_only_forward_is_permitted()
    {
        var drive = Bench.OnBus();
        drive.Put(Bench.Reference, 1000);
        drive.Put(Bench.Command, 6);
        drive.Put(Bench.Command, 7);
        drive.Put(Bench.Command, 15 | (1 << 11));
        drive.MoveTo(TimeSpan.FromSeconds(2));
        drive.Now.SpeedRpm.ShouldBe(0, 1);
    }

    [Fact]
    public void On_a_lost_bus_it_stops_by_the_ramp_and_stays_off()
    {
        var drive = Bench.OnBus();
        drive.Put(260, 4).ShouldBe(DeviceAnswer.Done);
        drive.Put(261, 2).ShouldBe(DeviceAnswer.Done);
        drive.Start(10);
        drive.MoveTo(TimeSpan.FromMilliseconds(390));
        drive.State.ShouldBe(PowerState.OperationEnabled);
        drive.MoveTo(TimeSpan.FromMilliseconds(410));
        drive.State.ShouldBe(PowerState.QuickStopActive);
        drive.MoveTo(TimeSpan.FromSeconds(3));
        drive.State.ShouldBe(PowerState.SwitchOnDisabled);
        drive.Now.SpeedRpm.ShouldBe(0, 1);
    }

    [Fact]
    public void Any_valid_frame_restarts_the_bus_time_out()
    {
        var drive = Bench.OnBus();
        drive.Put(260, 4).ShouldBe(DeviceAnswer.Done);
        drive.Put(261, 1).ShouldBe(DeviceAnswer.Done);
        drive.Start(10);
        for (var ms = 300; ms <= 3000; ms += 300)
        {
            drive.MoveTo(TimeSpan.FromMilliseconds(ms));
            drive.Word(Bench.Status);
        }

        drive.State.ShouldBe(PowerState.OperationEnabled);
    }

    [Fact]
    public void A_trip_is_shown_with_its_code_and_reset_by_the_rising_bit()
    {
        var drive = Bench.OnBus();
        drive.Put(260, 4).ShouldBe(DeviceAnswer.Done);
        drive.Put(261, 1).ShouldBe(DeviceAnswer.Done);
        drive.Start(10);
        drive.MoveTo(TimeSpan.FromSeconds(1));
        drive.State.ShouldBe(PowerState.Fault);
        drive.Word(Bench.LastTrip).ShouldBe((ushort)12);
        drive.MoveTo(TimeSpan.FromSeconds(10));
        drive.Put(Bench.Command, 0x80);
        drive.State.ShouldBe(PowerState.SwitchOnDisabled);
    }
}
