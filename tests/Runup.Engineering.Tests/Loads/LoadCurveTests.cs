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

    [Theory]
    [InlineData(-500)]
    [InlineData(0)]
    [InlineData(500)]
    public void A_lifted_mass_pulls_the_same_way_whichever_way_the_drum_turns(double rpm)
    {
        var hoist = LoadCurve.Hoisting.Of(Mass.FromKilograms(500), Length.FromMetres(0.3));

        At(hoist, rpm).ShouldBe(500 * 9.80665 * 0.15, 1e-9);
        At(hoist.Reversed, rpm).ShouldBe(-500 * 9.80665 * 0.15, 1e-9);
    }

    [Theory]
    [InlineData(-700)]
    [InlineData(300)]
    [InlineData(1400)]
    public void Three_machines_ask_for_three_times_the_torque(double rpm)
    {
        LoadCurve[] curves =
        [
            new LoadCurve.Constant(Torque), new LoadCurve.Linear(Torque, Speed), new LoadCurve.Quadratic(Torque, Speed), new LoadCurve.ConstantPower(Torque, Speed),
            new LoadCurve.Hoisting(Torque), new LoadCurve.Table([(ShaftSpeed.FromRpm(0), Torque), (Speed, Torque.FromNewtonMetres(7))]),
        ];

        curves.ShouldAllBe(curve => Math.Abs(At(curve.Times(3), rpm) - (3 * At(curve, rpm))) < 1e-9);
    }
}
