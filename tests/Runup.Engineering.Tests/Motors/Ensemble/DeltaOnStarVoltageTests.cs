using Runup.Engineering.Motors;
using Runup.Engineering.Motors.Ensemble;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Motors.Ensemble;

public sealed class DeltaOnStarVoltageTests
{
    private static readonly Nameplate Delta = Plates.Pump with { Voltage = LineVoltage.FromVolts(230), Current = LineCurrent.FromAmperes(25) };
    private static readonly DeltaOnStarVoltage InDelta = DeltaOnStarVoltage.Of(MotorEnsemble.Of(Delta)!, WindingConnection.Delta);

    [Fact]
    public void Torque_stays_and_power_grows_by_root_three_less_what_iron_and_fan_take_more()
    {
        var rated = Delta.RatedTorque.NewtonMetres;
        InDelta.Frequency.Hertz.ShouldBe(86.6, 0.05);
        InDelta.Voltage.Volts.ShouldBe(398.4, 0.1);
        InDelta.RatedCurrent.Amperes.ShouldBe(25);
        InDelta.Torque.P50.NewtonMetres.ShouldBeInRange(0.93 * rated, rated);
        (InDelta.Power.P50.Watts / Delta.Output.Watts).ShouldBeInRange(1.62, Math.Sqrt(3));
        InDelta.Current.P50.Amperes.ShouldBeInRange(25, 25 * 1.06);
    }

    [Fact]
    public void Slip_in_rpm_is_about_that_at_rated_frequency() =>
        (InDelta.Frequency.Hertz * 30 - InDelta.Speed.P50.Rpm).ShouldBe(1500 - Delta.Speed.Rpm, 6);

    [Fact]
    public void Read_from_the_column_of_the_star_it_is_the_same_motor()
    {
        var inStar = DeltaOnStarVoltage.Of(
            MotorEnsemble.Of(Delta with { Voltage = LineVoltage.FromVolts(230 * Math.Sqrt(3)), Current = LineCurrent.FromAmperes(25 / Math.Sqrt(3)) })!, WindingConnection.Star);
        inStar.Voltage.Volts.ShouldBe(InDelta.Voltage.Volts, 1e-6);
        inStar.RatedCurrent.Amperes.ShouldBe(25, 1e-6);
        inStar.Current.P50.Amperes.ShouldBe(InDelta.Current.P50.Amperes, 0.3);
        inStar.Torque.P50.NewtonMetres.ShouldBe(InDelta.Torque.P50.NewtonMetres, 0.3);
    }

    [Fact]
    public void The_breakdown_torque_is_more_than_at_rated_frequency_because_the_stator_resistance_counts_less() =>
        InDelta.Breakdown.P50.Value.ShouldBeGreaterThan(MotorBands.Of(MotorEnsemble.Of(Delta)!).BreakdownTorqueRatio.P50.Value);
}
