using Runup.Dynamics;
using Runup.Profiles;
using Runup.Quantities;
using static Runup.SimulatedDrive.Tests.Bench;

namespace Runup.SimulatedDrive.Tests;

/// <summary>What goes wrong between drive and motor, as a master on the bus sees it.</summary>
public sealed class OutputFaultTests
{
    /// <summary>Codes 8, 9 and 11 of the invented make are earth fault, short circuit and motor phase.</summary>
    public static TheoryData<OutputFault, int> Faults => new()
    {
        { new OutputFault.PhaseOpen(OutputPhase.W), 11 },
        { new OutputFault.ToEarth(OutputPhase.V, Resistance.FromOhms(20)), 8 },
        { new OutputFault.BetweenPhases(OutputPhase.U, OutputPhase.V, Resistance.FromOhms(0)), 9 },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void The_drive_trips_with_the_code_of_its_make_until_the_fault_is_gone_and_reset(OutputFault fault, int code)
    {
        var drive = OnBus();
        drive.Start(40);
        drive.MoveTo(TimeSpan.FromSeconds(5));
        drive.Fault = fault;
        drive.MoveTo(TimeSpan.FromSeconds(7));

        drive.State.ShouldBe(PowerState.Fault);
        drive.Word(LastTrip).ShouldBe((ushort)code);
        (drive.Word(Status) & 8).ShouldBe(8);

        ResetAndStart(drive, 40, atS: 7);
        drive.MoveTo(TimeSpan.FromSeconds(9));
        drive.State.ShouldBe(PowerState.Fault);

        drive.Fault = null;
        ResetAndStart(drive, 40, atS: 9);
        drive.MoveTo(TimeSpan.FromSeconds(13));
        drive.State.ShouldBe(PowerState.OperationEnabled);
        drive.Now.SpeedRpm.ShouldBe(1180, 20);
    }

    [Fact]
    public void A_missing_supply_phase_trips_a_loaded_drive()
    {
        var drive = OnBus();
        drive.Start(50);
        drive.MoveTo(TimeSpan.FromSeconds(5));
        drive.LoseSupplyPhase().ShouldBe(new PanelAnswer.Followed());
        drive.MoveTo(TimeSpan.FromSeconds(9));
        drive.Word(LastTrip).ShouldBe((ushort)10);

        drive.RestoreSupplyPhase();
        ResetAndStart(drive, 50, atS: 9);
        drive.MoveTo(TimeSpan.FromSeconds(14));
        drive.State.ShouldBe(PowerState.OperationEnabled);
        drive.Now.SpeedRpm.ShouldBe(1465, 20);
    }

    // The run order goes off and on again.
    private static void ResetAndStart(VirtualDrive drive, double hertz, double atS)
    {
        drive.ResetAtPanel();
        drive.Put(Command, 6);
        drive.MoveTo(TimeSpan.FromSeconds(atS + 0.05));
        drive.Start(hertz);
    }
}
