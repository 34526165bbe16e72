using Runup.Dynamics.Integration;
using Runup.Dynamics.Lanes;

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
        rates.Move(0, Math.Sign(speed));
        var states = new SixStates<One> { X5 = speed };

        ShaftMotion.Advance<RungeKutta4<One>, Shaft, One>(default, ref rates, ref states, 1);

        ((double)rates.Direction).ShouldBe(0);
        states.X5[0].ShouldBe(0);
        states.X4[0].ShouldBe(0.5 * speed * stopsAtS, 1e-9);
    }

    [Fact]
    public void A_held_shaft_breaks_away_at_the_moment_at_which_the_torque_reaches_its_friction()
    {
        // Torque rises with 10 N·m/s: breaks away at 0.2 s, then ω = 5 (t − 0.2)², J = 1.
        var rates = new Shaft { TorquePerS = 10 };
        var states = default(SixStates<One>);

        ShaftMotion.Advance<RungeKutta4<One>, Shaft, One>(default, ref rates, ref states, 0.5);

        ((double)rates.Direction).ShouldBe(1);
        states.X5[0].ShouldBe(5 * 0.3 * 0.3, 1e-9);
    }

    [Fact]
    public void A_shaft_passes_through_zero_where_the_torque_is_more_than_the_friction()
    {
        // −5 N·m against a shaft at 3.5 rad/s: with friction −7, then from rest −5 + 2 = −3.
        var rates = new Shaft { ConstantNm = -5 };
        rates.Move(0, 1);
        var states = new SixStates<One> { X5 = 3.5 };

        ShaftMotion.Advance<RungeKutta4<One>, Shaft, One>(default, ref rates, ref states, 1);

        states.X5[0].ShouldBe(-3 * 0.5, 1e-9);
    }

    [Fact]
    public void A_shaft_without_friction_obeys_the_least_torque()
    {
        var rates = new Shaft { ConstantNm = 1e-6, FrictionFreely = true };
        var states = default(SixStates<One>);

        ShaftMotion.Advance<RungeKutta4<One>, Shaft, One>(default, ref rates, ref states, 1);

        states.X5[0].ShouldBe(1e-6, 1e-12);
    }

    /// <summary>Inertia 1 kg·m²; the torque grows with the first state, which counts time; the fourth is the angle.</summary>
    private struct Shaft : IShaftRates<One>
    {
        private double frictionNm;
        private double perInertia;

        internal double ConstantNm { get; init; }

        internal double TorquePerS { get; init; }

        internal bool FrictionFreely { get; init; }

        public One Direction { get; private set; }

        public readonly One HoldLowestNm => FrictionFreely ? 0 : -FrictionNm;

        public readonly One HoldHighestNm => FrictionFreely ? 0 : FrictionNm;

        public void Move(int lane, int direction)
        {
            Direction = direction;
            perInertia = direction == 0 ? 0 : 1;
            frictionNm = FrictionFreely ? 0 : direction * FrictionNm;
        }

        public readonly One DrivingTorqueNm(in SixStates<One> states) => ConstantNm + (TorquePerS * (double)states.X1);

        public readonly void At(
            One x1, One x2, One x3, One x4, One x5, One x6,
            out One d1, out One d2, out One d3, out One d4, out One d5, out One d6)
        {
            d1 = 1;
            d2 = d3 = d6 = 0;
            d4 = x5;
            d5 = perInertia * (ConstantNm + (TorquePerS * (double)x1) - frictionNm);
        }
    }
}
