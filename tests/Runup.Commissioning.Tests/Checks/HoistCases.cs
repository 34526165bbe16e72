using Runup.Commissioning.Checks;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Survey;
using Runup.Engineering.Drives;
using Runup.Engineering.Motors.Ensemble;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Commissioning.Tests.Checks;

public sealed class HoistCases
{
    private static readonly Job Hoist = Jobs.Hoist();

    [Fact]
    public void What_lowering_brings_back_is_weight_times_speed_through_the_gear_less_the_losses()
    {
        // 1000 kg on 0.3 m behind a gear of 40 with 90 %: 33.1 N·m at the motor's shaft, some 159 rad/s at 50 Hz.
        var regeneration = Hoist.Context(11).Meant.Motion!.Regeneration!;

        regeneration.AtShaft.Watts.ShouldBe(1000 * 9.80665 * 0.15 * 0.9 / 40 * 2 * Math.PI * 25, 150);
        regeneration.AtBus.Watts.ShouldBeInRange(0.8 * regeneration.AtShaft.Watts, 0.98 * regeneration.AtShaft.Watts);
        regeneration.Frequency.Hertz.ShouldBe(50);
        regeneration.IsHeld.ShouldBeTrue();
    }

    [Fact]
    public void The_gear_s_efficiency_when_the_load_drives_reaches_stop_resistor_and_power()
    {
        var good = Hoist.With((MachineSurvey m) => m with { GearEfficiencyBack = new(Efficiency.FromRatio(0.9)) }).Context(11).Meant.Motion!;
        var poor = Hoist.With((MachineSurvey m) => m with { GearEfficiencyBack = new(Efficiency.FromRatio(0.5)) }).Context(11).Meant.Motion!;

        poor.Regeneration!.AtShaft.Watts.ShouldBe(good.Regeneration!.AtShaft.Watts * 0.5 / 0.9, 60);
        poor.Braking!.Peak.Watts.ShouldBeLessThan(0.65 * good.Braking!.Peak.Watts);
        ((Engineering.Mechanics.Deceleration.Stops)poor.DecelerationAsEquipped!).Shortest.Seconds
            .ShouldBeLessThan(((Engineering.Mechanics.Deceleration.Stops)good.DecelerationAsEquipped!).Shortest.Seconds);
    }

    [Fact]
    public void A_stop_is_judged_lowering_where_the_weight_pulls_on()
    {
        var motion = Hoist.Context(11).Meant.Motion!;

        motion.Ways.Count.ShouldBe(2);
        motion.Braking!.Peak.Watts.ShouldBeGreaterThan(motion.Regeneration!.AtBus.Watts);
    }

    [Fact]
    public void A_gear_that_locks_itself_is_not_driven_by_its_load() =>
        Hoist.With((MachineSurvey m) => m with { GearEfficiencyBack = new(Efficiency.FromRatio(0)) }).Judge(11).Of("machine.overhauling").ShouldBeOfType<CheckResult.Satisfied>();

    [Theory]
    [InlineData(60, 6000, Severity.Caution, "however long")]
    [InlineData(60, 500, Severity.Caution, "of the time")]
    [InlineData(300, 6000, Severity.Blocker, "the bus rises")]
    public void The_resistor_is_held_against_the_load_that_drives(double ohms, double watts, Severity severity, string says)
    {
        var finding = Resistor(Hoist, ohms, watts).Judge(11).Of("machine.overhauling").ShouldBeOfType<CheckResult.Violated>();

        finding.Severity.ShouldBe(severity);
        finding.Explanation.ShouldContain(says);
    }

    [Theory]
    [InlineData(1500, Severity.Caution)]
    [InlineData(500, Severity.Blocker)]
    public void Over_a_cycle_the_mean_of_what_comes_back_counts(double watts, Severity severity)
    {
        // A quarter of the time lowering: 1471 N·m · 3.8 rad/s · 0.9 = 5.0 kW, 1.26 kW in the mean.
        var cycled = Resistor(Hoist, 60, watts).With((OperationSurvey o) => o with { Cycle = [Part(30, 36, 1471), Part(30, -36, 1471), Part(60, 0, 0)] });

        var finding = cycled.Judge(11).Of("machine.overhauling").ShouldBeOfType<CheckResult.Violated>();

        finding.Severity.ShouldBe(severity);
        finding.Value!.Value.ShouldBe(1471 * 36 * Math.PI / 30 * 0.9 / 4, 1);
    }

