using Runup.Engineering.Loads;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Loads;

public sealed class DutyCycleTests
{
    private static readonly Fraction All = Fraction.FromRatio(1);

    private static DutySegment Of(double seconds, double torque) => new(Duration.FromSeconds(seconds), Torque.FromNewtonMetres(torque));

    [Fact]
    public void A_constant_torque_is_its_own_mean() => DutyCycle.RmsTorque([Of(1, 5), Of(2, 5)], All).NewtonMetres.ShouldBe(5, 1e-12);

    [Fact]
    public void The_sign_of_the_torque_does_not_matter() => DutyCycle.RmsTorque([Of(1, 3), Of(1, -3)], All).NewtonMetres.ShouldBe(3, 1e-12);

    [Fact]
    public void A_rest_that_hardly_cools_raises_the_mean()
    {
        var rest = Of(3, 0) with { IsRest = true };
        DutyCycle.RmsTorque([Of(1, 6), rest], All).NewtonMetres.ShouldBe(3, 1e-12);
        DutyCycle.RmsTorque([Of(1, 6), rest], Fraction.FromRatio(1 / 3.0)).NewtonMetres.ShouldBe(6 / Math.Sqrt(2), 1e-12);
    }

    [Fact]
    public void A_cycle_without_length_is_refused() => Should.Throw<ArgumentException>(() => DutyCycle.RmsTorque([], All));
}
