using Runup.Dynamics.Integration;

namespace Runup.Dynamics.Tests.Integration;

public sealed class ShaftMotionTests
{
    private const double FrictionNm = 2;

    [Theory]
    [InlineData(1.0, 0.5)]
    [InlineData(0.013, 0.0065)]
    [InlineData(-1.0, 0.5)]
    public void A_shaft_that_friction_brakes_stops_at_the_exact_moment_and_stays(double speed, double stopsAtS)
    {
        var rates = new Shaft();
        var motion = ShaftMotion.Moving(speed);
        var states = new SixStates { X5 = speed };

        motion.Advance(default(RungeKutta4), ref rates, ref states, 1);

        motion.Held.ShouldBeTrue();
        states.X5.ShouldBe(0);
        states.X4.ShouldBe(0.5 * speed * stopsAtS, 1e-9);
    }

    [Fact]
    public void A_held_shaft_breaks_away_at_the_moment_at_which_the_torque_reaches_its_friction()
    {
        // Torque rises with 10 N·m/s: breaks away at 0.2 s, then ω = 5 (t − 0.2)², J = 1.
        var rates = new Shaft { TorquePerS = 10 };
        var motion = ShaftMotion.AtRest;
        var states = default(SixStates);

        motion.Advance(default(RungeKutta4), ref rates, ref states, 0.5);

        motion.Held.ShouldBeFalse();
        states.X5.ShouldBe(5 * 0.3 * 0.3, 1e-9);
    }

    [Fact]
    public void A_shaft_passes_through_zero_where_the_torque_is_more_than_the_friction()
    {
        // −5 N·m against a shaft at 3.5 rad/s: with friction −7, then from rest −5 + 2 = −3.
        var rates = new Shaft { ConstantNm = -5 };
        var motion = ShaftMotion.Moving(3.5);
        var states = new SixStates { X5 = 3.5 };

        motion.Advance(default(RungeKutta4), ref rates, ref states, 1);

        states.X5.ShouldBe(-3 * 0.5, 1e-9);
    }

    [Fact]
    public void A_shaft_without_friction_obeys_the_least_torque()
    {
        var rates = new Shaft { ConstantNm = 1e-6, FrictionFreely = true };
        var motion = ShaftMotion.AtRest;
        var states = default(SixStates);

        motion.Advance(default(RungeKutta4), ref rates, ref states, 1);

        states.X5.ShouldBe(1e-6, 1e-12);
    }

    /// <summary>Inertia 1 kg·m²; the torque grows with the first state, which counts time; the fourth is the angle.</summary>
    private struct Shaft : IShaftRates
    {
        private double frictionNm;
        private double perInertia;

        internal double ConstantNm { get; init; }

        internal double TorquePerS { get; init; }

        internal bool FrictionFreely { get; init; }

        public readonly double HoldLowestNm => FrictionFreely ? 0 : -FrictionNm;

        public readonly double HoldHighestNm => FrictionFreely ? 0 : FrictionNm;

        public void Hold() => perInertia = 0;

        public void Release(int direction)
        {
            perInertia = 1;
            frictionNm = FrictionFreely ? 0 : direction * FrictionNm;
        }

        public readonly double DrivingTorqueNm(in SixStates states) => ConstantNm + (TorquePerS * states.X1);

        public readonly void At(
            double x1, double x2, double x3, double x4, double x5, double x6,
            out double d1, out double d2, out double d3, out double d4, out double d5, out double d6)
        {
            d1 = 1;
            d2 = d3 = d6 = 0;
            d4 = x5;
            d5 = perInertia * (ConstantNm + (TorquePerS * x1) - frictionNm);
        }
    }
}
