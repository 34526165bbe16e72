using Runup.Engineering.Thermal;
using Runup.Quantities;

namespace Runup.Outside.Tests.Engineering;

/// <summary>Textbook examples of heating. Read in public transcriptions of the books' examples with their executed output.</summary>
public sealed class HeatingExamplesTests
{
    [Fact]
    public void Short_time_and_intermittent_rating()
    {
        // Dubey, Ex. 4.4 p. 55: 20 kW, heating 60 min, cooling 90 min, no constant loss: 51 kW for 10 min (re-solved 51.04); 10 on, 10 off: 25.14 kW.
        var motor = new OverloadByHeating(Minutes(60), Minutes(90), Fraction.FromRatio(0));

        (20 * motor.ShortTime(Minutes(10)).Value).ShouldBe(51.04, 0.005);
        (20 * motor.Intermittent(Minutes(10), Minutes(10)).Value).ShouldBe(25.14, 0.005);
    }

    [Fact]
    public void Continuous_rating_from_a_half_hour_rating()
    {
        // Dubey, Ex. 4.5 p. 56: 100 kW for half an hour, time constant 80 min, highest efficiency at 70 % load: 48.37 kW continuously.
        var motor = new OverloadByHeating(Minutes(80), Minutes(80), Fraction.FromRatio(0.7 * 0.7));

        (100 / motor.ShortTime(Minutes(30)).Value).ShouldBe(48.37, 0.005);
    }

    [Fact]
    public void Time_constant_and_final_rise_from_two_readings()
    {
        // Gupta & Singhal, Ex. 4.1 p. 49: 30 K at 40 min, 45 K at 80 min: 57.7 min, 60 K.
        var curve = HeatingCurve.Through(Minutes(40), 30, 45);

        (curve.TimeConstant.Seconds / 60).ShouldBe(57.7, 0.05);
        curve.FinalRise_K.ShouldBe(60, 0.05);
        curve.After_K(Minutes(80)).ShouldBe(45, 1e-9);
    }

    private static Duration Minutes(double minutes) => Duration.FromSeconds(60 * minutes);
}
