using Runup.Engineering.Loads;
using Runup.Quantities;
using Runup.Settings;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests;

public sealed class DriveSimulationTests
{
    [Fact]
    public void Runs_up_to_the_frequency_asked_for_and_back_to_standstill()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate) { Order = Forward(50) };

        var running = drive.Run(7);
        drive.Order = Stop();
        var stopped = drive.Run(8);

        running.OutputFrequencyHz.ShouldBe(50);
        running.SpeedRpm.ShouldBe(1467, 5);
        running.TorquePercent!.Value.ShouldBe(88, 2);
        running.State.ShouldBe(DriveState.Running);
        stopped.State.ShouldBe(DriveState.Stopped);
        stopped.SpeedRpm.ShouldBe(0);
        stopped.OutputCurrentA.ShouldBe(0);
    }

    [Fact]
    public void Stiction_holds_the_shaft_until_the_breakaway_torque()
    {
        var sticking = PumpSet with { Machine = Pump with { Breakaway = Torque.FromNewtonMetres(30) } };
        var drive = new DriveSimulation(sticking, ByPlate with { Acceleration = Seconds(20) }) { Order = Forward(50) };

        var before = drive.Readings;
        while (drive.Readings.SpeedRpm == 0 && drive.Readings.TimeS < 5)
        {
            before = drive.Readings;
            drive.Tick();
        }

        before.TorqueNm.ShouldBe(30, 1);
        drive.Readings.TorqueNm.ShouldBeGreaterThan(29.9);
    }

    [Fact]
    public void A_geared_machine_is_felt_through_its_gear()
    {
        // 400 N·m at a tenth of the speed through a gear of 95 %: 400/(10·0.95) at the motor, and the motor's own friction.
        var machine = new DrivenMachine
        {
            Load = new LoadCurve.Constant(Torque.FromNewtonMetres(400)),
            MachineInertia = Inertia.FromKilogramSquareMetres(8),
            MotorInertia = Inertia.FromKilogramSquareMetres(0.035),
            GearRatio = 10,
            GearEfficiency = Efficiency.FromRatio(0.95),
            GearEfficiencyBack = Efficiency.FromRatio(0.93),
        };
        var drive = new DriveSimulation(PumpSet with { Machine = machine }, ByPlate) { Order = Forward(50) };

        drive.Run(8).TorqueNm.ShouldBe((400 / (10 * 0.95)) + ((60 + 70) / (1460 * Math.PI / 30)), 0.25);
    }

    [Fact]
    public void Too_high_a_limit_and_too_short_a_ramp_trip_on_overcurrent()
    {
        var heavy = PumpSet with { Machine = Pump with { MachineInertia = Inertia.FromKilogramSquareMetres(2) } };
        var drive = new DriveSimulation(heavy, ByPlate with { Acceleration = Seconds(0.1), CurrentLimit = Drive.PeakCurrent }) { Order = Forward(50) };

        drive.Run(2).Trip.ShouldBe(TripCause.Overcurrent);
    }

    [Fact]
    public void A_supply_too_low_refuses_to_start_on_undervoltage()
    {
        var drive = new DriveSimulation(PumpSet with { SupplyVoltage = LineVoltage.FromVolts(260) }, ByPlate);
        drive.Run(0.1).State.ShouldBe(DriveState.Stopped);

        drive.Order = Forward(50);

        drive.Run(0.1).Trip.ShouldBe(TripCause.Undervoltage);
    }

    [Fact]
    public void A_trip_from_outside_switches_off_and_waits_for_reset_and_a_new_start()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate) { Order = Forward(30) };
        drive.Run(4);

        drive.Trip(TripCause.BusTimeout);
        var tripped = drive.Run(0.01);
        tripped.State.ShouldBe(DriveState.Tripped);
        tripped.Trip.ShouldBe(TripCause.BusTimeout);
        tripped.OutputCurrentA.ShouldBe(0);

        drive.ResetTrip();
        drive.Run(0.1).State.ShouldBe(DriveState.Stopped, "the run order stood all the time");
        drive.Order = Stop();
        drive.Run(4).SpeedRpm.ShouldBeLessThan(200);
        drive.Order = Forward(30);
        drive.Run(0.1).State.ShouldBe(DriveState.Running);
    }

    [Fact]
    public void Only_the_first_cause_of_a_trip_stands()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate) { Order = Forward(30) };
        drive.Run(1);

        drive.Trip(TripCause.External);
        drive.Trip(TripCause.BusTimeout);

        drive.Readings.Trip.ShouldBe(TripCause.External);
    }

    [Fact]
    public void A_direction_that_is_not_permitted_is_not_started()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate) { Order = Forward(-30) };

        var at = drive.Run(2);

        at.State.ShouldBe(DriveState.Stopped);
        at.SpeedRpm.ShouldBe(0);
    }

    [Fact]
    public void Reverse_asked_for_while_running_forward_only_brings_the_motor_to_zero()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate) { Order = Forward(30) };
        drive.Run(4);
        drive.Order = Forward(-30);

        var slowest = double.MaxValue;
        for (var i = 0; i < 8000; i++)
        {
            drive.Tick();
            slowest = Math.Min(slowest, drive.Readings.SpeedRpm);
        }

        slowest.ShouldBeGreaterThan(-1);
        drive.Readings.OutputFrequencyHz.ShouldBe(0);
    }

    [Fact]
    public void Without_power_nothing_runs_and_power_comes_back_to_a_stopped_drive()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate) { Order = Forward(50) };
        drive.Run(6);

        drive.PowerOff();
        var off = drive.Run(2);
        off.State.ShouldBe(DriveState.Unpowered);
        off.OutputCurrentA.ShouldBe(0);
        off.DcBusV.ShouldBeLessThan(540);

        drive.PowerOn();
        drive.Run(0.3).State.ShouldBe(DriveState.Unpowered);
        var on = drive.Run(0.5);
        on.State.ShouldBe(DriveState.Stopped, "the run order stood all the time");
        on.DcBusV.ShouldBe(563, 4);
    }

    [Fact]
    public void Restart_after_power_loss_restarts_where_it_is_set()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate with { RestartAfterPowerLoss = true }) { Order = Forward(20) };
        drive.Run(4);
        drive.PowerOff();
        drive.Run(10);
        drive.PowerOn();

        drive.Run(4).State.ShouldBe(DriveState.Running);
    }

    [Fact]
    public void Machines_are_coupled_only_at_standstill()
    {
        var drive = new DriveSimulation(PumpSet with { Machine = Uncoupled }, ByPlate) { Order = Forward(10) };
        drive.Run(2);

        Should.Throw<InvalidOperationException>(() => drive.Couple(Pump));
        drive.Order = Stop();
        drive.Run(12).SpeedRpm.ShouldBe(0, 3);
        drive.Couple(Pump);

        drive.Order = Forward(50);
        drive.Run(7).TorqueNm.ShouldBe(43, 1);
    }

    [Fact]
    public void A_frequency_that_is_no_number_is_the_callers_mistake()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate);

        Should.Throw<ArgumentOutOfRangeException>(() => drive.Order = Forward(double.NaN));
    }

    [Fact]
    public void Twins_tick_alike_to_the_last_bit()
    {
        var (one, other) = (new DriveSimulation(PumpSet, ByPlate), new DriveSimulation(PumpSet, ByPlate));
        one.Order = other.Order = Forward(47.3);

        for (var i = 0; i < 6000; i++)
        {
            one.Tick();
            other.Tick();
            one.Readings.ShouldBe(other.Readings);
        }
    }

    [Fact]
    public void A_tick_takes_no_memory()
    {
        // Once before the count, since a first call may make what stays for all later ones.
        Allocated();

        Allocated().ShouldBe(0);

        static long Allocated()
        {
            var drive = new DriveSimulation(PumpSet, ByPlate) { Order = Forward(50) };
            drive.Run(1);
            var before = GC.GetAllocatedBytesForCurrentThread();
            for (var i = 0; i < 5000; i++)
            {
                drive.Tick();
            }

            return GC.GetAllocatedBytesForCurrentThread() - before;
        }
    }
}
