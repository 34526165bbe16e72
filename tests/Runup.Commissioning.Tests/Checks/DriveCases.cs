using Runup.Commissioning.Checks;
using Runup.Commissioning.Survey;
using Runup.Quantities;

namespace Runup.Commissioning.Tests.Checks;

public sealed class DriveCases
{
    private static Job EightPoles => Jobs.Pump().With((PlateSurvey _) => Plates.Of("7.5 kW", 400, 17.9, 50, 720, 8, 0.7, 86.5));

    [Fact]
    public void A_drive_chosen_by_power_is_too_small_for_a_motor_of_many_poles()
    {
        var report = EightPoles.With((MachineSurvey m) => m with { Torque = new(Torque.FromNewtonMetres(95)), AtSpeed = new(ShaftSpeed.FromRpm(720)), LargestSpeed = null }).Judge();
        report.Findings.Select(f => f.Id).ShouldContain("drive.size-by-power");
        var current = (CheckResult.Violated)report.Of("drive.current");
        current.Severity.ShouldBe(Severity.Blocker);
        (current.Value, current.Limit).ShouldBe((17, 17.9));
        report.Verdict.MayBeEntered.ShouldBeTrue();
        report.Verdict.MayRunCoupled.ShouldBeFalse();
    }

    [Fact]
    public void A_light_load_makes_it_a_caution() =>
        ((CheckResult.Violated)EightPoles.With((MachineSurvey m) => m with { Torque = new(Torque.FromNewtonMetres(50)), AtSpeed = new(ShaftSpeed.FromRpm(720)) }).Judge().Of("drive.current"))
            .Severity.ShouldBe(Severity.Caution);

    [Fact]
    public void The_heavy_rating_counts_where_it_is_chosen()
    {
        var heavy = Jobs.Pump().With((DriveSurvey d) => d with { OverloadCycle = new("heavy") }).Judge();
        heavy.Of("drive.current").ShouldBeOfType<CheckResult.Violated>();
        heavy.Of("drive.size-by-power").ShouldBeOfType<CheckResult.Violated>();
    }

    [Theory]
    [InlineData(40, Severity.Note, false)]
    [InlineData(45, Severity.Note, true)]
    [InlineData(55, Severity.Blocker, true)]
    public void Warm_air_costs_current_and_hot_air_is_not_permitted(double celsius, Severity severity, bool found)
    {
        var result = (Jobs.Pump() with { Place = Jobs.Pump().Place with { Ambient = new(Temperature.FromCelsius(celsius)) } }).Judge().Of("drive.ambient");
        (result is CheckResult.Violated).ShouldBe(found);
        if (result is CheckResult.Violated finding)
        {
            finding.Severity.ShouldBe(severity);
        }
    }

    [Theory]
    [InlineData(2000, Severity.Note)]
    [InlineData(4500, Severity.Blocker)]
    public void Altitude(double metres, Severity severity) =>
        ((CheckResult.Violated)(Jobs.Pump() with { Place = Jobs.Pump().Place with { Altitude = new(Length.FromMetres(metres)) } }).Judge().Of("drive.altitude")).Severity.ShouldBe(severity);

    [Theory]
    [InlineData(8, Severity.Note)]
    [InlineData(16, Severity.Blocker)]
    public void Switching_frequency(double kHz, Severity severity) =>
        ((CheckResult.Violated)Jobs.Pump().With((DriveSurvey d) => d with { SwitchingFrequency = new(SwitchingFrequency.FromHertz(kHz * 1000)) }).Judge().Of("drive.switching-frequency"))
            .Severity.ShouldBe(severity);

    [Fact]
    public void Derating_can_make_the_current_too_small()
    {
        var job = Jobs.Pump().With((DriveSurvey d) => d with { SwitchingFrequency = new(SwitchingFrequency.FromHertz(8000)) });
        job = job with { Place = job.Place with { Ambient = new(Temperature.FromCelsius(45)) } };

        // 17 A · 0.85 · (1 − 5 · 0.015) = 13.37 A against 14.4 A.
        var finding = (CheckResult.Violated)job.Judge().Of("drive.current");
        finding.Value!.Value.ShouldBe(17 * 0.85 * 0.925, 1e-9);
        DriveFigures.Of(job.Context()).CurrentMarginPercent!.Value.ShouldBe(100 * ((17 * 0.85 * 0.925 / 14.4) - 1), 1e-9);
    }

    [Fact]
    public void Air_and_altitude_that_nobody_knows_are_undecided_and_assumed()
    {
        var report = (Jobs.Pump() with { Place = new() }).Judge();
        report.Undecided.Select(u => u.Id).ShouldBe(["drive.ambient", "drive.altitude", "drive.short-circuit-rating", "motor.explosive-atmosphere"]);
        report.Findings.ShouldBeEmpty();
        report.Assumptions.Select(a => a.What).ShouldContain("ambient temperature");
    }

    [Theory]
    [InlineData(230)]
    [InlineData(690)]
    public void A_supply_outside_the_drives_range(double volts)
    {
        var job = Jobs.Pump() with { Supply = Jobs.Pump().Supply with { Voltage = new(LineVoltage.FromVolts(volts)) } };
        ((CheckResult.Violated)job.Judge().Of("drive.voltage")).Severity.ShouldBe(Severity.Blocker);
    }

    [Fact]
    public void A_single_phase_on_a_drive_for_three() =>
        (Jobs.Pump() with { Supply = Jobs.Pump().Supply with { Phases = new(1) } }).Judge().Of("drive.single-phase-input").ShouldBeOfType<CheckResult.Violated>();

    [Fact]
    public void A_run_up_longer_than_the_overload_time()
    {
        // A fan of much inertia: 70 s at more than the continuous current.
        var job = Jobs.Pump().With((MachineSurvey m) => m with { Inertia = new(Inertia.FromKilogramSquareMetres(9)), Torque = new(Torque.FromNewtonMetres(40)) })
            .With((OperationSurvey o) => o with { Acceleration = new(Duration.FromSeconds(70)), Deceleration = new(Duration.FromSeconds(400)) })
            .With((DriveSurvey d) => d with { OverloadCycle = new("heavy") });
        ((CheckResult.Violated)job.Judge().Of("drive.overload")).Unit.ShouldBe("s");
    }

    [Fact]
    public void Without_inertia_overload_is_undecided() =>
        Jobs.Pump().With((MachineSurvey m) => m with { Inertia = null }).Judge().Of("drive.overload").ShouldBeOfType<CheckResult.Undecided>();
}
