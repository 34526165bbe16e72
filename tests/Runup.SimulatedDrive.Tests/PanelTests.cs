using Runup.Modbus.Serving;
using Runup.Profiles;
using Runup.Quantities;

namespace Runup.SimulatedDrive.Tests;

public sealed class PanelTests
{
    private static readonly ElectricalFrequency TwentyHertz = ElectricalFrequency.FromHertz(20);

    [Fact]
    public void A_person_runs_it_at_its_panel_to_another_frequency_and_stops_it()
    {
        var drive = Bench.Drive();
        drive.RunAtPanel(TwentyHertz, Rotation.Forward).ShouldBeOfType<PanelAnswer.Followed>();
        drive.MoveTo(TimeSpan.FromSeconds(3));
        drive.Word(Bench.OutputFrequency).ShouldBe((ushort)2000);
        drive.State.ShouldBe(PowerState.OperationEnabled);
        new StatusWord(drive.Word(Bench.Status)).Remote.ShouldBeFalse();

        drive.RunAtPanel(ElectricalFrequency.FromHertz(10), Rotation.Forward).ShouldBeOfType<PanelAnswer.Followed>();
        drive.MoveTo(TimeSpan.FromSeconds(5));
        drive.Word(Bench.OutputFrequency).ShouldBe((ushort)1000);

        drive.StopAtPanel().ShouldBeOfType<PanelAnswer.Followed>();
        drive.MoveTo(TimeSpan.FromMilliseconds(5100));
        drive.State.ShouldBe(PowerState.OperationEnabled, "it still turns");
        drive.MoveTo(TimeSpan.FromSeconds(9));
        drive.State.ShouldBe(PowerState.SwitchOnDisabled);
        drive.Now.OutputFrequencyHz.ShouldBe(0);
        drive.StopAtPanel().ShouldBeOfType<PanelAnswer.Ignored>();
    }

    [Fact]
    public void The_panel_is_ignored_while_commands_come_from_the_bus()
    {
        var drive = Bench.OnBus();
        drive.RunAtPanel(TwentyHertz, Rotation.Forward).ShouldBeOfType<PanelAnswer.Ignored>().Why.ShouldContain("bus");
        drive.MoveTo(TimeSpan.FromSeconds(1));
        drive.Now.OutputFrequencyHz.ShouldBe(0);
    }

    [Fact]
    public void The_panel_starts_nothing_while_the_frequency_comes_from_elsewhere()
    {
        var drive = Bench.Drive();
        drive.Put(221, 1).ShouldBe(DeviceAnswer.Done);
        drive.RunAtPanel(TwentyHertz, Rotation.Forward).ShouldBeOfType<PanelAnswer.Ignored>().Why.ShouldContain("analogue-1");
    }

    [Fact]
    public void Only_a_motor_that_turns_for_somebody_on_the_bus_awaits_its_peer()
    {
        var atPanel = Bench.Drive();
        atPanel.AwaitsPeer.ShouldBeFalse();
        atPanel.RunAtPanel(TwentyHertz, Rotation.Forward);
        atPanel.MoveTo(TimeSpan.FromSeconds(1));
        atPanel.AwaitsPeer.ShouldBeFalse();

        var onBus = Bench.OnBus();
        onBus.Start(20);
        onBus.MoveTo(TimeSpan.FromSeconds(1));
        onBus.AwaitsPeer.ShouldBeTrue();
    }

    [Fact]
    public void Reverse_at_the_panel_needs_to_be_permitted()
    {
        var drive = Bench.Drive();
        drive.RunAtPanel(TwentyHertz, Rotation.Reverse).ShouldBeOfType<PanelAnswer.Ignored>().Why.ShouldContain("forward");
        drive.Put(220, 1).ShouldBe(DeviceAnswer.Done);
        drive.RunAtPanel(TwentyHertz, Rotation.Reverse).ShouldBeOfType<PanelAnswer.Followed>();
        drive.MoveTo(TimeSpan.FromSeconds(3));
        drive.Now.SpeedRpm.ShouldBeLessThan(-500);
    }

    [Fact]
    public void A_run_from_the_panel_does_not_return_with_the_power()
    {
        var drive = Bench.Drive();
        drive.RunAtPanel(TwentyHertz, Rotation.Forward);
        drive.MoveTo(TimeSpan.FromSeconds(1));
        drive.PowerCycle();
        drive.MoveTo(TimeSpan.FromSeconds(20));
        drive.State.ShouldBe(PowerState.SwitchOnDisabled);
        drive.Now.OutputFrequencyHz.ShouldBe(0);
    }

    [Fact]
    public void Words_that_would_enable_operation_are_counted_even_where_they_are_ignored()
    {
        var drive = Bench.Drive();
        drive.EnableWordsSeen.ShouldBe(0);
        drive.Put(Bench.Command, 6);
        drive.Put(Bench.Command, 7);
        drive.EnableWordsSeen.ShouldBe(0);
        drive.Put(Bench.Command, 15);
        drive.EnableWordsSeen.ShouldBe(1);
    }
}
