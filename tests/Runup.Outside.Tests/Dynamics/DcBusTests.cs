using Runup.Dynamics;
using Runup.Dynamics.Lanes;
using Runup.Dynamics.Plant;
using Runup.Engineering.Loads;
using Runup.Quantities;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Outside.Tests.Dynamics;

/// <summary>DC bus, rectifier and chopper against ngspice on the same circuits.</summary>
/// <remarks>Netlists and results: <c>data/cases/dynamics/dc-bus.sh</c>, <c>dc-bus.csv</c> and <c>chopper.csv</c>.</remarks>
public sealed class DcBusTests
{
    // Of U²/P at 400 V and 10 kW, to which the reactances in per cent refer.
    private const double BaseOhm = 16;

    // The engine's bus is a mean without the swing of choke and capacitor; the circuit's is the mean over its ripple.
    private const double ThreePhase = 0.0125;
    private const double TwoPhase = 0.03;

    [Fact]
    public void Mean_voltage_under_load_is_that_of_the_circuit()
    {
        var rows = StoredRuns.Rows("dc-bus").Select(r => r.Select(StoredRuns.Number).ToArray()).ToList();

        rows.Count.ShouldBeGreaterThan(20);
        foreach (var row in rows)
        {
            var (sourceOhm, chokeOhm) = (row[1] / 100 * BaseOhm, row[2] / 100 * BaseOhm);
            var rectifier = row[0] == 6
                ? Rectifier.SixPulse(400, chokeOhm, sourceOhm, 2e-3)
                : Rectifier.TwoPulse(400, chokeOhm, sourceOhm, 2e-3);
            var within = row[0] == 6 ? ThreePhase : TwoPhase;
            rectifier.VoltageAt(row[3]).ShouldBe(row[4], within * row[4], string.Join(',', row));
        }
    }

    [Theory]
    [InlineData(2000)]
    [InlineData(4000)]
    [InlineData(8000)]
    public void A_chopper_keeps_the_bus_within_the_circuits_bounds_and_takes_its_power(double powerW)
    {
        var row = StoredRuns.Rows("chopper").Select(r => r.Select(StoredRuns.Number).ToArray()).Single(r => r[0] == powerW);

        var (meanV, mostV, leastV, backW, resistorW) = Regenerating(powerW);

        backW.ShouldBe(row[0], 0.005 * row[0]);
        resistorW.ShouldBe(row[8], 0.01 * row[8]);
        meanV.ShouldBe(row[7], 0.01 * row[7]);
        mostV.ShouldBe(row[5], 0.015 * row[5]);
        leastV.ShouldBe(row[6], 0.015 * row[6]);
    }

    // A load that pulls the shaft along; its torque is set so that the wanted power flows back to the bus.
    private static (double MeanV, double MostV, double LeastV, double BackW, double ResistorW) Regenerating(double powerW)
    {
        var torqueNm = powerW / 157;
        var run = Regenerate(torqueNm);
        for (var i = 0; i < 4; i++)
        {
            torqueNm += (powerW - run.BackW) / 157;
            run = Regenerate(torqueNm);
        }

        return run;
    }

    private static (double MeanV, double MostV, double LeastV, double BackW, double ResistorW) Regenerate(double torqueNm)
    {
        var machine = new DrivenMachine
        {
            Load = new LoadCurve.Constant(Torque.FromNewtonMetres(-torqueNm)),
            MachineInertia = Inertia.FromKilogramSquareMetres(0.12),
            MotorInertia = Inertia.FromKilogramSquareMetres(0.035),
        };
        var plant = new DrivePlant<One>(
            new DriveSystem
            {
                Motor = Motor,
                Machine = machine,
                Drive = Drive,
                SupplyVoltage = LineVoltage.FromVolts(400),
                SupplyFrequency = ElectricalFrequency.FromHertz(50),
                BrakingResistor = Resistance.FromOhms(60),
            },
            [Motor],
            [machine],
            1e-3);
        double sumV = 0, mostV = 0, leastV = 1000, sumW = 0, sumJ = 0;
        const int Settling = 4000, Ticks = 1000;
        for (var i = 0; i < Settling + Ticks; i++)
        {
            var atSpeed = Math.Min(1, i / 2000.0);
            double busV = plant.Reading.BusV;
            plant.Advance(new PlantCommand<One>(
                LaneSet.Every<One>(), Math.Sqrt(2.0 / 3) * 400 * Math.Max(atSpeed, 0.02) / busV, default, 50 * atSpeed, true, LaneSet.Every<One>(), RectifierMode.Conducting));
            if (i >= Settling)
            {
                ref readonly var at = ref plant.Reading;
                sumV += at.BusV;
                (mostV, leastV) = (Math.Max(mostV, at.LargestBusV), Math.Min(leastV, at.BusV));

                // What reaches the bus: the inverter loses 1.5 % of nominal power at rated current, the drive itself takes 0.3 %.
                sumW -= at.OutputW + (0.015 * 7500 / 17 * at.CurrentA) + (0.003 * 7500 * at.BusV * at.BusV / (2 * 400 * 400));
                sumJ += at.ResistorJ;
            }
        }

        return (sumV / Ticks, mostV, leastV, sumW / Ticks, sumJ);
    }
}
