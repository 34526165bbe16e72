using Runup.Engineering.Motors;
using Runup.Engineering.Motors.Ensemble;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Motors.Ensemble;

public sealed class NextReadingTests
{
    private static readonly MotorEnsemble Pump = MotorEnsemble.Of(Plates.Pump)!;

    private static Band<double> NoLoad(MotorEnsemble ensemble) => MotorBands.Of(ensemble).NoLoadCurrent.As(current => current.Amperes);

    [Fact]
    public void A_reading_that_was_taken_is_not_asked_for_again()
    {
        var first = NextReading.Best(Pump, []).ShouldNotBeNull();
        first.After.ShouldBeLessThan(first.Before);
        NextReading.Best(Pump, [first.Reading])?.Reading.ShouldNotBe(first.Reading);
        NextReading.Best(Pump, Enum.GetValues<ReadingToTake>()).ShouldBeNull();
    }

    [Fact]
    public void What_is_promised_of_a_reading_is_about_what_comes_true()
    {
        var promised = NextReading.Best(Pump, Enum.GetValues<ReadingToTake>().Except([ReadingToTake.NoLoadCurrent]).ToList()).ShouldNotBeNull();
        promised.Reading.ShouldBe(ReadingToTake.NoLoadCurrent);
        promised.Figure.ShouldBe(NarrowedFigure.NoLoadCurrent);
        promised.Before.ShouldBe(NoLoad(Pump).HalfWidth(), 1e-9);
        var after = Pump.After([new InstrumentReading.NoLoadCurrent(LineCurrent.FromAmperes(NoLoad(Pump).P50), Plates.Pump.Voltage, Plates.Pump.Frequency, Fraction.FromRatio(0.02))]);
        promised.After.ShouldBe(NoLoad(after).HalfWidth(), 0.4 * promised.After);
    }

    [Fact]
    public void Bands_shrink_in_expectation_with_each_reading()
    {
        // The motor read is each time another member of the ensemble, so that the readings are those which the plate lets expect.
        var ratios = new List<double>();
        foreach (var motor in Pump.Sample(8))
        {
            var ensemble = Pump;
            foreach (var reading in Readings(motor))
            {
                var after = ensemble.After([reading]);
                ratios.Add(NoLoad(after).HalfWidth() / NoLoad(ensemble).HalfWidth());
                ensemble = after;
            }
        }

        ratios.Average(Math.Log).ShouldBeLessThan(0);
        ratios.Where((_, place) => place % 3 == 0).Average(Math.Log).ShouldBeLessThan(-0.5);
    }

    private static IEnumerable<InstrumentReading> Readings(EquivalentCircuit motor)
    {
        LineCurrent Uncoupled(double volts, double hertz) => ((OperatingPoint.Runs)OperatingPoint.Uncoupled(
            motor, LineVoltage.FromVolts(volts), ElectricalFrequency.FromHertz(hertz))).Solution.Current;
        var error = Fraction.FromRatio(0.02);
        yield return new InstrumentReading.NoLoadCurrent(Uncoupled(400, 50), Plates.Pump.Voltage, Plates.Pump.Frequency, error);
        yield return new InstrumentReading.WindingResistance(
            Resistance.FromOhms(2 * motor.StatorResistance.Ohms * 255 / 310), Temperature.FromCelsius(20), Fraction.FromRatio(0.01));
        yield return new InstrumentReading.NoLoadCurrent(Uncoupled(80, 10), LineVoltage.FromVolts(80), ElectricalFrequency.FromHertz(10), error);
    }
}
