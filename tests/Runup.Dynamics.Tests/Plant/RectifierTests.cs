using Runup.Dynamics.Plant;

namespace Runup.Dynamics.Tests.Plant;

public sealed class RectifierTests
{
    [Theory]
    [InlineData(6)]
    [InlineData(2)]
    public void Separate_pulses_carry_the_current_of_the_integrated_pulse(int pulses)
    {
        const double LineV = 400, ChokeOhm = 0.5, SupplyOhm = 0.1;
        var rectifier = pulses == 6 ? Rectifier.SixPulse(LineV, ChokeOhm, SupplyOhm, 1e-3) : Rectifier.TwoPulse(LineV, ChokeOhm, SupplyOhm, 1e-3);
        for (var u = 0.05; u < 1; u += 0.05)
        {
            var ratio = 1 - (u * (1 - rectifier.BoundaryRatio));

            var expected = rectifier.PeakV / (ChokeOhm + (2 * SupplyOhm)) * MeanOfPulse(ratio, pulses);

            rectifier.CurrentA(ratio * rectifier.PeakV).ShouldBe(expected, 0.005 * expected, $"at u = {u:f2}");
        }
    }

    [Fact]
    public void No_current_flows_backward()
    {
        var rectifier = Rectifier.SixPulse(400, 0.5, 0.1, 1e-3);

        rectifier.CurrentA(rectifier.PeakV).ShouldBe(0);
        rectifier.CurrentA(780).ShouldBe(0);
        rectifier.In(RectifierMode.Open).CurrentA(100).ShouldBe(0);
    }

    /// <summary>
    /// Mean bus voltage of a circuit simulation of our own (400 V, 50 Hz, 10 kW at the bus, 2000 µF; backward Euler, near-ideal diodes): a
    /// comparison of two calculations, not a publication. Reactances in % of U²/P: source each phase, choke on the DC side.
    /// </summary>
    [Theory]
    [InlineData(0.5, 0, 1.3724)]
    [InlineData(1, 0, 1.3490)]
    [InlineData(2, 0, 1.3337)]
    [InlineData(3, 0, 1.3247)]
    [InlineData(5, 0, 1.3073)]
    [InlineData(0.5, 1, 1.3491)]
    [InlineData(0.5, 4, 1.3460)]
    [InlineData(3, 4, 1.3259)]
    public void Loaded_bus_is_within_one_and_a_quarter_per_cent_of_a_circuit_simulation(double sourcePercent, double chokePercent, double expectedRatio)
    {
        const double BaseOhm = 16;
        var rectifier = Rectifier.SixPulse(400, chokePercent / 100 * BaseOhm, sourcePercent / 100 * BaseOhm, 2e-3);

        var busV = VoltageAt(rectifier, 10_000);

        (busV / 400).ShouldBe(expectedRatio, 0.0125 * expectedRatio);
    }

    private static double VoltageAt(Rectifier rectifier, double powerW)
    {
        double low = 300, high = rectifier.PeakV;
        for (var i = 0; i < 60; i++)
        {
            var middle = 0.5 * (low + high);
            (low, high) = rectifier.CurrentA(middle) * middle > powerW ? (middle, high) : (low, middle);
        }

        return low;
    }

    // L di/dt = v_rectified − v over one pulse, in units of V̂/(ωL), from where the rectified voltage first exceeds the bus.
    private static double MeanOfPulse(double ratio, int pulses)
    {
        var period = 2 * Math.PI / pulses;
        const int Steps = 20_000;
        var h = period / Steps;
        double current = 0, sum = 0;
        for (var i = 0; i < Steps && current >= 0; i++)
        {
            var angle = -Math.Acos(ratio) + ((i + 0.5) * h);
            var next = current + (h * (Rectified(angle, period) - ratio));
            sum += 0.5 * (Math.Max(next, 0) + current) * h;
            current = next;
        }

        return sum / period;
    }

    private static double Rectified(double angle, double period) => Math.Cos(Math.IEEERemainder(angle, period));
}
