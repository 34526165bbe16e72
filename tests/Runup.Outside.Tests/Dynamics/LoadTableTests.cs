using Runup.Dynamics;
using Runup.Engineering.Loads;
using Runup.Outside.Tests.Engineering;
using Runup.Quantities;

namespace Runup.Outside.Tests.Dynamics;

/// <summary>The engine, settled on the supply, at the loads of a measured table: against an independent solution of the circuit, the measured figures beside.</summary>
/// <remarks>Modelica Standard Library, IMC_withLosses; Haumer, Kral, Kapeller, Bäuml and Gragger, Modelica Conference 2009 (read); circuit solved by another program.</remarks>
public sealed class LoadTableTests
{
    private const double HalfPerCent = 0.005;

    [Theory]
    [InlineData(1845, 11.20, 1496, 10.82, 1496.4, 0.338, 0.7269)]
    [InlineData(5325, 13.87, 1490, 13.64, 1490.0, 0.646, 0.8728)]
    [InlineData(9372, 18.78, 1482, 18.61, 1482.3, 0.803, 0.9056)]
    [InlineData(14950, 27.05, 1471, 26.94, 1470.8, 0.879, 0.9110)]
    [InlineData(18500, 32.85, 1462, 32.85, 1462.9, 0.897, 0.9063)]
    [InlineData(22170, 39.35, 1453, 39.41, 1454.0, 0.904, 0.8978)]
    public void Current_speed_power_factor_and_efficiency_are_the_circuits(
        double outputW, double measuredA, double measuredRpm, double ampere, double rpm, double powerFactor, double efficiency)
    {
        var motor = PublishedMotors.Circuit("MSL-18k5") with
        {
            FrictionLoss = ElectricalPower.FromWatts(180),
            StrayLoss = ElectricalPower.FromWatts(102.22),
            RatedCurrent = LineCurrent.FromAmperes(32.85),
        };
        var torqueNm = outputW / (rpm * Math.PI / 30);
        var start = new LineStart(
            motor,
            new DrivenMachine
            {
                Load = new LoadCurve.Constant(Torque.FromNewtonMetres(torqueNm)),
                MachineInertia = Inertia.FromKilogramSquareMetres(0),
                MotorInertia = Inertia.FromKilogramSquareMetres(0.12),
            },
            motor.RatedVoltage,
            motor.RatedFrequency,
            ShaftSpeed.FromRpm(1500));

        start.Advance(Duration.FromSeconds(3));

        start.Current.Amperes.ShouldBe(ampere, HalfPerCent * ampere);
        start.Speed.Rpm.ShouldBe(rpm, HalfPerCent * rpm);
        (start.Input.Watts / (Math.Sqrt(3) * 400 * start.Current.Amperes)).ShouldBe(powerFactor, HalfPerCent * powerFactor);
        (torqueNm * start.Speed.RadiansPerSecond / start.Input.Watts).ShouldBe(efficiency, HalfPerCent * efficiency);

        // Measured: the linear circuit takes too little magnetizing current at light load.
        start.Current.Amperes.ShouldBe(measuredA, 0.035 * measuredA);
        start.Speed.Rpm.ShouldBe(measuredRpm, 1.2);
    }
}
