using Runup.Commissioning.Checks;
using Runup.Commissioning.Survey;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Commissioning.Tests.Checks;

/// <summary>Slips of the pen on invented plates, each by name.</summary>
public sealed class PlateCases
{
    private static PlateSurvey Sound => Plates.Of("7.5 kW", 400, 14.4, 50, 1460, 4, 0.83, 90.4, WindingConnection.Delta, 1.0, "IE3");

    private static PlateSurvey Nema => Plates.Of("10 hp", 460, 12.4, 60, 1765, 4, 0.83, 91.7, serviceFactor: 1.15);

    [Fact]
    public void A_sound_plate_satisfies_every_check_that_it_decides()
    {
        PlateFindings.Ids(Sound).ShouldBeEmpty();
        PlateFindings.Ids(Nema).ShouldBeEmpty();
        PlateFindings.Of(Sound).OfType<CheckResult.Undecided>().Select(u => u.Id).ShouldBe(["plate.voltage-connection"]);
    }

    [Fact]
    public void Kilowatts_put_down_as_horsepower() => Only(Sound with { Output = Plates.Output("7.5 hp") }, "plate.power-unit", Severity.Blocker);

    [Fact]
    public void Horsepower_put_down_as_kilowatts() => Only(Nema with { Output = Plates.Output("10 kW") }, "plate.power-unit", Severity.Blocker);

    [Fact]
    public void Metric_horsepower_put_down_as_kilowatts() => Only(Sound with { Output = Plates.Output("10.2 kW") }, "plate.power-unit", Severity.Blocker);

    [Fact]
    public void Watts_put_down_as_kilowatts() => Only(Sound with { Output = Plates.Output("7500 kW") }, "plate.power-unit", Severity.Blocker);

    [Fact]
    public void Horsepower_as_kilowatts_is_seen_without_power_factor_and_efficiency_but_rests_on_what_is_usual() =>
        Only(Plates.Of("5 kW", 460, 6.9, 60, 1750, 4), "plate.power-unit", Severity.Caution);

    [Fact]
    public void Horsepower_as_kilowatts_beyond_the_rotors_own_loss_is_physics() =>
        Only(Plates.Of("100 kW", 460, 111, 60, 1780, 4, 0.87), "plate.power-unit", Severity.Blocker);

    [Fact]
    public void A_small_motor_without_power_factor_and_efficiency_may_be_either()
    {
        var plate = Plates.Of("0.75 kW", 400, 1.9, 50, 1395, 4);
        PlateFindings.Of(plate, "plate.power-unit").ShouldBeOfType<CheckResult.Undecided>().Missing.ShouldContain("power factor");
        PlateFindings.Ids(plate).ShouldBeEmpty();
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_sixty_hertz_column(bool polesPrinted) =>
        Only(Sound with { Frequency = new(ElectricalFrequency.FromHertz(60)), Poles = polesPrinted ? new(4) : null }, "plate.base-frequency", Severity.Blocker);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_fifty_hertz_column(bool polesPrinted) =>
        Only(Nema with { Frequency = new(ElectricalFrequency.FromHertz(50)), Poles = polesPrinted ? new(4) : null }, "plate.base-frequency", Severity.Blocker);

    [Fact]
    public void Pole_pairs_put_down_as_poles() =>
        Only(Sound with { Poles = new(2) }, "plate.poles", Severity.Blocker).Explanation.ShouldContain("pairs");

    [Theory]
    [InlineData(6)]
    [InlineData(8)]
    [InlineData(3)]
    [InlineData(0)]
    [InlineData(-4)]
    public void A_wrong_number_of_poles(int poles) => Only(Sound with { Poles = new(poles) }, "plate.poles", Severity.Blocker);

    [Fact]
    public void The_synchronous_speed() => Only(Sound with { Speed = new(ShaftSpeed.FromRpm(1500)) }, "plate.speed", Severity.Blocker);

    [Theory]
    [InlineData(1560)]
    [InlineData(146)]
    [InlineData(14600)]
    [InlineData(1100)]
    public void A_speed_that_cannot_be(double rpm) => Findings(Sound with { Speed = new(ShaftSpeed.FromRpm(rpm)) }).ShouldContain("plate.speed");

    [Fact]
    public void Much_slip_is_a_caution_unless_the_motor_is_made_for_it()
    {
        var plate = Plates.Of("7.5 kW", 400, 15.5, 50, 1300, 4, 0.85, 84.5);
        Only(plate, "plate.speed", Severity.Caution);
        PlateFindings.Ids(plate with { DesignLetter = new("D") }).ShouldBeEmpty();
    }

    [Fact]
    public void The_current_of_a_winding() => Only(Sound with { Current = new(LineCurrent.FromAmperes(8.31)) }, "plate.line-phase-current", Severity.Blocker);

    [Fact]
    public void A_line_current_multiplied_by_root_three() =>
        Only(Sound with { Current = new(LineCurrent.FromAmperes(24.9)) }, "plate.line-phase-current", Severity.Blocker);

    [Fact]
    public void A_misread_current() =>
        Only(Sound with { Current = new(LineCurrent.FromAmperes(41.4)) }, "plate.power-balance", Severity.Blocker);

    [Fact]
    public void A_misread_efficiency_is_a_caution() =>
        Only(Plates.Of("7.5 kW", 400, 14.4, 50, 1460, 4, 0.83, 79), "plate.power-balance", Severity.Caution, alsoAllowed: "plate.efficiency");

    [Fact]
    public void The_current_at_service_factor() =>
        Only(Nema with { Current = new(LineCurrent.FromAmperes(14.26)) }, "plate.service-factor", Severity.Caution);

    [Fact]
    public void A_power_factor_in_per_cent() =>
        Findings(Sound with { PowerFactor = new(PowerFactor.FromRatio(83)) }).ShouldContain("plate.power-factor");

    [Fact]
    public void Power_factor_and_efficiency_interchanged() =>
        Findings(Sound with { PowerFactor = new(PowerFactor.FromRatio(0.904)), Efficiency = new(Efficiency.FromRatio(0.83)) }).ShouldContain("plate.efficiency");

    [Fact]
    public void An_efficiency_of_a_hundred_per_cent() =>
        Findings(Sound with { Efficiency = new(Efficiency.FromRatio(1)) }).ShouldContain("plate.efficiency");

    [Fact]
    public void A_motor_with_magnets_is_recognised_and_not_judged()
    {
        var results = PlateFindings.Of(Plates.Motor(Sound with { Speed = new(ShaftSpeed.FromRpm(1500)) }) with { Kind = new(MotorKind.PermanentMagnet) });
        PlateFindings.Ids(results).ShouldBe(["plate.kind-of-motor"]);
        results.Single(r => r.Id == "plate.speed").ShouldBeOfType<CheckResult.Undecided>();
    }

    private static IReadOnlyList<string> Findings(PlateSurvey plate) => PlateFindings.Ids(plate);

    private static CheckResult.Violated Only(PlateSurvey plate, string id, Severity severity, string? alsoAllowed = null)
    {
        var findings = PlateFindings.Of(plate).OfType<CheckResult.Violated>().ToList();
        findings.Select(f => f.Id).Where(found => found != alsoAllowed).ShouldBe([id]);
        var finding = findings.Single(f => f.Id == id);
        finding.Severity.ShouldBe(severity);
        finding.Explanation.ShouldNotBeEmpty();
        finding.Remedy.ShouldNotBeEmpty();
        return finding;
    }
}
