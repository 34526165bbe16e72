using Runup.Commissioning.Checks;
using Runup.Commissioning.Survey;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Commissioning.Tests.Checks;

public sealed class ConnectionCases
{
    private const string Id = "plate.voltage-connection";

    private static PlateSurvey Small => Plates.Of("2.2 kW", 400, 4.6, 50, 1435, 4, 0.8, 86.7, WindingConnection.Star) with { OtherRatings = [Plates.Other(230, WindingConnection.Delta, 8.0)] };

    private static PlateSurvey Delta230 => Plates.Of("2.2 kW", 230, 8.0, 50, 1435, 4, 0.8, 86.7, WindingConnection.Delta) with { OtherRatings = [Plates.Other(400, WindingConnection.Star, 4.6)] };

    [Fact]
    public void The_column_for_the_supply_is_right() => Judge(Small, 400).ShouldBeOfType<CheckResult.Satisfied>();

    [Theory]
    [InlineData(380)]
    [InlineData(415)]
    [InlineData(440)]
    [InlineData(480)]
    public void A_supply_near_the_plates_voltage_is_right(double supply) => Judge(Small, supply).ShouldBeOfType<CheckResult.Satisfied>();

    [Fact]
    public void Joined_in_delta_for_a_lower_voltage() => Blocks(Judge(Delta230, 400)).Remedy.ShouldContain("star");

    [Fact]
    public void Joined_in_star_for_a_higher_voltage() => Blocks(Judge(Small, 230)).Remedy.ShouldContain("delta");

    [Fact]
    public void Delta_on_four_hundred_volts_is_right_up_to_eighty_seven_hertz() => Judge(Delta230, 400, 87).ShouldBeOfType<CheckResult.Satisfied>();

    [Fact]
    public void Star_named_for_the_voltage_that_the_plate_has_in_delta() =>
        Blocks(Judge(Small with { Connection = new(WindingConnection.Delta) }, 400)).Title.ShouldContain("Star and delta");

    [Fact]
    public void Voltage_of_the_other_column() => Blocks(Judge(Small with { Voltage = new(LineVoltage.FromVolts(230)) }, 400)).Limit!.Value.ShouldBe(398, 1);

    [Fact]
    public void Current_of_the_other_column_of_a_plate_for_two_voltages_one_to_two() =>
        Blocks(Judge(Plates.Of("10 hp", 460, 24.8, 60, 1765, 4, 0.83, 91.7) with { OtherRatings = [Plates.Other(230, null, 24.8)] }, 460));

    [Fact]
    public void A_motor_for_somewhat_more_than_the_supply_is_a_caution() =>
        Judge(Plates.Of("7.5 kW", 500, 11.5, 50, 1460, 4, 0.83, 90.4), 400).ShouldBeOfType<CheckResult.Violated>().Severity.ShouldBe(Severity.Caution);

    [Fact]
    public void Without_a_supply_it_cannot_be_said() => PlateFindings.Of(Small, Id).ShouldBeOfType<CheckResult.Undecided>();

    private static CheckResult Judge(PlateSurvey plate, double supply_V, double maximum_Hz = 50)
    {
        var job = Jobs.Pump() with { Motor = Plates.Motor(plate), Supply = Jobs.Pump().Supply with { Voltage = new(LineVoltage.FromVolts(supply_V)) } };
        job = job.With((OperationSurvey o) => o with { MaximumFrequency = new(ElectricalFrequency.FromHertz(maximum_Hz)) });
        return CheckList.OfPlate.Single(check => check.Id == Id).Judge(PlateContext.For(job));
    }

    private static CheckResult.Violated Blocks(CheckResult result)
    {
        var finding = result.ShouldBeOfType<CheckResult.Violated>();
        finding.Severity.ShouldBe(Severity.Blocker);
        finding.Blocks.ShouldBe(Stage.Entry);
        return finding;
    }
}
