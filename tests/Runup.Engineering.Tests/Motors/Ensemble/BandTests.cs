using FsCheck.Xunit;
using Runup.Engineering.Motors.Ensemble;

namespace Runup.Engineering.Tests.Motors.Ensemble;

public sealed class BandTests
{
    [Property(MaxTest = 300)]
    public void A_band_of_equal_weights_is_that_of_the_values_in_order(short[] numbers, bool withNoNumber)
    {
        var sorted = numbers.Select(n => (double)n).Order().ToArray();
        double Share(double share)
        {
            var place = Math.Clamp((share * sorted.Length) - 0.5, 0, sorted.Length - 1);
            var below = (int)Math.Floor(place);
            return below + 1 < sorted.Length ? sorted[below] + ((place - below) * (sorted[below + 1] - sorted[below])) : sorted[below];
        }

        double[] values = [.. numbers.Select(n => (double)n), .. withNoNumber ? new[] { double.NaN, double.PositiveInfinity } : []];
        var band = Band.OfEqual(values);

        if (numbers.Length == 0)
        {
            band.ShouldBeNull();
            return;
        }

        var found = band.ShouldNotBeNull();
        found.P05.ShouldBe(Share(0.05), 1e-9);
        found.P50.ShouldBe(Share(0.5), 1e-9);
        found.P95.ShouldBe(Share(0.95), 1e-9);
    }
}
