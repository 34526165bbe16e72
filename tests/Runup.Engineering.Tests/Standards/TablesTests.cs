using Runup.Engineering.Standards;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Standards;

public sealed class TablesTests
{
    [Theory]
    [InlineData("IE3", 7.5, 4, 50, 0.904, Certainty.Seen)]
    [InlineData("ie2", 0.6, 4, 50, 0.7780, Certainty.Seen)] // between 0.55 kW 77.1 % and 0.75 kW 79.6 %: linear in lg P
    [InlineData("IE1", 7.5, 8, 50, 0.831, Certainty.Memory)]
    [InlineData("IE4", 300, 6, 50, 0.965, Certainty.Memory)]
    [InlineData("IE4", 249.5, 6, 50, 0.963, Certainty.Memory)]
    [InlineData("IE2", 500, 2, 50, 0.95, Certainty.Memory)]
    [InlineData("IE3", 7.5, 4, 60, 0.917, Certainty.Memory)]
    [InlineData("IE3", 9.2, 4, 60, 0.917, Certainty.Memory)] // below the midpoint of 7.5 and 11 kW
    [InlineData("IE3", 9.25, 4, 60, 0.924, Certainty.Memory)] // at it
    [InlineData("IE3", 400, 4, 60, 0.962, Certainty.Memory)]
    public void Nominal_efficiency(string className, double kW, int poles, double hertz, double efficiency, Certainty certainty)
    {
        var nominal = EfficiencyClass.Nominal(className, ShaftPower.FromWatts(kW * 1000), PoleCount.FromPoles(poles), ElectricalFrequency.FromHertz(hertz)).ShouldNotBeNull();
        nominal.Value.Ratio.ShouldBe(efficiency, 5e-5);
        nominal.Certainty.ShouldBe(certainty);
    }

    [Theory]
    [InlineData("IE5", 7.5, 4, 50)]
    [InlineData("IE3", 0.05, 4, 50)]
    [InlineData("IE3", 2000, 4, 50)]
    [InlineData("IE3", 7.5, 10, 50)]
    [InlineData("IE3", 7.5, 4, 87)]
    [InlineData("IE2", 7.5, 4, 60)]
    public void What_the_tables_do_not_have_is_not_made_up(string className, double kW, int poles, double hertz) =>
        EfficiencyClass.Nominal(className, ShaftPower.FromWatts(kW * 1000), PoleCount.FromPoles(poles), ElectricalFrequency.FromHertz(hertz)).ShouldBeNull();

    [Fact]
    public void A_code_letter_the_table_does_not_use_is_none()
    {
        foreach (var letter in "IOQ1")
        {
            CodeLetter.Of(letter).ShouldBeNull();
        }

        CodeLetter.Of('g')!.Low.ShouldBe(5.6);
        Should.Throw<ArgumentOutOfRangeException>(() => CodeLetter.Holding(-0.1));
        Should.Throw<ArgumentOutOfRangeException>(() => CodeLetter.Holding(double.NaN));
    }

    [Fact]
    public void A_current_at_or_below_the_setting_has_no_trip_time() =>
        Should.Throw<ArgumentOutOfRangeException>(() => TripClass.Of("10")!.TripTime(1));

    [Fact]
    public void A_full_load_current_that_the_table_does_not_have_is_none()
    {
        FullLoadCurrent.Of(7, LineVoltage.FromVolts(460)).ShouldBeNull();
        FullLoadCurrent.Of(7.5, LineVoltage.FromVolts(400)).ShouldBeNull();
        FullLoadCurrent.Of(5, LineVoltage.FromVolts(115)).ShouldBeNull();
    }
}
