using Runup.Dynamics.Integration;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Tests.Integration;

public sealed class StepperTests
{
    /// <summary>x₁ swings with x₂, x₃ falls, x₄ rises with x₅, x₆ rests: y has a closed form for each.</summary>
    private readonly struct Known : IRates<One>
    {
        public void At(
            One x1, One x2, One x3, One x4, One x5, One x6,
            out One d1, out One d2, out One d3, out One d4, out One d5, out One d6)
        {
            d1 = -300.0 * (double)x2;
            d2 = 300 * (double)x1;
            d3 = -50 * (double)x3;
            d4 = x5;
            d5 = 2;
            d6 = 0;
        }
    }

    private static SixStates<One> Begin => new() { X1 = 1, X2 = 0, X3 = 1, X4 = 0, X5 = 1, X6 = 7 };

    [Fact]
    public void Runge_Kutta_gains_sixteen_times_the_accuracy_from_half_the_step()
    {
        var coarse = Error(100);
        var fine = Error(200);

        (coarse / fine).ShouldBe(16, 1.5);

        static double Error(int steps)
        {
            var known = default(Known);
            var states = Begin;
            for (var i = 0; i < steps; i++)
            {
                default(RungeKutta4<One>).Step(ref known, ref states, 0.1 / steps);
            }

            return Math.Abs(states.X1 - Math.Cos(30)) + Math.Abs(states.X2 - Math.Sin(30));
        }
    }

    [Fact]
    public void Dormand_Prince_keeps_its_tolerance_over_any_length()
    {
        var known = default(Known);
        var states = Begin;

        new DormandPrince(1e-9, 1e-10).Step(ref known, ref states, 1);

        states.X1[0].ShouldBe(Math.Cos(300), 2e-6);
        states.X2[0].ShouldBe(Math.Sin(300), 2e-6);
        states.X3[0].ShouldBe(Math.Exp(-50), 1e-9);
        states.X4[0].ShouldBe(2, 1e-9);
        states.X5[0].ShouldBe(3, 1e-9);
        states.X6[0].ShouldBe(7);
    }

    [Fact]
    public void Dormand_Prince_gives_up_where_the_solution_runs_away()
    {
        var runsAway = default(RunsAway);
        var states = new SixStates<One> { X1 = 1 };

        new DormandPrince(1e-9, 1e-10).Step(ref runsAway, ref states, 2);

        states.Finite.IsSet(0).ShouldBeFalse();
    }

    /// <summary>y′ = y², which leaves every bound at t = 1.</summary>
    private readonly struct RunsAway : IRates<One>
    {
        public void At(
            One x1, One x2, One x3, One x4, One x5, One x6,
            out One d1, out One d2, out One d3, out One d4, out One d5, out One d6)
        {
            d1 = x1 * x1;
            d2 = d3 = d4 = d5 = d6 = 0;
        }
    }
}
