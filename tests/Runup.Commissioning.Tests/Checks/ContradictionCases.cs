using Runup.Commissioning.Checks;
using Runup.Commissioning.Survey;
using Runup.Quantities;

namespace Runup.Commissioning.Tests.Checks;

/// <summary>Data that contradict one another, or what is built.</summary>
public sealed class ContradictionCases
{
    [Theory]
    [InlineData(820, 760, 380, true, null)]
    [InlineData(560, 760, 380, false, "The bus trips before anything turns")]
    [InlineData(820, 760, 600, false, "The bus never reaches its undervoltage level")]
    [InlineData(820, 540, 380, true, "The braking resistor would never be switched off")]
    [InlineData(820, 540, 380, false, null)]
    [InlineData(820, 830, 380, true, "The drive trips before the braking resistor is switched on")]
    public void The_levels_of_the_bus_stand_in_order(double trip_V, double chopper_V, double under_V, bool resistor, string? title)
    {
        var job = Jobs.Pump().With((DriveSurvey d) => d with { BrakingResistor = resistor ? new(new(Resistance.FromOhms(70)), new(ElectricalPower.FromWatts(300))) : null });
        var rating = Ratings.Of(7.5) with { OvervoltageTrip = DcVoltage.FromVolts(trip_V), ChopperLevel = DcVoltage.FromVolts(chopper_V), UndervoltageTrip = DcVoltage.FromVolts(under_V) };

        var result = CheckList.Judge(job.Context(rating)).Of("drive.bus-levels");

        (result as CheckResult.Violated)?.Title.ShouldBe(title);
        (result is CheckResult.Satisfied).ShouldBe(title is null);
    }

    [Fact]
    public void On_a_supply_that_is_none_for_the_drive_they_are_not_judged()
    {
        var job = Jobs.Pump() with { Supply = Jobs.Pump().Supply with { Voltage = new(LineVoltage.FromVolts(690)) } };

        job.Judge().Of("drive.bus-levels").ShouldBeOfType<CheckResult.Undecided>();
        job.Judge().Of("drive.voltage").ShouldBeOfType<CheckResult.Violated>();
    }

    [Theory]
    [InlineData(0.035, typeof(CheckResult.Satisfied), null)]
    [InlineData(0.16, typeof(CheckResult.Satisfied), null)]
    [InlineData(350, typeof(CheckResult.Violated), "kg·cm²")]
    [InlineData(1e-12, typeof(CheckResult.Violated), "Ramps")]
    [InlineData(1e12, typeof(CheckResult.Violated), "Ramps")]
    public void The_motor_s_inertia_is_one_that_such_a_motor_has(double kgm2, Type answer, string? says)
    {
        var job = Jobs.Pump() with { Motor = Jobs.Pump().Motor with { Inertia = new(Inertia.FromKilogramSquareMetres(kgm2)) } };

        var result = job.Judge().Of("motor.inertia");

        result.ShouldBeOfType(answer);
        if (result is CheckResult.Violated finding)
        {
            finding.Severity.ShouldBe(Severity.Caution);
            finding.Explanation.ShouldContain(says!);
        }
    }

    [Fact]
    public void Without_a_plate_nobody_can_say()
    {
        var job = Jobs.Pump().With((PlateSurvey p) => p with { Output = new(ShaftPower.FromWatts(7.5e9)) });

        job.Judge().Of("motor.inertia").ShouldBeOfType<CheckResult.Undecided>();
    }
}
