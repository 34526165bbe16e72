using Runup.Engineering.Loads;
using Runup.Quantities;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Control;

/// <summary>Control of flux and torque without an encoder, against the plant's own speed, which it never sees.</summary>
public sealed class VectorTests
{
    private static readonly ControlSettings Vector = ByPlate with { Vector = true, Tuned = TunedMotor.Of(Motor) };

    [Theory]
    [InlineData(2, 40)]
    [InlineData(2, 0)]
    [InlineData(5, 48)]
    [InlineData(25, 48)]
    [InlineData(50, 45)]
    [InlineData(50, 0)]
    [InlineData(60, 20)]
    public void The_speed_is_the_one_asked_for_under_any_load(double hertz, double loadNm)
    {
        var drive = new DriveSimulation(Constant(loadNm), Vector with { MaximumFrequency = ElectricalFrequency.FromHertz(60) }) { Order = Forward(hertz) };
        drive.Run(10);
        var (lowest, highest) = (double.PositiveInfinity, 0.0);
        for (var i = 0; i < 1000; i++)
        {
            drive.Tick();
            (lowest, highest) = (Math.Min(lowest, drive.Readings.SpeedRpm), Math.Max(highest, drive.Readings.SpeedRpm));
        }

        drive.Readings.State.ShouldBe(DriveState.Running);
        lowest.ShouldBeGreaterThan((30 * hertz) - 12);
        highest.ShouldBeLessThan((30 * hertz) + 12);
        (highest - lowest).ShouldBeLessThan(6);
    }

    [Fact]
    public void At_two_hertz_it_carries_a_load_under_which_volts_per_hertz_stalls()
    {
        var heavy = Constant(60);

        var byVector = new DriveSimulation(heavy, Vector) { Order = Forward(2) }.Run(8);
        var byCurve = new DriveSimulation(heavy, ByPlate) { Order = Forward(2) }.Run(8);

        byVector.SpeedRpm.ShouldBe(60, 12);
        byCurve.SpeedRpm.ShouldBeLessThan(20);
    }

    [Fact]
    public void A_blow_of_load_is_made_up_for()
    {
        var drive = new DriveSimulation(PumpSet with { Machine = Pump with { Load = new LoadCurve.Table([(ShaftSpeed.FromRpm(0), Torque.FromNewtonMetres(0)), (ShaftSpeed.FromRpm(700), Torque.FromNewtonMetres(0)), (ShaftSpeed.FromRpm(720), Torque.FromNewtonMetres(45)), (ShaftSpeed.FromRpm(1500), Torque.FromNewtonMetres(45))]) } }, Vector) { Order = Forward(30) };

        var at = drive.Run(8);

        at.SpeedRpm.ShouldBe(900, 12);
        at.OutputCurrentA.ShouldBeLessThan(20);
    }

    [Fact]
    public void It_runs_with_what_the_plate_alone_tells_of_the_motor()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate with { Vector = true }) { Order = Forward(50) };

        drive.Run(8).SpeedRpm.ShouldBe(1500, 25);
        drive.Order = Stop();
        var at = drive.Run(8);
        at.State.ShouldBe(DriveState.Stopped);
        at.SpeedRpm.ShouldBe(0, 1);
    }

    [Fact]
    public void It_turns_round_through_zero()
    {
        var drive = new DriveSimulation(Constant(5), Vector with { ReversePermitted = true }) { Order = Forward(20) };
        drive.Run(5);
        drive.Order = Forward(-20);

        drive.Run(8).SpeedRpm.ShouldBe(-600, 12);
    }

    [Fact]
    public void The_current_limit_holds_the_ramp()
    {
        var drive = new DriveSimulation(PumpSet with { Machine = Pump with { MachineInertia = Inertia.FromKilogramSquareMetres(2) } }, Vector with { Acceleration = Seconds(1) }) { Order = Forward(50) };
        var (peakA, limited) = (0.0, false);
        for (var i = 0; i < 12_000; i++)
        {
            drive.Tick();
            peakA = Math.Max(peakA, drive.LargestCurrentA);
            limited |= drive.Readings.CurrentLimitActive;
        }

        limited.ShouldBeTrue();
        peakA.ShouldBeLessThan(1.05 * 1.5 * 14.4);
        drive.Readings.SpeedRpm.ShouldBe(1500, 12);
    }

    // Any load that a small shaft of this kind carries, with the breakaway of a dry one.
    private static DriveSystem Constant(double loadNm) => PumpSet with
    {
        Machine = Pump with { Load = new LoadCurve.Constant(Torque.FromNewtonMetres(loadNm)), Breakaway = null },
    };
}
