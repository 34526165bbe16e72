using Runup.Engineering.Motors;
using Runup.Engineering.Motors.Ensemble;
using Runup.Quantities;

namespace Runup.Outside.Tests.Engineering;

/// <summary>
/// The measured load table of an 18.5 kW motor (Modelica Standard Library, IMC_withLosses; Haumer, Kral, Kapeller, Bäuml, Gragger, Modelica Conference 2009; read).
/// </summary>
public sealed class MeasuredLoadTableTests
{
    private static EquivalentCircuit Circuit => PublishedMotors.Circuit("MSL-18k5") with
    {
        FrictionLoss = ElectricalPower.FromWatts(180),
        StrayLoss = ElectricalPower.FromWatts(102.22),
        RatedCurrent = LineCurrent.FromAmperes(32.85),
    };

    [Theory]
    [InlineData(1845, 11.20, 1496, 0.327, 0.7250, 10.82, 1496.4, 0.338, 0.7269)]
    [InlineData(3549, 12.27, 1493, 0.506, 0.8268, 11.97, 1493.3, 0.515, 0.8306)]
    [InlineData(5325, 13.87, 1490, 0.636, 0.8698, 13.64, 1490.0, 0.646, 0.8728)]
    [InlineData(7521, 16.41, 1486, 0.741, 0.8929, 16.18, 1485.9, 0.749, 0.8963)]
    [InlineData(9372, 18.78, 1482, 0.797, 0.9028, 18.61, 1482.3, 0.803, 0.9056)]
    [InlineData(11010, 21.07, 1479, 0.831, 0.9064, 20.92, 1479.0, 0.835, 0.9097)]
    [InlineData(12930, 23.92, 1475, 0.857, 0.9088, 23.78, 1475.1, 0.861, 0.9115)]
    [InlineData(14950, 27.05, 1471, 0.875, 0.9089, 26.94, 1470.8, 0.879, 0.9110)]
    [InlineData(16360, 29.40, 1467, 0.887, 0.9070, 29.24, 1467.8, 0.888, 0.9096)]
    [InlineData(18500, 32.85, 1462, 0.896, 0.9044, 32.85, 1462.9, 0.897, 0.9063)]
    [InlineData(20180, 35.92, 1458, 0.902, 0.9008, 35.79, 1458.9, 0.901, 0.9028)]
    [InlineData(22170, 39.35, 1453, 0.906, 0.8972, 39.41, 1454.0, 0.904, 0.8978)]
    public void Circuit_against_measurement_and_an_independent_solution(
        double output, double ampere, double rpm, double powerFactor, double efficiency, double ampereSolved, double rpmSolved, double powerFactorSolved, double efficiencySolved)
    {
        var solution = OperatingPoint.AtShaftPower(Circuit, Circuit.RatedVoltage, Circuit.RatedFrequency, ShaftPower.FromWatts(output))
            .ShouldBeOfType<OperatingPoint.Runs>().Solution;

        // Measured: the linear circuit magnetizes with less than the saturated iron, which shows at light load.
        solution.Current.Amperes.ShouldBe(ampere, 0.035 * ampere);
        solution.Speed.Rpm.ShouldBe(rpm, 1.2);
        solution.PowerFactor.Ratio.ShouldBe(powerFactor, 0.04 * powerFactor);
        solution.Efficiency.Ratio.ShouldBe(efficiency, 0.005);

        // The independent solution keeps the friction at one value, where ours goes with the square of speed: a watt or two.
        solution.Current.Amperes.ShouldBe(ampereSolved, 0.01);
        solution.Speed.Rpm.ShouldBe(rpmSolved, 0.1);
        solution.PowerFactor.Ratio.ShouldBe(powerFactorSolved, 0.002);
        solution.Efficiency.Ratio.ShouldBe(efficiencySolved, 0.003);
    }

    [Fact]
    public void From_the_plate_alone_every_measured_current_lies_in_its_band()
    {
        // The plate as the source's header quotes it; the measured table from no load on.
        var plate = PublishedEnsemble.Of("MSL-18k5", Knowledge.Plate, PlateTrust.WithTolerances);
        foreach (var (output, ampere, rpm) in Measured)
        {
            var torque = Torque.FromNewtonMetres(output / (rpm * Math.PI / 30));
            var band = MotorForecast.Current(plate.Ensemble, plate.Plate.Voltage, plate.Plate.Frequency, torque).As(current => current.Amperes);
            band.Holds(ampere).ShouldBeTrue($"{output} W: {ampere} A in {band}");
        }
    }

    [Fact]
    public void One_reading_without_load_brings_the_currents_under_load_nearer()
    {
        var plate = PublishedEnsemble.Of("MSL-18k5", Knowledge.Plate, PlateTrust.WithTolerances);
        var read = plate.Ensemble.After(
            [new InstrumentReading.NoLoadCurrent(LineCurrent.FromAmperes(11.00), plate.Plate.Voltage, plate.Plate.Frequency, Fraction.FromRatio(0.02))]);
        foreach (var (output, ampere, rpm) in Measured.Where(row => row.Output < 12_000))
        {
            var torque = Torque.FromNewtonMetres(output / (rpm * Math.PI / 30));
            var band = MotorForecast.Current(read, plate.Plate.Voltage, plate.Plate.Frequency, torque).As(current => current.Amperes);
            band.P50.ShouldBe(ampere, 0.04 * ampere, $"{output} W");
            band.HalfWidth().ShouldBeLessThan(0.06);
        }
    }

    private static IReadOnlyList<(double Output, double Ampere, double Rpm)> Measured =>
    [
        (0, 11.00, 1500), (1845, 11.20, 1496), (3549, 12.27, 1493), (5325, 13.87, 1490), (7521, 16.41, 1486), (9372, 18.78, 1482), (11010, 21.07, 1479),
        (12930, 23.92, 1475), (14950, 27.05, 1471), (16360, 29.40, 1467), (18500, 32.85, 1462), (20180, 35.92, 1458), (22170, 39.35, 1453),
    ];
}
