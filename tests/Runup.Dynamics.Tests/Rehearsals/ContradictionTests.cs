using Runup.Engineering.Drives;
using Runup.Quantities;
using Runup.Settings;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Rehearsals;

/// <summary>Settings and sets that contradict themselves: told before the run, or a run with an end that a person can read.</summary>
public sealed class ContradictionTests
{
    [Theory]
    [InlineData("zero ramp", "acceleration-time")]
    [InlineData("zero second ramp", "second-acceleration-time")]
    [InlineData("lowest above highest", "minimum-frequency")]
    [InlineData("bands over all", "skip-frequency")]
    [InlineData("overlapping bands over all", "skip-frequency")]
    [InlineData("trip levels crossed", "trip levels")]
    [InlineData("supply above the trip", "supply voltage")]
    [InlineData("hardly a bus", "DC bus capacitance")]
    [InlineData("hardly an inertia", "inertia")]
    public void What_cannot_be_is_told_before_the_run(string name, string subject)
    {
        var (system, settings) = Named(name);

        var refused = Rehearse(system, settings).ShouldBeOfType<RehearsalOutcome.Refused>();

        refused.Problems.ShouldContain(p => p.Subject.Contains(subject, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("ramp of a nanosecond", TripCause.Overcurrent)]
    [InlineData("limit below the no-load current", TripCause.Stall)]
    [InlineData("boost beyond the limit", TripCause.Stall)]
    [InlineData("boost of the whole voltage", TripCause.Overcurrent)]
    [InlineData("undervoltage above the bus", TripCause.Undervoltage)]
    [InlineData("chopper without a resistor", TripCause.Overvoltage)]
    [InlineData("plate voltage mistyped", TripCause.Overcurrent)]
    public void What_a_drive_would_try_ends_in_the_trip_that_tells_of_it(string name, TripCause trip)
    {
        var (system, settings) = Named(name);

        var ran = Rehearse(system, settings).ShouldBeOfType<RehearsalOutcome.Ran>().Result;

        ran.Tripped.ShouldBe(trip);
        ran.Breakdown.ShouldBeNull();
        ran.PeakDcBusV.ShouldBeInRange(500, 900);
        ran.PeakCurrentA.ShouldBeLessThan(3 * PumpSet.Drive.OvercurrentTrip.Amperes);
    }

    [Theory]
    [InlineData("ramp of thirty years")]
    [InlineData("S-curve beyond the ramp")]
    [InlineData("brake that opens above the limit")]
    [InlineData("brake that closes above its opening")]
    [InlineData("resistor without a chopper")]
    public void What_is_only_odd_runs_to_the_end_of_the_script(string name)
    {
        var (system, settings) = Named(name);

        var ran = Rehearse(system, settings).ShouldBeOfType<RehearsalOutcome.Ran>().Result;

        ran.Tripped.ShouldBeNull();
        ran.Breakdown.ShouldBeNull();
        ran.Trace.TimeS[^1].ShouldBeLessThan(130);
    }

    [Fact]
    public void Of_bands_that_overlap_the_motor_stays_outside_both()
    {
        var settings = ByPlate with { SkipBands = [Band(40, 10), Band(46, 10)] };
        var drive = new DriveSimulation(PumpSet, settings) { Order = Forward(44) };

        drive.Run(10).OutputFrequencyHz.ShouldBe(35);
        drive.Order = Forward(50);
        drive.Run(10).OutputFrequencyHz.ShouldBe(35);
    }

    private static RehearsalOutcome Rehearse(DriveSystem system, ControlSettings settings) => new Rehearsal
    {
        System = system,
        Settings = settings,
        Script = Rehearsal.StartAndStop(50, Seconds(1), Seconds(60)),
    }.Run(cancellation: TestContext.Current.CancellationToken);

    private static SkipBand Band(double centreHz, double widthHz) => new(ElectricalFrequency.FromHertz(centreHz), ElectricalFrequency.FromHertz(widthHz));

    private static DriveSystem On(Func<DriveRating, DriveRating> change) => PumpSet with { Drive = change(PumpSet.Drive) };

    private static (DriveSystem System, ControlSettings Settings) Named(string name) => name switch
    {
        "zero ramp" => (PumpSet, ByPlate with { Acceleration = default }),
        "zero second ramp" => (PumpSet, ByPlate with { SecondAcceleration = Seconds(0) }),
        "lowest above highest" => (PumpSet, ByPlate with { MinimumFrequency = ElectricalFrequency.FromHertz(60) }),
        "bands over all" => (PumpSet, ByPlate with { SkipBands = [Band(25, 60)] }),
        "overlapping bands over all" => (PumpSet, ByPlate with { SkipBands = [Band(45, 20), Band(30, 30), Band(6, 20)] }),
        "trip levels crossed" => (On(d => d with { UndervoltageTrip = d.OvervoltageTrip }), ByPlate),
        "supply above the trip" => (PumpSet with { SupplyVoltage = LineVoltage.FromVolts(690) }, ByPlate),
        "hardly a bus" => (On(d => d with { BusCapacitance = Capacitance.FromFarads(1e-6) }), ByPlate),
        "hardly an inertia" => (PumpSet with { Machine = Uncoupled with { MotorInertia = Inertia.FromKilogramSquareMetres(1e-9) } }, ByPlate),
        "ramp of a nanosecond" => (PumpSet, ByPlate with { Acceleration = Seconds(1e-9) }),
        "limit below the no-load current" => (PumpSet, ByPlate with { CurrentLimit = LineCurrent.FromAmperes(4) }),
        "boost beyond the limit" => (PumpSet, ByPlate with { TorqueBoost = Fraction.FromPercent(20) }),
        "boost of the whole voltage" => (PumpSet, ByPlate with { TorqueBoost = Fraction.FromPercent(100) }),
        "undervoltage above the bus" => (On(d => d with { UndervoltageTrip = DcVoltage.FromVolts(600) }), ByPlate),
        "chopper without a resistor" => (PumpSet, ByPlate with { BrakingChopper = true, OvervoltageControl = false, Deceleration = Seconds(0.3) }),
        "plate voltage mistyped" => (PumpSet, ByPlate with { MotorRatedVoltage = LineVoltage.FromVolts(1e6) }),
        "ramp of thirty years" => (PumpSet, ByPlate with { Acceleration = Seconds(1e9) }),
        "S-curve beyond the ramp" => (PumpSet, ByPlate with { SCurve = Seconds(40) }),
        "brake that opens above the limit" => (Braked, ByPlate with { Brake = Opens(100, 0.8) }),
        "brake that closes above its opening" => (Braked, ByPlate with { Brake = Opens(3, 5) }),
        "resistor without a chopper" => (PumpSet with { BrakingResistor = Resistance.FromOhms(60) }, ByPlate with { BrakingChopper = false }),
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "No such case."),
    };

    private static DriveSystem Braked => PumpSet with { Brake = Torque.FromNewtonMetres(100) };

    private static BrakeSettings Opens(double openA, double closeHz) => new(
        ElectricalFrequency.FromHertz(1), LineCurrent.FromAmperes(openA), Seconds(0.2), ElectricalFrequency.FromHertz(closeHz));
}
