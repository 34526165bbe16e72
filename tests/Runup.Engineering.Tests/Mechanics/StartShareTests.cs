using Runup.Engineering.Drives;
using Runup.Engineering.Loads;
using Runup.Engineering.Mechanics;
using Runup.Engineering.Motors.Ensemble;
using Runup.Engineering.Tests.Motors;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Mechanics;

public sealed class StartShareTests
{
    private static readonly MotorEnsemble Motors = MotorEnsemble.Of(Plates.Pump)!;
    private static readonly LineCurrent Limit = LineCurrent.FromAmperes(21.6);

    private static DrivenMachine Fan { get; } = new()
    {
        Load = new LoadCurve.Quadratic(Torque.FromNewtonMetres(42), ShaftSpeed.FromRpm(1460)),
        MachineInertia = Inertia.FromKilogramSquareMetres(0.12),
        MotorInertia = Inertia.FromKilogramSquareMetres(0.035),
        Breakaway = Torque.FromNewtonMetres(8),
    };

    [Fact]
    public void Too_little_boost_and_too_much_both_keep_motors_from_starting()
    {
        var little = Starts(0.002, 40);
        var enough = Starts(0.035, 40);
        enough.ShouldBeGreaterThan(0.8);
        little.ShouldBeLessThan(enough);
        Starts(0.12, 40).ShouldBeLessThan(0.05);
    }

    [Fact]
    public void Without_a_torque_to_break_away_only_too_much_does()
    {
        Starts(0, null).ShouldBe(1);
        Starts(0.12, null).ShouldBeLessThan(0.05);
    }

    [Fact]
    public void A_torque_that_no_motor_has_starts_none() => Starts(0.03, 400).ShouldBe(0);

    [Fact]
    public void On_the_square_curve_fewer_follow_a_steeper_ramp()
    {
        double Follow(double seconds) => RunUpShare.Of(Motors, Line(VoltageShape.Quadratic, 0.026), Fan, ElectricalFrequency.FromHertz(50), Duration.FromSeconds(seconds), Limit).Ratio;
        Follow(2).ShouldBeLessThan(Follow(8));
        Follow(8).ShouldBeLessThanOrEqualTo(Follow(30));
        RunUpShare.Of(Motors, Line(VoltageShape.Linear, 0.012), Fan, ElectricalFrequency.FromHertz(50), Duration.FromSeconds(8), Limit).Ratio.ShouldBeGreaterThan(0.95);
    }

    [Fact]
    public void Who_follows_a_ramp_has_started_before()
    {
        foreach (var boost in (double[])[0.01, 0.03, 0.06])
        {
            var line = Line(VoltageShape.Linear, boost);
            RunUpShare.Of(Motors, line, Fan, ElectricalFrequency.FromHertz(50), Duration.FromSeconds(8), Limit).Ratio
                .ShouldBeLessThanOrEqualTo(StartShare.Of(Motors, line, Fan.BreakawayAtMotor, Limit).Ratio);
        }
    }

    private static double Starts(double boost, double? breakaway_Nm) =>
        StartShare.Of(Motors, Line(VoltageShape.Linear, boost), breakaway_Nm is { } torque ? Torque.FromNewtonMetres(torque) : null, Limit).Ratio;

    private static VoltsPerHertz Line(VoltageShape shape, double boost) => Motors.StraightLine with { Shape = shape, Boost = Fraction.FromRatio(boost) };
}
