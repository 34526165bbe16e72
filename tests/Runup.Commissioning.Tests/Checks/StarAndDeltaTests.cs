using Runup.Commissioning.Checks;
using Runup.Commissioning.Survey;
using Runup.Engineering.Motors;

namespace Runup.Commissioning.Tests.Checks;

/// <summary>For which plates the run of the delta on the star's voltage is forecast.</summary>
public sealed class StarAndDeltaTests
{
    [Fact]
    public void A_winding_for_230_and_400_V_whichever_column_is_in_use()
    {
        var delta = Forecast(Plates.Of("1.5 kW", 230, 5.9, 50, 1430, 4, 0.77, 82.8, WindingConnection.Delta)).ShouldNotBeNull();
        var star = Forecast(Plates.Of("1.5 kW", 400, 3.4, 50, 1430, 4, 0.77, 82.8, WindingConnection.Star) with { OtherRatings = [Plates.Other(230, WindingConnection.Delta, 5.9)] }).ShouldNotBeNull();
        star.RatedCurrent.Amperes.ShouldBe(5.89, 0.01);
        star.Power.P50.Watts.ShouldBe(delta.Power.P50.Watts, 0.03 * delta.Power.P50.Watts);
    }

    [Fact]
    public void None_of_a_winding_for_400_and_690_V_or_for_two_voltages_one_to_two()
    {
        Forecast(Plates.Of("22 kW", 400, 41, 50, 1470, 4, 0.84, 93, WindingConnection.Delta) with { OtherRatings = [Plates.Other(690, WindingConnection.Star, 23.7)] }).ShouldBeNull();
        Forecast(Plates.Of("10 hp", 460, 12.4, 60, 1760, 4, 0.82, 91.7) with { OtherRatings = [Plates.Other(230, null, 24.8)] }).ShouldBeNull();
        Forecast(Plates.Of("25 hp", 230, 60, 60, 1770, 4, 0.83, 93.6, WindingConnection.Delta)).ShouldBeNull();
    }

    private static Engineering.Motors.Ensemble.DeltaOnStarVoltage? Forecast(PlateSurvey plate) => MotorContext.For(Plates.Motor(plate)).OnStarVoltage;
}