    [Fact]
    public void Who_opens_the_brake_is_planned_or_plainly_said()
    {
        var unsaid = Hoist.Judge(11).Of("machine.hoist").ShouldBeOfType<CheckResult.Violated>();
        unsaid.Explanation.ShouldContain("control.brake-relay");
        SettingsPlan.For(Hoist.Context(11)).Lines.ShouldNotContain(line => line.Setting == Setting.BrakeOpenFrequency);

        var wired = Hoist with { Control = Hoist.Control with { BrakeRelay = new(3) } };
        wired.Judge(11).Of("machine.hoist").ShouldBeOfType<CheckResult.Violated>().Explanation.ShouldContain("Relay 3");
        var plan = SettingsPlan.For(wired.Context(11)).Values;
        plan.Choice(Setting.Relay3).ShouldBe("brake-open");

        // About the slip frequency of its load, of the motor's 1.33 Hz at rated torque; the brake closes below where it opens.
        plan.Number(Setting.BrakeOpenFrequency)!.Value.ShouldBeInRange(0.6, 1.6);
        plan.Number(Setting.BrakeCloseFrequency)!.Value.ShouldBeLessThan(plan.Number(Setting.BrakeOpenFrequency)!.Value);
        plan.Number(Setting.BrakeOpenCurrent)!.Value.ShouldBeInRange(3, 14.4);
        plan.Number(Setting.BrakeOpenDelay).ShouldBe(0.2);
    }

    [Fact]
    public void The_brake_opens_for_the_motors_that_the_plate_may_stand_for_not_for_the_best_fit_alone()
    {
        var context = (Hoist with { Control = Hoist.Control with { BrakeRelay = new(3) } }).Context(11);
        var plan = SettingsPlan.For(context).Values;

        var atRest = MotorForecast.CurrentAtRest(
            context.Printed.Known!.Now,
            context.Output.Characteristic(VoltageShape.Linear, Fraction.FromRatio(plan.Number(Setting.TorqueBoost)!.Value), context.Nameplate!.Voltage),
            ElectricalFrequency.FromHertz(plan.Number(Setting.BrakeOpenFrequency)!.Value));
        plan.Number(Setting.BrakeOpenCurrent)!.Value.ShouldBe(0.8 * atRest.P05.Amperes, 1e-9);
        atRest.P95.Amperes.ShouldBeGreaterThan(1.2 * atRest.P05.Amperes);
    }

    [Fact]
    public void A_brake_motor_that_lifts_nothing_is_asked_who_opens_its_brake() =>
        (Jobs.Pump() with { Motor = Jobs.Pump().Motor with { Brake = new(true) } }).Judge().Of("machine.hoist").ShouldBeOfType<CheckResult.Violated>().Severity.ShouldBe(Severity.Note);

    [Fact]
    public void Lowering_the_motor_runs_ahead_of_its_field()
    {
        // 50 Hz: 1500 rpm and 40 rpm of slip beyond it, over the gear of 40.
        var finding = Hoist.With((MachineSurvey m) => m with { LargestSpeed = new(ShaftSpeed.FromRpm(37.5)) }).Judge(11).Of("machine.overspeed");

        finding.ShouldBeOfType<CheckResult.Violated>().Value!.Value.ShouldBe(1540 / 40.0, 1e-9);
    }

    private static Job Resistor(Job job, double ohms, double watts) =>
        job.With((DriveSurvey d) => d with { BrakingResistor = new(new(Resistance.FromOhms(ohms)), new(ElectricalPower.FromWatts(watts))) });

    private static CyclePart Part(double seconds, double rpm, double torque) =>
        new(new(Duration.FromSeconds(seconds)), new(ShaftSpeed.FromRpm(rpm)), new(Torque.FromNewtonMetres(torque)));
}
