using Runup.Dynamics.Batch;
using Runup.Dynamics.Lanes;
using Runup.Quantities;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Batch;

public sealed class ChopperInLanesTests
{
    [Fact]
    public void Choppers_that_switch_at_different_moments_change_no_digit_of_a_neighbour()
    {
        var settings = ByPlate with { Acceleration = Seconds(1.5), Deceleration = Seconds(1.2), BrakingChopper = true, OvervoltageControl = false };
        var system = PumpSet with { BrakingResistor = Resistance.FromOhms(60) };
        var machines = Enumerable.Range(0, 8).Select(i => Pump with { MachineInertia = Inertia.FromKilogramSquareMetres(1 + (0.05 * i)) }).ToList();
        var group = new DriveGroup<Eight>(system, settings, [Motor], machines);
        var alone = machines.Select(m => new DriveSimulation(system with { Machine = m }, settings)).ToList();
        var chopped = new int[8];
        for (var tick = 0; tick < 3000; tick++)
        {
            var order = tick < 1800 ? Forward(50) : Stop();
            group.Tick(order);
            for (var lane = 0; lane < 8; lane++)
            {
                alone[lane].Order = order;
                alone[lane].Tick();
                var at = alone[lane].Readings;
                group.Reading.CurrentA[lane].ShouldBe(at.OutputCurrentA, $"lane {lane}, tick {tick}");
                group.Reading.BusV[lane].ShouldBe(at.DcBusV, $"lane {lane}, tick {tick}");
                chopped[lane] += at.ChopperOn ? 1 : 0;
            }
        }

        chopped.ShouldAllBe(ticks => ticks > 20);
        chopped.Distinct().Count().ShouldBeGreaterThan(1, "they must not all have switched together");
    }
}
