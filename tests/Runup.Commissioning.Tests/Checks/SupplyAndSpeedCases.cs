using Runup.Commissioning.Checks;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Rehearsal;
using Runup.Commissioning.Survey;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Commissioning.Tests.Checks;

public sealed class SupplyAndSpeedCases
{
    [Theory]
    [InlineData(50.0, typeof(CheckResult.Satisfied))]
    [InlineData(20.0, typeof(CheckResult.Violated))]
    [InlineData(null, typeof(CheckResult.Undecided))]
    public void The_short_circuit_current_of_the_supply_against_what_the_drive_stands_behind(double? rating_kA, Type answer)
    {
        // 630 kVA of 4 % at 400 V: 909 A / 0.04 = 22.7 kA.
        var job = Jobs.Pump() with { Supply = Jobs.Pump().Supply with { Transformer = new(new(ApparentPower.FromVoltAmperes(630e3)), new(Fraction.FromPercent(4))) } };
        var rating = Ratings.Of(7.5) with { ShortCircuitRating = rating_kA is { } kA ? LineCurrent.FromAmperes(1000 * kA) : null };

        var result = CheckList.Judge(job.Context(rating)).Of("drive.short-circuit-rating");

        result.ShouldBeOfType(answer);
        if (result is CheckResult.Violated finding)
        {
            finding.Severity.ShouldBe(Severity.Blocker);
            finding.Value!.Value.ShouldBe(22.73, 0.01);
        }
    }

    [Theory]
    [InlineData(3, "B", 300, typeof(CheckResult.Satisfied))]
    [InlineData(3, "A", 300, typeof(CheckResult.Violated))]
    [InlineData(3, null, 300, typeof(CheckResult.Undecided))]
    [InlineData(3, "B", 30, typeof(CheckResult.Violated))]
    [InlineData(1, "AC", 300, typeof(CheckResult.Violated))]
    [InlineData(1, "A", 300, typeof(CheckResult.Undecided))]
    public void A_residual_current_device_must_see_what_a_rectifier_makes_and_stand_what_a_filter_leaks(int phases, string? type, double rating_mA, Type answer)
    {
        var device = new ResidualCurrentDeviceSurvey(new(LineCurrent.FromAmperes(rating_mA / 1000)), type is null ? null : new(type));
        var job = Jobs.Pump() with { Supply = Jobs.Pump().Supply with { Phases = new(phases), Filter = new(true), ResidualCurrentDevice = device } };

        var result = job.Judge().Of("supply.residual-current");

        result.ShouldBeOfType(answer);
        (result as CheckResult.Violated)?.Severity.ShouldBe(Severity.Caution);
    }

    [Fact]
    public void A_supply_of_one_phase_counts_with_its_own_voltage()
    {
        var supply = Jobs.Pump().Supply with { Voltage = new(LineVoltage.FromVolts(230)), Phases = new(1), FaultLevel = new(ApparentPower.FromVoltAmperes(1.15e6)) };

        SupplySource.ShortCircuitCurrent(supply)!.Value.Amperes.ShouldBe(5000, 1e-6);
    }

    [Fact]
    public void A_critical_speed_in_the_range_is_left_out_at_the_frequency_that_turns_the_machine_so()
    {
        var job = Shaking(900, null);

        job.Judge().Of("machine.critical-speed").ShouldBeOfType<CheckResult.Violated>().Severity.ShouldBe(Severity.Note);

        // 900 rpm are 30 Hz, and the pump's 16 N·m there a third of the rated slip of 1.33 Hz; a tenth of the speed wide.
        var plan = SettingsPlan.For(job.Context()).Values;
        plan.Number(Setting.SkipFrequency1)!.Value.ShouldBe(30 + (1.333 * 42 * Math.Pow(900 / 1460.0, 2) / 49.05), 0.01);
        plan.Number(Setting.SkipWidth1)!.Value.ShouldBe(3, 1e-9);
        plan.Number(Setting.SkipFrequency2).ShouldBeNull();
    }

