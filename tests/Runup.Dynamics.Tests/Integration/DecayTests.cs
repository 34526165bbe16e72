using Runup.Dynamics.Integration;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Tests.Integration;

public sealed class DecayTests
{
    [Theory]
    [InlineData(-25)]
    [InlineData(-6)]
    [InlineData(-1)]
    [InlineData(-0.3)]
    [InlineData(0.7)]
    public void Decay_and_its_averages_are_those_of_their_closed_forms(double z)
    {
        var decay = Decay<One>.Of(z);

        var phi1 = (Math.Exp(z) - 1) / z;
        var phi2 = (phi1 - 1) / z;
        var phi3 = (phi2 - 0.5) / z;
        ((double)decay.Exponential).ShouldBe(Math.Exp(z), 1e-6);
        ((double)decay.Phi1).ShouldBe(phi1, 1e-6);
        ((double)decay.Phi2).ShouldBe(phi2, 1e-6);
        ((double)decay.Phi3).ShouldBe(phi3, 1e-6);
        ((double)decay.HalfExponential).ShouldBe(Math.Exp(z / 2), 1e-6);
        ((double)decay.HalfPhi1).ShouldBe((Math.Exp(z / 2) - 1) / (z / 2), 1e-6);
    }

    [Fact]
    public void Without_decay_they_are_the_weights_of_the_classical_method()
    {
        var decay = Decay<One>.Of(0);

        ((double)decay.Exponential).ShouldBe(1);
        ((double)decay.Phi1).ShouldBe(1, 1e-15);
        ((double)decay.Phi2).ShouldBe(0.5, 1e-15);
        ((double)decay.Phi3).ShouldBe(1.0 / 6, 1e-15);
    }

    /// <summary>x₆ settles towards a swing with a rate far beyond 1/step: v = sin(10t) once the beginning is forgotten.</summary>
    private readonly struct Follows : IRates<One>
    {
        internal const double PerS = 20_000;

        public void At(
            One x1, One x2, One x3, One x4, One x5, One x6,
            out One d1, out One d2, out One d3, out One d4, out One d5, out One d6)
        {
            d1 = -10 * (double)x2;
            d2 = 10 * (double)x1;
            (d3, d4, d5) = (0, 0, 0);
            d6 = (PerS * ((double)x2 - x6)) + (10 * (double)x1);
        }
    }

    [Fact]
    public void A_state_that_settles_twenty_times_within_a_step_is_followed()
    {
        var follows = default(Follows);
        var states = new SixStates<One> { X1 = 1, X6 = 0.5 };
        var stepper = default(ExponentialRungeKutta4<One>);
        stepper.Follow(Follows.PerS, 1e-3);

        for (var step = 0; step < 1000; step++)
        {
            stepper.Step(ref follows, ref states);
        }

        states.X2[0].ShouldBe(Math.Sin(10), 1e-9);
        states.X6[0].ShouldBe(Math.Sin(10), 1e-6);
    }
}
