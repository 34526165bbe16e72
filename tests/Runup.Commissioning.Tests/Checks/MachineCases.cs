using Runup.Commissioning.Checks;
using Runup.Commissioning.Survey;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Commissioning.Tests.Checks;

public sealed class MachineCases
{
    private static Job Blower => Jobs.Pump().With((MachineSurvey m) => m with { Inertia = new(Inertia.FromKilogramSquareMetres(3)) })
        .With((OperationSurvey o) => o with { Acceleration = new(Duration.FromSeconds(60)), Deceleration = new(Duration.FromSeconds(240)) });

    [Fact]
    public void A_screw_that_needs_more_than_the_drive_has_at_standstill_does_not_break_away()
    {
        var job = Jobs.Screw();
        job.Judge(2.2).Findings.ShouldBeEmpty();
        var stiff = job.With((MachineSurvey m) => m with { BreakawayTorque = new(Torque.FromNewtonMetres(600)) }).Judge(2.2);
        var finding = (CheckResult.Violated)stiff.Of("machine.breakaway");
        finding.Severity.ShouldBe(Severity.Blocker);

        // At the motor's shaft: 600 N·m / (20 · 0.94).
        finding.Value!.Value.ShouldBe(600 / (20 * 0.94), 1e-6);
        finding.Limit!.Value.ShouldBeLessThan(finding.Value!.Value);
        stiff.Verdict.MayBeBumped.ShouldBeTrue();
        stiff.Verdict.MayRunCoupled.ShouldBeFalse();
    }

    [Fact]
    public void Breakaway_that_nobody_knows_is_undecided() =>
        Jobs.Pump().With((MachineSurvey m) => m with { BreakawayTorque = null }).Judge().Of("machine.breakaway").ShouldBeOfType<CheckResult.Undecided>();

    [Fact]
    public void A_fan_wanted_beyond_its_motors_rating_overloads_it()
    {
        // 60 Hz asks a fan's motor for (60/50)² = 1.44 times the torque, and above base frequency it has 50/60 of its own.
        var job = Jobs.Pump().With((OperationSurvey o) => o with { MaximumFrequency = new(ElectricalFrequency.FromHertz(60)) });
        job.Judge().Of("machine.torque-range").ShouldBeOfType<CheckResult.Violated>().Severity.ShouldBe(Severity.Blocker);
    }

    [Fact]
    public void Half_as_much_load_again_is_too_much() =>
        Jobs.Pump().With((MachineSurvey m) => m with { Torque = new(Torque.FromNewtonMetres(63)) }).Judge().Of("machine.torque-range").ShouldBeOfType<CheckResult.Violated>();

    [Fact]
    public void A_load_that_nobody_knows_is_undecided() =>
        Jobs.Pump().With((MachineSurvey m) => m with { Torque = null }).Judge().Of("machine.torque-range").ShouldBeOfType<CheckResult.Undecided>().Missing.ShouldContain("machine.torque");

    [Fact]
    public void A_ramp_up_that_is_too_short_is_said_with_the_shortest()
    {
        Blower.Judge().Of("machine.acceleration").ShouldBeOfType<CheckResult.Satisfied>();
        var finding = (CheckResult.Violated)Blower.With((OperationSurvey o) => o with { Acceleration = new(Duration.FromSeconds(4)) }).Judge().Of("machine.acceleration");
        finding.Severity.ShouldBe(Severity.Caution);

        // J·ω/T with no load and the torque at the limit as bounds: 3.035 kg·m² · 153 rad/s over 40 to 70 N·m.
        finding.Limit!.Value.ShouldBeInRange(3.035 * 153 / 70, 3.035 * 153 / 10);
    }

    [Fact]
    public void A_ramp_down_that_is_too_short_needs_a_resistor()
    {
        Blower.Judge().Of("machine.deceleration").ShouldBeOfType<CheckResult.Satisfied>();
        var report = Blower.With((OperationSurvey o) => o with { Deceleration = new(Duration.FromSeconds(5)) }).Judge();
        report.Of("machine.deceleration").ShouldBeOfType<CheckResult.Violated>().Severity.ShouldBe(Severity.Caution);
        report.Of("machine.braking-needed").ShouldBeOfType<CheckResult.Violated>().Severity.ShouldBe(Severity.Note);
    }

    [Fact]
    public void With_a_fitting_resistor_the_short_stop_is_had()
    {
        var job = Blower.With((OperationSurvey o) => o with { Deceleration = new(Duration.FromSeconds(15)), StopsPerHour = new(Ratio.FromValue(2)) })
            .With((DriveSurvey d) => d with { BrakingResistor = new(new(Resistance.FromOhms(60)), new(ElectricalPower.FromWatts(300))) });
        var report = job.Judge();
        report.Findings.ShouldBeEmpty();
        report.Of("machine.braking-resistor").ShouldBeOfType<CheckResult.Satisfied>();
    }

