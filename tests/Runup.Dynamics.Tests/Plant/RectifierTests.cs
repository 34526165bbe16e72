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
