using Runup.Dynamics;
using Runup.Modbus.Serving;
using Runup.Profiles;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.SimulatedDrive.Tests;

/// <summary>What a person does at the terminals, and an auto-tune.</summary>
public sealed class AtTheDriveTests
{
    private const ushort FunctionOfInput4 = 333;
    private const int SecondRamps = 13;
    private const int ExternalTrip = 9;

    [Fact]
    public void Voltage_on_its_input_puts_the_drive_on_its_second_ramps_and_taking_it_away_ends_that()
    {
        var drive = Bench.Drive();
        drive.Put(FunctionOfInput4, SecondRamps).ShouldBe(DeviceAnswer.Done);
        // Half a second instead of the five from the factory.
        drive.Put(174, 50, 0).ShouldBe(DeviceAnswer.Done);
        drive.PutInput(4, voltage: true).ShouldBeOfType<PanelAnswer.Followed>();
        drive.RunAtPanel(ElectricalFrequency.FromHertz(40), Rotation.Forward).ShouldBeOfType<PanelAnswer.Followed>();
        drive.MoveTo(TimeSpan.FromSeconds(0.25));
        var quick = drive.Now.OutputFrequencyHz;

        var slow = Bench.Drive();
        slow.RunAtPanel(ElectricalFrequency.FromHertz(40), Rotation.Forward);
        slow.MoveTo(TimeSpan.FromSeconds(0.25));
        quick.ShouldBeGreaterThan(3 * slow.Now.OutputFrequencyHz);

        drive.PutInput(4, voltage: false).ShouldBeOfType<PanelAnswer.Followed>();
        drive.MoveTo(TimeSpan.FromSeconds(0.30));
        var before = drive.Now.OutputFrequencyHz;
        drive.MoveTo(TimeSpan.FromSeconds(0.40));
        (drive.Now.OutputFrequencyHz - before).ShouldBe(0.1 * slow.Now.OutputFrequencyHz / 0.25, 0.3);
    }

    [Fact]
    public void An_input_of_another_function_or_none_says_so()
    {
        var drive = Bench.Drive();

        drive.PutInput(5, voltage: true).ShouldBeOfType<PanelAnswer.Ignored>().Why.ShouldContain("for nothing");
        drive.PutInput(1, voltage: true).ShouldBeOfType<PanelAnswer.Ignored>().Why.ShouldContain("run-forward");
        drive.PutInput(7, voltage: true).ShouldBeOfType<PanelAnswer.Ignored>().Why.ShouldContain("1 to 6");
    }

    [Fact]
    public void It_measures_its_motor_at_rest_and_works_with_what_it_found()
    {
        var drive = Bench.Drive();
        drive.Tuned.ShouldBeNull();
        drive.TuneAtPanel(AutoTune.Stationary).ShouldBeOfType<PanelAnswer.Followed>();
        drive.IsTuning.ShouldBeTrue();
        drive.TuneAtPanel(AutoTune.Stationary).ShouldBeOfType<PanelAnswer.Ignored>().Why.ShouldContain("already");
        drive.RunAtPanel(ElectricalFrequency.FromHertz(20), Rotation.Forward).ShouldBeOfType<PanelAnswer.Ignored>().Why.ShouldContain("measuring");

        drive.MoveTo(TimeSpan.FromSeconds(40));

        drive.IsTuning.ShouldBeFalse();
        var found = drive.Tuned.ShouldBeOfType<AutoTuneOutcome.Done>().Motor;
        found.StatorResistance.Ohms.ShouldBe(0.46, 0.05);
        drive.RunAtPanel(ElectricalFrequency.FromHertz(20), Rotation.Forward).ShouldBeOfType<PanelAnswer.Followed>();
        drive.MoveTo(TimeSpan.FromSeconds(45));
        drive.Now.OutputFrequencyHz.ShouldBe(20, 0.5);
        drive.TuneAtPanel(AutoTune.Stationary).ShouldBeOfType<PanelAnswer.Ignored>().Why.ShouldContain("turns");
    }

    [Fact]
    public void A_machine_is_taken_off_and_put_on_only_at_standstill()
    {
        var drive = Bench.Drive();
        drive.CoupleAtRest(Bench.Pump with { MachineInertia = default }).ShouldBeOfType<PanelAnswer.Followed>();
        drive.RunAtPanel(ElectricalFrequency.FromHertz(20), Rotation.Forward);
        drive.MoveTo(TimeSpan.FromSeconds(1));

        drive.CoupleAtRest(Bench.Pump).ShouldBeOfType<PanelAnswer.Ignored>().Why.ShouldContain("turns");
    }

    [Fact]
    public void A_trip_from_outside_comes_over_an_input()
    {
        var drive = Bench.Drive();
        drive.Put(FunctionOfInput4, ExternalTrip).ShouldBe(DeviceAnswer.Done);
        drive.RunAtPanel(ElectricalFrequency.FromHertz(20), Rotation.Forward);
        drive.MoveTo(TimeSpan.FromSeconds(1));

        drive.PutInput(4, voltage: true).ShouldBeOfType<PanelAnswer.Followed>();
        drive.MoveTo(TimeSpan.FromSeconds(1.1));

        drive.State.ShouldBe(PowerState.Fault);
        drive.Now.Trip.ShouldBe(TripCause.External);
    }
}
