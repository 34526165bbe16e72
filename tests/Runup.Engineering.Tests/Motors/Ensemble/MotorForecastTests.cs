using Runup.Engineering.Motors.Ensemble;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Motors.Ensemble;

public sealed class MotorForecastTests
{
    private static readonly MotorEnsemble Pump = MotorEnsemble.Of(Plates.Pump)!;
    private static readonly MotorEnsemble Textbook = MotorEnsemble.Of(Plates.Pump, PlateTrust.Exact)!;

    private static double NoLoad(MotorEnsemble ensemble, double hertz, double boost = 0) => MotorForecast.NoLoadCurrent(
        ensemble, ensemble.StraightLine with { Boost = Fraction.FromRatio(boost) }, ElectricalFrequency.FromHertz(hertz)).P50.Amperes;

    [Fact]
    public void Without_boost_the_no_load_current_is_flat_and_sinks_a_little_at_low_frequency()
    {
        NoLoad(Pump, 25).ShouldBe(NoLoad(Pump, 50), 0.02 * NoLoad(Pump, 50));
        NoLoad(Pump, 5).ShouldBeLessThan(NoLoad(Pump, 25));
        NoLoad(Pump, 5).ShouldBeGreaterThan(0.85 * NoLoad(Pump, 25));
    }

    [Fact]
    public void Too_much_boost_saturates_the_iron_and_the_current_rises_as_frequency_falls()
    {
        NoLoad(Pump, 5, 0.1).ShouldBeGreaterThan(NoLoad(Pump, 10, 0.1));
        var (real, linear) = (NoLoad(Pump, 5, 0.05) / NoLoad(Pump, 5), NoLoad(Textbook, 5, 0.05) / NoLoad(Textbook, 5));
        real.ShouldBeGreaterThan(1.2 * linear);
    }

    [Fact]
    public void Above_rated_frequency_the_no_load_current_falls_and_so_does_the_breakdown_torque()
    {
        NoLoad(Pump, 60).ShouldBeLessThan(0.85 * NoLoad(Pump, 50));
        double Breakdown(double hertz) => MotorForecast.BreakdownMargin(Pump, Pump.StraightLine, ElectricalFrequency.FromHertz(hertz)).P50.Value;

        // Over rated power the torque asked for goes with 1/f and breakdown nearly with 1/f², so that the margin goes with about 1/f; the stator resistance counts less at 100 Hz.
        (Breakdown(100) / Breakdown(50)).ShouldBe(0.55, 0.06);
    }

    [Fact]
    public void Rated_torque_is_broken_away_with_a_few_per_cent_and_about_rated_current()
    {
        var boost = MotorForecast.Boost(Pump, Pump.StraightLine, Plates.Pump.RatedTorque).ShouldNotBeNull();
        boost.Boost.P50.Percent.ShouldBeInRange(1, 8);
        boost.Current.P50.Amperes.ShouldBe(14.4, 1.5);
        boost.Boost.P05.Ratio.ShouldBeLessThan(boost.Boost.P95.Ratio);
        MotorForecast.Boost(Pump, Pump.StraightLine, Torque.FromNewtonMetres(2000)).ShouldBeNull();
    }
}