    [Theory]
    [InlineData(300, 60, typeof(CheckResult.Satisfied))]
    [InlineData(1440, 60, typeof(CheckResult.Violated))]
    public void Below_the_range_it_does_not_matter_and_at_its_end_it_does(double rpm, double width, Type answer)
    {
        var result = Shaking(rpm, width).Judge().Of("machine.critical-speed");

        result.ShouldBeOfType(answer);
        (result as CheckResult.Violated)?.Severity.ShouldBe(Severity.Caution);
    }

    [Fact]
    public void Critical_speeds_that_nobody_names_are_undecided() =>
        Jobs.Pump().With((MachineSurvey m) => m with { CriticalSpeeds = null }).Judge().Of("machine.critical-speed").ShouldBeOfType<CheckResult.Undecided>();

    [Theory]
    [InlineData(60)]
    [InlineData(55)]
    public void Above_base_frequency_all_checks_reckon_with_the_same_load(double hertz)
    {
        var job = Jobs.Pump().With((OperationSurvey o) => o with { MaximumFrequency = new(ElectricalFrequency.FromHertz(hertz)) }).With((MachineSurvey m) => m with { Torque = new(Torque.FromNewtonMetres(38)) });
        var report = job.Judge();

        report.Of("machine.torque-range").ShouldBeOfType<CheckResult.Violated>().Value!.Value
            .ShouldBe(report.Of("motor.field-weakening").ShouldBeOfType<CheckResult.Violated>().Value!.Value, 1e-9);
    }

    [Theory]
    [InlineData(17.5, null)]
    [InlineData(14.2, Severity.Caution)]
    [InlineData(13.0, Severity.Blocker)]
    public void A_drive_short_by_less_than_the_load_is_known_is_too_small(double amperes, Severity? severity)
    {
        // The pump takes 12.6 A, reckoned from a plate to some 5 %: 14.2 A carry it, 13 A are not shown to.
        var result = CheckList.Judge(Jobs.Pump().Context(Ratings.Rating(7.5, amperes, amperes, 540, 40, (380, 480), 3))).Of("drive.current");

        (result as CheckResult.Violated)?.Severity.ShouldBe(severity!.Value);
        (result is CheckResult.Satisfied).ShouldBe(severity is null);
    }

    [Fact]
    public void Three_motors_are_planned_braked_and_rehearsed_as_three()
    {
        var one = Jobs.Pump();
        var three = one with { Motor = one.Motor with { Count = new(3) }, Cable = new() { Length = new(Length.FromMetres(20)) } };
        var (single, several) = (one.Context(22), three.Context(22));

        SettingsPlan.For(several).Values.Number(Setting.MotorRatedCurrent).ShouldBe(3 * 14.4);
        SettingsPlan.For(several).Values.Number(Setting.MotorRatedPower).ShouldBe(3 * 7500.0);
        several.Meant.Motion!.Braking!.KineticEnergy.Joules.ShouldBe(3 * single.Meant.Motion!.Braking!.KineticEnergy.Joules, 1);
        RehearsalSystem.Of(several)!.Machine.LoadTorque(ShaftSpeed.FromRpm(1460)).NewtonMetres.ShouldBe(126, 1e-6);
        var finding = three.Judge(22).Of("control.several-motors").ShouldBeOfType<CheckResult.Violated>();
        finding.Remedy.ShouldContain("3 of 20 m are 60 m");
        finding.Explanation.ShouldContain("43.2 A");
    }

    private static Job Shaking(double rpm, double? width) => Jobs.Pump().With((MachineSurvey m) => m with
    {
        CriticalSpeeds = [new(new(ShaftSpeed.FromRpm(rpm)), width is { } w ? new(ShaftSpeed.FromRpm(w)) : null)],
    });
}