    [Theory]
    [InlineData(30, 300, 2, Severity.Blocker)]
    [InlineData(900, 300, 2, Severity.Caution)]
    [InlineData(60, 50, 60, Severity.Blocker)]
    public void A_resistor_too_low_too_high_or_too_weak(double ohms, double watts, double stopsPerHour, Severity severity)
    {
        var job = Blower.With((OperationSurvey o) => o with { Deceleration = new(Duration.FromSeconds(8)), StopsPerHour = new(Ratio.FromValue(stopsPerHour)) })
            .With((DriveSurvey d) => d with { BrakingResistor = new(new(Resistance.FromOhms(ohms)), new(ElectricalPower.FromWatts(watts))) });
        job.Judge().Of("machine.braking-resistor").ShouldBeOfType<CheckResult.Violated>().Severity.ShouldBe(severity);
    }

    [Fact]
    public void Ramps_without_inertia_are_undecided()
    {
        var report = Jobs.Pump().With((MachineSurvey m) => m with { Inertia = null }).Judge();
        foreach (var id in (string[])["machine.acceleration", "machine.deceleration", "machine.braking-needed"])
        {
            report.Of(id).ShouldBeOfType<CheckResult.Undecided>().Missing.ShouldContain("machine.inertia");
        }

        report.Findings.ShouldBeEmpty();
        MachineFigures.Of(Jobs.Pump().With((MachineSurvey m) => m with { Inertia = null }).Context()).ShortestAccelerationS.ShouldBeNull();
    }

    [Fact]
    public void Continuous_torque_at_low_speed_with_the_fan_on_the_shaft_is_a_caution_and_never_more()
    {
        var slow = Jobs.Screw().With((OperationSurvey o) => o with { MinimumFrequency = new(ElectricalFrequency.FromHertz(8)) });
        var finding = (CheckResult.Violated)slow.Judge(2.2).Of("machine.low-speed-cooling");
        finding.Severity.ShouldBe(Severity.Caution);
        finding.Basis.ShouldBeOfType<Basis.CommonPractice>();
        slow.With((PlateSurvey p) => p with { Cooling = new("IC416") }).Judge(2.2).Of("machine.low-speed-cooling").ShouldBeOfType<CheckResult.Satisfied>();
        slow.With((PlateSurvey p) => p with { Cooling = null }).Judge(2.2).Of("machine.low-speed-cooling").ShouldBeOfType<CheckResult.Undecided>();
    }

    [Fact]
    public void The_makers_curve_decides_low_speed_cooling()
    {
        var slow = Jobs.Screw().With((OperationSurvey o) => o with { MinimumFrequency = new(ElectricalFrequency.FromHertz(8)) });
        var weak = slow with { Motor = slow.Motor with { ContinuousTorque = [(ElectricalFrequency.FromHertz(5), Fraction.FromPercent(60)), (ElectricalFrequency.FromHertz(25), Fraction.FromPercent(100))] } };
        weak.Judge(2.2).Of("machine.low-speed-cooling").ShouldBeOfType<CheckResult.Violated>().Severity.ShouldBe(Severity.Blocker);
        var strong = slow with { Motor = slow.Motor with { ContinuousTorque = [(ElectricalFrequency.FromHertz(5), Fraction.FromPercent(90)), (ElectricalFrequency.FromHertz(25), Fraction.FromPercent(100))] } };
        strong.Judge(2.2).Of("machine.low-speed-cooling").ShouldBeOfType<CheckResult.Satisfied>();
    }

    [Fact]
    public void A_maximum_frequency_beyond_the_machines_largest_speed()
    {
        var report = Jobs.Screw().With((MachineSurvey m) => m with { LargestSpeed = new(ShaftSpeed.FromRpm(60)) }).Judge(2.2);
        var finding = (CheckResult.Violated)report.Of("machine.overspeed");

        // 1440 rpm at full load over the gear of 20.
        finding.Value!.Value.ShouldBe(72, 1e-9);
        report.Verdict.MayBeBumped.ShouldBeFalse();
        Jobs.Pump().With((MachineSurvey m) => m with { LargestSpeed = null }).Judge().Of("machine.overspeed").ShouldBeOfType<CheckResult.Undecided>();
    }

