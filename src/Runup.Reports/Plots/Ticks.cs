using System.Globalization;

namespace Runup.Reports.Plots;

/// <summary>Round values along an axis: 1, 2 or 5 times a power of ten apart.</summary>
internal sealed class Ticks
{
    private Ticks(double low, double high, double step) => (Low, High, Step) = (low, high, step);

    /// <summary>Where the axis begins.</summary>
    public double Low { get; }

    /// <summary>Where it ends.</summary>
    public double High { get; }

    /// <summary>From one tick to the next.</summary>
    public double Step { get; }

    /// <summary>The values, ascending.</summary>
    public IEnumerable<double> Values
    {
        get
        {
            var first = (long)Math.Ceiling((Low / Step) - 1e-9);
            var last = (long)Math.Floor((High / Step) + 1e-9);
            for (var i = first; i <= last; i++)
            {
                yield return i * Step;
            }
        }
    }

    /// <summary>Ticks over a range, whose ends move out to the next tick.</summary>
    public static Ticks Widened(double low, double high, int about)
    {
        var (from, to) = Sound(low, high);
        var step = StepFor(from, to, about);
        return new(Math.Floor((from / step) + 1e-9) * step, Math.Ceiling((to / step) - 1e-9) * step, step);
    }

    /// <summary>Ticks within a range, whose ends stay.</summary>
    public static Ticks Within(double low, double high, int about)
    {
        var (from, to) = Sound(low, high);
        return new(from, to, StepFor(from, to, about));
    }

    /// <summary>A tick's value with as many decimals as its step has.</summary>
    public string Text(double value)
    {
        var decimals = Math.Max(0, -(int)Math.Floor(Math.Log10(Step) + 1e-9));
        return (Math.Abs(value) < Step / 2 ? 0 : value).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }

    private static (double Low, double High) Sound(double low, double high) =>
        !double.IsFinite(low) || !double.IsFinite(high) ? (0, 1) : high - low > 1e-12 * Math.Max(1, Math.Abs(high)) ? (low, high) : (low - 0.5, low + 0.5);

    private static double StepFor(double low, double high, int about)
    {
        var raw = (high - low) / about;
        var power = Math.Pow(10, Math.Floor(Math.Log10(raw)));
        return power * ((raw / power) switch { <= 1.0000001 => 1, <= 2.0000001 => 2, <= 5.0000001 => 5, _ => 10 });
    }
}
