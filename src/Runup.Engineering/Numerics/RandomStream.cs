namespace Runup.Engineering.Numerics;

/// <summary>A stream of pseudo-random numbers that is the same for the same seed on every computer: SplitMix64 (Steele, Lea and Flood, 2014).</summary>
/// <param name="seed">The seed.</param>
internal sealed class RandomStream(ulong seed)
{
    private ulong state = seed;

    /// <summary>Between 0 and 1, neither included.</summary>
    internal double NextUniform() => ((NextBits() >> 11) + 0.5) * (1.0 / (1UL << 53));

    /// <summary>A whole number from 0 up to, not including, a limit.</summary>
    internal int NextBelow(int limit) => (int)(NextUniform() * limit);

    /// <summary>
    /// A Latin hypercube: of each of the dimensions, every one of the equal strata holds exactly one of the points; point by point in one array.
    /// </summary>
    internal double[] LatinHypercube(int points, int dimensions)
    {
        var places = new double[points * dimensions];
        var order = new int[points];
        for (var dimension = 0; dimension < dimensions; dimension++)
        {
            for (var point = 0; point < points; point++)
            {
                var other = NextBelow(point + 1);
                (order[point], order[other]) = (order[other], point);
            }

            for (var point = 0; point < points; point++)
            {
                places[(point * dimensions) + dimension] = (order[point] + NextUniform()) / points;
            }
        }

        return places;
    }

    private ulong NextBits()
    {
        state += 0x9E3779B97F4A7C15;
        var bits = state;
        bits = (bits ^ (bits >> 30)) * 0xBF58476D1CE4E5B9;
        bits = (bits ^ (bits >> 27)) * 0x94D049BB133111EB;
        return bits ^ (bits >> 31);
    }
}