    [Fact]
    public void The_root_mean_square_of_a_cycle_counts()
    {
        var cycle = (double torque) => Jobs.Pump().With((OperationSurvey o) => o with { Cycle = [Part(60, torque), Part(60, 0)] });

        // √((70² · 60 + 0) / 120) = 49.5 N·m against 49.06 N·m, within rounding; with the fan on the shaft a rest hardly cools.
        MachineFigures.Of(cycle(70).Context()).RmsTorqueNm!.Value.ShouldBe(70 / Math.Sqrt(2), 1e-9);
        cycle(90).Judge().Of("machine.rms-torque").ShouldBeOfType<CheckResult.Violated>().Severity.ShouldBe(Severity.Blocker);
        cycle(30).Judge().Of("machine.rms-torque").ShouldBeOfType<CheckResult.Satisfied>();

        static CyclePart Part(double seconds, double torque) =>
            new(new(Duration.FromSeconds(seconds)), new(ShaftSpeed.FromRpm(torque > 0 ? 1460 : 0)), new(Torque.FromNewtonMetres(torque)));
    }

    [Fact]
    public void A_hoist_is_never_run_by_this_tool_and_needs_brake_and_resistor()
    {
        var report = Jobs.Hoist().Judge(11);
        report.Of("machine.hoist").ShouldBeOfType<CheckResult.Violated>().Severity.ShouldBe(Severity.Caution);
        report.Of("machine.overhauling").ShouldBeOfType<CheckResult.Violated>().Severity.ShouldBe(Severity.Caution);
        var bare = Jobs.Hoist() with { Motor = Jobs.Hoist().Motor with { Brake = new(false) } };
        bare = bare.With((DriveSurvey d) => d with { BrakingResistor = null });

        // Lowering, nothing takes the load's power: it gets away from any stop, too.
        bare.Judge(11).Verdict.BlockedBy.ShouldBe(["machine.deceleration", "machine.overhauling", "machine.hoist"]);
    }

    [Fact]
    public void Eighty_seven_hertz_is_noted_and_its_corner_is_where_the_supply_ends()
    {
        var job = (Jobs.Pump() with { Motor = Plates.Motor(Plates.Of("2.2 kW", 230, 8.0, 50, 1435, 4, 0.8, 86.7, WindingConnection.Delta)) })
            .With((OperationSurvey o) => o with { MaximumFrequency = new(ElectricalFrequency.FromHertz(87)) })
            .With((MachineSurvey m) => m with { Torque = new(Torque.FromNewtonMetres(12)), AtSpeed = new(ShaftSpeed.FromRpm(2500)), BreakawayTorque = new(Torque.FromNewtonMetres(2)), LargestSpeed = null });
        job.Context(4).Output.BaseFrequency.Hertz.ShouldBe(50 * 400 / 230.0, 1e-9);
        job.Judge(4).Of("motor.87hz").ShouldBeOfType<CheckResult.Violated>().Severity.ShouldBe(Severity.Note);
        job.Judge(4).Of("motor.field-weakening").ShouldBeOfType<CheckResult.Satisfied>();
    }

    [Fact]
    public void Twice_the_base_frequency_leaves_little_torque()
    {
        var job = Jobs.Screw().With((OperationSurvey o) => o with { MaximumFrequency = new(ElectricalFrequency.FromHertz(100)) });
        job.Judge(2.2).Of("motor.field-weakening").ShouldBeOfType<CheckResult.Violated>();
    }

    [Fact]
    public void A_run_up_longer_than_class_ten_allows_at_its_current()
    {
        Jobs.Pump().Judge().Of("motor.overload-class").ShouldBeOfType<CheckResult.Satisfied>();

        // 150 % of the motor's current passes for 10 s · 36 / 1.5² = 160 s (common practice, no source); the heavy load asks for longer.
        var job = Jobs.Screw().With((MachineSurvey m) => m with { Torque = new(Torque.FromNewtonMetres(250)), BreakawayTorque = new(Torque.FromNewtonMetres(250)) })
            .With((OperationSurvey o) => o with { Acceleration = new(Duration.FromSeconds(400)) });
        job.Judge(2.2).Of("motor.overload-class").ShouldBeOfType<CheckResult.Violated>().Severity.ShouldBe(Severity.Caution);
        job.With((MachineSurvey m) => m with { Inertia = null }).Judge(2.2).Of("motor.overload-class").ShouldBeOfType<CheckResult.Undecided>();
    }

    [Fact]
    public void A_boost_that_draws_half_as_much_again_as_rated_current_at_rest_is_noted()
    {
        Jobs.Pump().Judge().Of("motor.boost").ShouldBeOfType<CheckResult.Satisfied>();
        Jobs.Screw().With((MachineSurvey m) => m with { BreakawayTorque = new(Torque.FromNewtonMetres(420)) }).Judge(2.2).Of("motor.boost").ShouldBeOfType<CheckResult.Violated>();
        (Jobs.Pump() with { Motor = Jobs.Pump().Motor with { Kind = new(MotorKind.PermanentMagnet) } }).Judge().Of("motor.boost").ShouldBeOfType<CheckResult.Undecided>();
    }
}
