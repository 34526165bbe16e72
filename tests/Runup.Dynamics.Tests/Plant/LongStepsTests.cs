using Runup.Quantities;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Plant;

/// <summary>A tick in one step, the bus by its decay, against the same in forty steps of the classical method.</summary>
public sealed class LongStepsTests
{
    public static TheoryData<string, double> Runs => new()
    {
        { "pump", 0.003 },
        { "quick stop", 0.003 },
        { "fast start at the limit", 0.003 },
        { "hoist", 0.003 },
        { "slip compensation", 0.003 },
        { "one phase", 0.003 },
        { "field weakening", 0.003 },
        { "chopper", 0.003 },

        // A motor without load swings by itself against the field here, which magnifies every difference.
        { "uncoupled", 0.1 },
    };

    [Theory]
    [MemberData(nameof(Runs))]
    public void A_long_step_tells_what_many_short_ones_tell(string run, double withinRadPerS)
    {
        var (system, settings, hertz) = Named(run);
        var plain = new DriveSimulation(system, settings);
        var fine = new DriveSimulation(system, settings) { ShortStepsOnly = 40 };
        var chopped = false;

        for (var tick = 0; tick < 3000; tick++)
        {
            plain.Order = fine.Order = tick < 1800 ? Forward(hertz) : Stop();
            plain.Tick();
            fine.Tick();

            var (a, b) = (plain.Readings, fine.Readings);
            a.State.ShouldBe(b.State, $"{tick} ms");
            a.SpeedRpm.ShouldBe(b.SpeedRpm, withinRadPerS * 30 / Math.PI, $"{tick} ms");
            a.OutputCurrentA.ShouldBe(b.OutputCurrentA, 0.03, $"{tick} ms");
            a.TorqueNm.ShouldBe(b.TorqueNm, 0.2, $"{tick} ms");
            a.DcBusV.ShouldBe(b.DcBusV, 0.001 * b.DcBusV, $"{tick} ms");
            chopped |= a.ChopperOn;
        }

        chopped.ShouldBe(run == "chopper");

        plain.Readings.SpeedRpm.ShouldBeLessThan(hertz * 30 * 0.9, "the stop must have been part of the run");
    }

    private static (DriveSystem System, ControlSettings Settings, double Hertz) Named(string run) => run switch
    {
        "pump" => (PumpSet, Ramps(1.5, 1.5), 50),
        "quick stop" => (PumpSet, Ramps(1, 0.3), 50),
        "fast start at the limit" => (PumpSet with { Machine = Pump with { MachineInertia = Inertia.FromKilogramSquareMetres(1) } }, Ramps(0.5, 1), 50),
        "hoist" => (PumpSet with { Machine = LoadsTests.Hoist }, Ramps(1, 1), 40),
        "slip compensation" => (PumpSet, Ramps(1.5, 1.5) with { SlipCompensation = Fraction.FromRatio(1) }, 50),
        "one phase" => (PumpSet with { Drive = Drive with { SupplyPhases = 1 } }, Ramps(1.5, 1.5), 30),
        "field weakening" => (PumpSet, Ramps(1.5, 1.5) with { MaximumFrequency = ElectricalFrequency.FromHertz(90) }, 70),
        "chopper" => (
            PumpSet with { Machine = Pump with { MachineInertia = Inertia.FromKilogramSquareMetres(1) }, BrakingResistor = Resistance.FromOhms(60) },
            Ramps(1.5, 1.2) with { BrakingChopper = true, OvervoltageControl = false }, 50),
        "uncoupled" => (PumpSet with { Machine = Uncoupled }, Ramps(1, 1), 50),
        _ => throw new ArgumentOutOfRangeException(nameof(run), run, "No such run."),
    };

    private static ControlSettings Ramps(double up, double down) => ByPlate with { Acceleration = Seconds(up), Deceleration = Seconds(down) };
}
