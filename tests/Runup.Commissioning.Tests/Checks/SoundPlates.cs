using Runup.Commissioning.Checks;
using Runup.Commissioning.Survey;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Commissioning.Tests.Checks;

/// <summary>Plates of every usual kind, invented, with figures as motors of that kind have them: none is blamed in any of its columns.</summary>
public sealed class SoundPlates
{
    public static TheoryData<string> Names => [.. All.Keys];

    private static Dictionary<string, PlateSurvey> All { get; } = new()
    {
        ["230/400 V in star"] = Plates.Of("1.5 kW", 400, 3.4, 50, 1430, 4, 0.77, 82.8, WindingConnection.Star, efficiencyClass: "IE2") with { OtherRatings = [Plates.Other(230, WindingConnection.Delta, 5.9)] },
        ["230/400 V in delta"] = Plates.Of("1.5 kW", 230, 5.9, 50, 1430, 4, 0.77, 82.8, WindingConnection.Delta) with { OtherRatings = [Plates.Other(400, WindingConnection.Star, 3.4)] },
        ["400/690 V in delta"] = Plates.Of("22 kW", 400, 41, 50, 1470, 4, 0.84, 93, WindingConnection.Delta, efficiencyClass: "IE3-93.0 %") with { OtherRatings = [Plates.Other(690, WindingConnection.Star, 23.7)] },
        ["400/690 V in star"] = Plates.Of("22 kW", 690, 23.7, 50, 1470, 4, 0.84, 93, WindingConnection.Star) with { OtherRatings = [Plates.Other(400, WindingConnection.Delta, 41)] },
        ["50/60 Hz, the column of 50 Hz"] = Double50,
        ["50/60 Hz, the column of 60 Hz"] = Double60,
        ["265/460 V of 60 Hz beside 230/400 V of 50 Hz"] = Plates.Of("0.86 kW", 460, 1.75, 60, 1720, 4, 0.75, connection: WindingConnection.Star) with
        {
            OtherRatings = [Plates.Other(265, WindingConnection.Delta, 3.03, 60), Plates.Other(400, WindingConnection.Star, 1.8, 50), Plates.Other(230, WindingConnection.Delta, 3.1, 50)],
        },
        ["nine leads at 460 V"] = Nine with { OtherRatings = [Plates.Other(230, null, 24.8)] },
        ["nine leads at 230 V"] = Plates.Of("10 hp", 230, 24.8, 60, 1760, 4, 0.82, 91.7, serviceFactor: 1.15) with { OtherRatings = [Plates.Other(460, null, 12.4)], DesignLetter = new("B") },
        ["twelve leads, delta at 230 V"] = Plates.Of("25 hp", 230, 60, 60, 1770, 4, 0.83, 93.6, WindingConnection.Delta, 1.15) with
        {
            OtherRatings = [Plates.Other(460, WindingConnection.Delta, 30), Plates.Other(400, WindingConnection.Star, 34.6)],
        },
        ["208-230/460 V at 208 V"] = Plates.Of("5 hp", 208, 14.6, 60, 1750, serviceFactor: 1.15) with { OtherRatings = [Plates.Other(230, null, 13.2), Plates.Other(460, null, 6.6)] },
        ["575 V, design A"] = Plates.Of("50 hp", 575, 47.4, 60, 1775, 4, 0.84, 94.5, serviceFactor: 1.15) with { DesignLetter = new("A"), CodeLetter = new("G"), EfficiencyClass = new("NEMA Premium") },
        ["design C"] = Plates.Of("20 hp", 460, 25.5, 60, 1755, 4, null, 91) with { DesignLetter = new("C"), CodeLetter = new("G") },
        ["design D with its slip and losses"] = Plates.Of("20 hp", 460, 27, 60, 1640, 4, null, 84) with { DesignLetter = new("D"), LockedRotorTorque = new(Ratio.FromValue(2.8)), BreakdownTorque = new(Ratio.FromValue(2.75)) },
        ["metric horsepower"] = Plates.Of("10 PS", 380, 15.5, 50, 1440, 4, 0.85),
        ["a third of a horsepower"] = Plates.Of("0.33 hp", 230, 1.6, 60, 1140, serviceFactor: 1.35),
        ["87 Hz, the column of 230 V"] = Plates.Of("4 kW", 230, 14.2, 50, 1445, 4, 0.81, 88.6, WindingConnection.Delta) with { OtherRatings = [Plates.Other(400, WindingConnection.Star, 8.2), Plates.Other(400, WindingConnection.Delta, 14.2, 87)], InverterDuty = new(true) },
        ["87 Hz, its own column"] = Plates.Of("6.9 kW", 400, 14.2, 87, 2555, 4, 0.81, connection: WindingConnection.Delta) with { OtherRatings = [Plates.Other(230, WindingConnection.Delta, 14.2, 50)] },
        ["an old plate with every mark"] = Plates.Of("15 kW", 400, 32, 50, 955, 6, 0.78, 88.5, WindingConnection.Star) with { Duty = new("S3 40%"), Cooling = new("IC 0141"), InsulationClass = new("F/B"), DesignLetter = new("N") },
        ["355 kW"] = Plates.Of("355 kW", 690, 343, 50, 2982, 2, 0.90, 96.0, WindingConnection.Delta, efficiencyClass: "IE3"),
        ["200 Hz"] = Plates.Of("7.5 kW", 380, 17, 200, 11700, 2, 0.8, connection: WindingConnection.Delta),
    };

