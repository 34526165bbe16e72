using Runup.Engineering.Mechanics;
using Runup.Engineering.Motors;
using Runup.Engineering.Starting;
using Runup.Engineering.Supply;
using Runup.Engineering.Tests.Motors;
using Runup.Engineering.Thermal;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Starting;

/// <summary>Closed forms at the edges of what they hold for; their published examples are in the outside tests.</summary>
public sealed class ClosedFormTests
{
    [Fact]
    public void An_unloaded_start_integrated_step_by_step_takes_as_long()
    {
        var start = UnloadedStart.Of(Circuits.Pump, Inertia.FromKilogramSquareMetres(0.155));
        var (time_s, slip, step) = (0.0, 1.0, 1e-5);
        for (; slip > 0.05; slip -= step)
        {
            var peak = start.Largest.Slip.Ratio;
            var torque = 2 * start.Largest.Torque.NewtonMetres / ((slip / peak) + (peak / slip));
            time_s += 0.155 * start.Synchronous.RadiansPerSecond * step / torque;
        }

        start.Time(Slip.FromRatio(1), Slip.FromRatio(0.05)).Seconds.ShouldBe(time_s, 1e-4);
    }

    [Fact]
    public void A_torque_that_drives_away_from_the_speed_asked_for_is_a_mistake() =>
        Should.Throw<ArgumentException>(() => EquationOfMotion.Time(Inertia.FromKilogramSquareMetres(1), Torque.FromNewtonMetres(-1), ShaftSpeed.FromRpm(0), ShaftSpeed.FromRpm(100)));

    [Theory]
    [InlineData(110)]
    [InlineData(-10)]
    public void No_time_leads_beyond_the_steady_speed_or_behind_the_beginning(double rpm) =>
        Should.Throw<ArgumentException>(() => EquationOfMotion.TimeTowards(Inertia.FromKilogramSquareMetres(1), Torque.FromNewtonMetres(1), ShaftSpeed.FromRpm(0), ShaftSpeed.FromRpm(100), ShaftSpeed.FromRpm(rpm)));

    [Theory]
    [InlineData(100)]
    [InlineData(1000)]
    public void A_flywheel_cannot_hold_the_torque_below_what_it_was_nor_need_it_at_the_peak(double limit) =>
        Should.Throw<ArgumentException>(() => LoadEqualizer.InertiaFor(
            SlipLaw.Of(Plates.Pump), Torque.FromNewtonMetres(49), Torque.FromNewtonMetres(200), Torque.FromNewtonMetres(1000), Torque.FromNewtonMetres(limit), Duration.FromSeconds(1)));

    [Theory]
    [InlineData(30, 30)]
    [InlineData(30, 60)]
    public void Rises_that_warm_ever_faster_or_not_at_all_have_no_time_constant(double first, double second) =>
        Should.Throw<ArgumentException>(() => HeatingCurve.Through(Duration.FromSeconds(60), first, second));

    [Fact]
    public void Loaded_for_ever_a_motor_has_its_continuous_rating()
    {
        var motor = new OverloadByHeating(Duration.FromSeconds(100), Duration.FromSeconds(200), Fraction.FromRatio(0.4));

        motor.ShortTime(Duration.FromSeconds(1e6)).Value.ShouldBe(1, 1e-9);
        motor.Intermittent(Duration.FromSeconds(10), Duration.FromSeconds(0)).Value.ShouldBe(1, 1e-9);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 1)]
    [InlineData(2.5, 0.915)]
    [InlineData(5, 0.75)]
    public void Output_at_an_unbalance(double percent, double output) =>
        VoltageUnbalance.PermittedOutput(Fraction.FromPercent(percent))!.Value.Ratio.ShouldBe(output, 1e-9);
}
