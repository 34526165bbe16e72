using System.Runtime.InteropServices;

namespace Runup.Engineering.Motors.Ensemble;

/// <summary>Where a figure lies: in five of a hundred members below the first, in half below the second, in five above the third.</summary>
/// <param name="P05">5 % of the weight lies below.</param>
/// <param name="P50">Half of the weight lies below.</param>
/// <param name="P95">5 % of the weight lies above.</param>
/// <typeparam name="T">What the figure is.</typeparam>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Band<T>(T P05, T P50, T P95)
{
    /// <summary>The band of a figure made from this one's.</summary>
    public Band<TOther> As<TOther>(Func<T, TOther> make) => new(make(P05), make(P50), make(P95));
}

/// <summary>Bands of plain numbers.</summary>
public static class Band
{
    /// <summary>Half the width over the middle: (p95 − p05)/(2 p50).</summary>
    public static double HalfWidth(this Band<double> band) => (band.P95 - band.P05) / (2 * band.P50);

    /// <summary>Whether a value lies inside.</summary>
    public static bool Holds(this Band<double> band, double value) => value >= band.P05 && value <= band.P95;

    /// <summary>The band of values of equal weight, which are moved about; those that are no finite numbers are left out, and without any there is none.</summary>
    /// <remarks>Between two neighbours as with weights: half of each one's weight lies on either side of it.</remarks>
    public static Band<double>? OfEqual(Span<double> values)
    {
        var used = 0;
        foreach (var value in values)
        {
            if (double.IsFinite(value))
            {
                values[used++] = value;
            }
        }

        var finite = values[..used];
        return used == 0 ? null : new Band<double>(Share(0.05, finite), Share(0.5, finite), Share(0.95, finite));
    }

    /// <summary>The band of weighted values; weight without a finite value is left out, and without any value there is none.</summary>
    /// <remarks>Between two neighbours the share of the weight below is taken as linear, half of each one's weight lying on either side of it.</remarks>
    internal static Band<double>? Of(double[] values, ReadOnlySpan<double> weights)
    {
        var order = new int[values.Length];
        var (used, all) = (0, 0.0);
        for (var index = 0; index < values.Length; index++)
        {
            if (weights[index] > 0 && double.IsFinite(values[index]))
            {
                order[used++] = index;
                all += weights[index];
            }
        }

        if (used == 0)
        {
            return null;
        }

        var sorted = new double[used];
        for (var index = 0; index < used; index++)
        {
            sorted[index] = values[order[index]];
        }

        Array.Sort(sorted, order, 0, used);
        return new Band<double>(Share(0.05, sorted, order, weights, all), Share(0.5, sorted, order, weights, all), Share(0.95, sorted, order, weights, all));
    }

    private static double Share(double share, Span<double> values)
    {
        var place = Math.Clamp((share * values.Length) - 0.5, 0, values.Length - 1);
        var index = Math.Min((int)place, Math.Max(values.Length - 2, 0));
        var here = InOrder(values, index);
        if (values.Length == 1)
        {
            return here;
        }

        var next = values[index + 1];
        foreach (var value in values[(index + 1)..])
        {
            next = Math.Min(next, value);
        }

        return here + ((place - index) * (next - here));
    }

    // Hoare's selection: the value that stands at a place once all are in order, no smaller one behind it, no larger one before.
    private static double InOrder(Span<double> values, int place)
    {
        var (first, last) = (0, values.Length - 1);
        while (first < last)
        {
            var pivot = values[first + ((last - first) / 2)];
            var (up, down) = (first, last);
            while (up <= down)
            {
                while (values[up] < pivot)
                {
                    up++;
                }

                while (pivot < values[down])
                {
                    down--;
                }

                if (up <= down)
                {
                    (values[up], values[down]) = (values[down], values[up]);
                    up++;
                    down--;
                }
            }

            (first, last) = place <= down ? (first, down) : place >= up ? (up, last) : (place, place);
        }

        return values[place];
    }

    private static double Share(double share, double[] sorted, int[] order, ReadOnlySpan<double> weights, double all)
    {
        var (wanted, below, place) = (share * all, 0.0, 0.0);
        for (var index = 0; index < sorted.Length; index++)
        {
            var weight = weights[order[index]];
            var here = below + (weight / 2);
            if (here >= wanted)
            {
                return index == 0 ? sorted[0] : sorted[index - 1] + ((sorted[index] - sorted[index - 1]) * (wanted - place) / (here - place));
            }

            (below, place) = (below + weight, here);
        }

        return sorted[^1];
    }
}
