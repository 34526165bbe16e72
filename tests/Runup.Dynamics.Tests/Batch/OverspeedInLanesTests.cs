using Runup.Dynamics.Batch;
using Runup.Dynamics.Lanes;
using Runup.Engineering.Loads;
using Runup.Quantities;
using Runup.Settings;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Batch;

public sealed class OverspeedInLanesTests
{
    [Theory]
    [InlineData("vf")]
    [InlineData("encoder-vector")]
    public void Each_of_eight_trips_at_the_tick_at_which_it_does_alone(string control)
    {
        var settings = ControlSettings.From(MotorSettings.With(Setting.ControlMethod, control).With(Setting.BrakingChopper, "on").With(Setting.AccelerationTime, 2), Drive);
        var machines = Enumerable.Range(0, 8).Select(i => Driven(40 + (12 * i))).ToList();
        var system = PumpSet with { BrakingResistor = Resistance.FromOhms(20) };
        var group = new DriveGroup<Eight>(system, settings, [Motor], machines);
        var alone = machines.Select(m => new DriveSimulation(system with { Machine = m }, settings) { Order = Forward(48) }).ToList();
        for (var tick = 0; tick < 9000; tick++)
        {
            group.Tick(Forward(48));
            for (var lane = 0; lane < 8; lane++)
            {
                alone[lane].Tick();
                group.Of(lane).Trip.ShouldBe(alone[lane].Readings.Trip, $"lane {lane}, tick {tick}");
            }
        }

        var trips = alone.Select(a => a.Readings.Trip).ToList();
        trips.ShouldContain(TripCause.Overspeed);
        trips.ShouldContain(TripCause.None);
    }

    private static DrivenMachine Driven(double newtonMetres) => Pump with
    {
        Load = new LoadCurve.Table([(ShaftSpeed.FromRpm(0), default), (ShaftSpeed.FromRpm(400), default), (ShaftSpeed.FromRpm(1380), Torque.FromNewtonMetres(-newtonMetres))]),
        MachineInertia = Inertia.FromKilogramSquareMetres(1),
        Breakaway = null,
    };
}
