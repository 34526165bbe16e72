using Runup.Dynamics;
using Runup.Profiles;

namespace Runup.SimulatedDrive.Tests;

/// <summary>What a drive does is reached by the parameters of its profile.</summary>
public sealed class ControlByRegistersTests
{
    [Fact]
    public void A_left_out_band_and_rounding_of_ramps_are_followed()
    {
        var drive = Bench.OnBus();
        drive.Put(162, 200);
        drive.Put(163, 40);
        drive.Put(178, 100);
        drive.Start(20);

        // A ramp of two seconds to 50 Hz: with a second of rounding it is far behind after half a second.
        drive.MoveTo(TimeSpan.FromMilliseconds(500));
        drive.Word(Bench.OutputFrequency).ShouldBeInRange((ushort)200, (ushort)450);
        drive.MoveTo(TimeSpan.FromSeconds(6));
        drive.Word(Bench.OutputFrequency).ShouldBe((ushort)1800);
    }

    [Fact]
    public void A_sag_of_the_supply_trips_it_and_it_resets_itself_where_that_is_set()
    {
        var drive = Bench.OnBus();
        drive.Put(224, 2);
        drive.Put(225, 20);
        drive.Start(50);
        drive.MoveTo(TimeSpan.FromSeconds(5));
        drive.SetSupply(false);
        drive.MoveTo(TimeSpan.FromMilliseconds(5150));
        drive.SetSupply(true);
        drive.MoveTo(TimeSpan.FromMilliseconds(5500));
        drive.State.ShouldBe(PowerState.Fault);

        drive.MoveTo(TimeSpan.FromSeconds(12));

        drive.State.ShouldBe(PowerState.OperationEnabled);
        drive.Now.State.ShouldBe(DriveState.Running);
        drive.Word(Bench.OutputFrequency).ShouldBe((ushort)5000);
    }

    [Fact]
    public void A_long_gap_of_the_supply_is_a_loss_of_power()
    {
        var drive = Bench.OnBus();
        drive.Start(50);
        drive.MoveTo(TimeSpan.FromSeconds(5));
        drive.SetSupply(false);
        drive.MoveTo(TimeSpan.FromSeconds(120));
        drive.State.ShouldBe(PowerState.NotReadyToSwitchOn);
        drive.SetSupply(true);
        drive.MoveTo(TimeSpan.FromSeconds(122));

        drive.State.ShouldBe(PowerState.SwitchOnDisabled);
        drive.Word(220).ShouldNotBe((ushort)4, "what was not stored is gone");
    }

    [Fact]
    public void A_lost_load_trips_with_the_code_of_the_profile()
    {
        var drive = Bench.OnBus();
        drive.Put(207, 0);
        drive.Put(208, 90);
        drive.Put(209, 10);
        drive.Start(30);
        drive.MoveTo(TimeSpan.FromSeconds(8));

        drive.Word(Bench.LastTrip).ShouldBe((ushort)18);
    }

    [Fact]
    public void Vector_control_without_encoder_takes_the_slip_out()
    {
        var plain = Bench.OnBus();
        var vector = Bench.OnBus();
        vector.Put(140, 1).ShouldBe(Modbus.Serving.DeviceAnswer.Done);
        plain.Start(50);
        vector.Start(50);
        plain.MoveTo(TimeSpan.FromSeconds(8));
        vector.MoveTo(TimeSpan.FromSeconds(8));

        plain.Now.SpeedRpm.ShouldBeLessThan(1470);
        vector.Now.SpeedRpm.ShouldBe(1500, 20);
    }
}