    private static PlateSurvey Double50 => Plates.Of("7.5 kW", 400, 14.4, 50, 1460, 4, 0.83, 90.4, WindingConnection.Delta, efficiencyClass: "IE3") with
    {
        OtherRatings = [Plates.Other(690, WindingConnection.Star, 8.3, 50), Column60],
    };

    private static PlateSurvey Double60 => Plates.Of("8.6 kW", 460, 14.2, 60, 1760, 4, 0.83, 91, WindingConnection.Delta) with
    {
        OtherRatings = [Plates.Other(690, WindingConnection.Star, 8.3, 50), Plates.Other(400, WindingConnection.Delta, 14.4, 50)],
    };

    private static OtherRating Column60 => Plates.Other(460, WindingConnection.Delta, 14.2, 60) with { Output = new(ShaftPower.FromWatts(8600)), Speed = new(ShaftSpeed.FromRpm(1760)) };

    private static PlateSurvey Nine => Plates.Of("10 hp", 460, 12.4, 60, 1760, 4, 0.82, 91.7, serviceFactor: 1.15) with { DesignLetter = new("B"), CodeLetter = new("H"), LockedRotorCurrent = new(Ratio.FromValue(6.5)) };

    [Theory]
    [MemberData(nameof(Names))]
    public void No_sound_plate_is_blamed(string name) => PlateFindings.Ids(All[name]).ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_sound_plate_has_a_circuit(string name) =>
        CircuitFit.Of(NameplateReading.Of(PlateContext.For(Plates.Motor(All[name])))!).ShouldBeOfType<CircuitFit.Fitted>();

    [Fact]
    public void A_figure_copied_from_the_column_beside_is_named_as_such()
    {
        Sentence(Double50 with { Output = Plates.Output("8.6 kW") }, "plate.power-balance").ShouldContain("most likely the output is 7.5 kW (8.6 kW is printed for 460 V, 60 Hz)");
        Sentence(Double50 with { Voltage = new(LineVoltage.FromVolts(460)) }, "plate.power-balance").ShouldContain("most likely the voltage is 400 V (460 V is that of another column)");
        Sentence(Double50 with { Current = new(LineCurrent.FromAmperes(8.3)) }, "plate.line-phase-current").ShouldContain("8.3 A is printed for 690 V");
        Sentence(Nine with { Voltage = new(LineVoltage.FromVolts(230)), OtherRatings = [Plates.Other(230, null, 24.8)] }, "plate.voltage-connection").ShouldContain("most likely the voltage is 460 V");
    }

    [Fact]
    public void A_speed_of_the_other_frequency_is_not_taken_for_a_wrong_frequency_where_its_column_says_otherwise()
    {
        var plate = Double50 with { Speed = new(ShaftSpeed.FromRpm(1760)) };
        var finding = PlateFindings.Of(plate, "plate.base-frequency").ShouldBeOfType<CheckResult.Violated>();
        finding.Title.ShouldBe("Speed and frequency from two columns of the plate");
        finding.Explanation.ShouldContain("most likely the speed is about 1460 rpm");
    }

    private static string Sentence(PlateSurvey plate, string id) => PlateFindings.Of(plate, id).ShouldBeOfType<CheckResult.Violated>().Explanation;
}
