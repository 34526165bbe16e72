using Runup.Commissioning.Diagnosis;
using Runup.Commissioning.Survey;
using Runup.Commissioning.Tests.Checks;
using Runup.Quantities;

namespace Runup.Commissioning.Tests.Diagnosis;

public sealed class KnownMotorTests
{
    [Theory]
    [InlineData(6.4, 0.70, false)]
    [InlineData(8.1, 0.95, false)]
    [InlineData(4.9, 0.50, false)]
    [InlineData(60, 0.00001, true)]
    [InlineData(0.64, 70, true)]
    public void Readings_that_are_hardly_those_of_the_plate_are_told_apart(double noLoad_A, double terminals_ohm, bool contradict)
    {
        var job = Jobs.Pump();
        var motor = job.Motor with
        {
            Measured = new MotorMeasurements
            {
                NoLoadCurrent = new(LineCurrent.FromAmperes(noLoad_A)),
                WindingResistance = new(Resistance.FromOhms(terminals_ohm)),
                WindingTemperature = new(Temperature.FromCelsius(20)),
            },
        };
        var known = KnownMotor.Of(motor, job.Context().Nameplate!).ShouldNotBeNull();
        TestContext.Current.TestOutputHelper?.WriteLine($"{(known.Now.LogEvidence - known.FromPlate.LogEvidence) / known.Readings.Used.Count}");
        known.ReadingsContradict.ShouldBe(contradict);
        KnownMotor.Of(job.Motor with { Measured = new() }, job.Context().Nameplate!)!.ReadingsContradict.ShouldBeFalse();
    }
}
