using Runup.Engineering.Loads;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Loads;

public sealed class LoadCurveTests
{
    private static readonly Torque Torque = Torque.FromNewtonMetres(40);
    private static readonly ShaftSpeed Speed = ShaftSpeed.FromRpm(1000);

    private static double At(LoadCurve curve, double rpm) => curve.At(ShaftSpeed.FromRpm(rpm)).NewtonMetres;

    [Theory]
    [InlineData(500, 40, 10, 20, 40)]
    [InlineData(1000, 40, 40, 40, 40)]
    [InlineData(2000, 40, 160, 80, 20)]
    [InlineData(-500, -40, -10, -20, -40)]
    public void Shapes(double rpm, double constant, double quadratic, double linear, double constantPower)
    {
        At(new LoadCurve.Constant(Torque), rpm).ShouldBe(constant, 1e-9);
        At(new LoadCurve.Quadratic(Torque, Speed), rpm).ShouldBe(quadratic, 1e-9);
        At(new LoadCurve.Linear(Torque, Speed), rpm).ShouldBe(linear, 1e-9);
        At(new LoadCurve.ConstantPower(Torque, Speed), rpm).ShouldBe(constantPower, 1e-9);
    }

    [Theory]
    [InlineData(0.001, 10)]
    [InlineData(250, 15)]
    [InlineData(500, 20)]
    [InlineData(750, 30)]
    [InlineData(1000, 40)]
    [InlineData(3000, 40)]
    [InlineData(-750, -30)]
    public void A_table_is_linear_between_its_points_and_flat_beyond(double rpm, double torque)
    {
        var table = new LoadCurve.Table(
        [
            (ShaftSpeed.FromRpm(0), Torque.FromNewtonMetres(10)),
            (ShaftSpeed.FromRpm(500), Torque.FromNewtonMetres(20)),
            (ShaftSpeed.FromRpm(1000), Torque.FromNewtonMetres(40)),
        ]);
        At(table, rpm).ShouldBe(torque, 1e-4);
    }

    [Fact]
    public void A_table_whose_speeds_do_not_ascend_is_refused() =>
        Should.Throw<ArgumentException>(() => new LoadCurve.Table([(Speed, Torque), (Speed, Torque)]));
}
