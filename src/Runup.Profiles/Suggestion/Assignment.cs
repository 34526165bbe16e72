namespace Runup.Profiles;

/// <summary>Gives each of some things at most one place, and each place at most one thing, so that the sum of what they are worth is greatest.</summary>
internal static class Assignment
{
    /// <summary>The place of each thing; -1 where it is worth more to leave it without.</summary>
    /// <remarks>Shortest augmenting paths with potentials (Kuhn-Munkres), each thing with a place of its own that is worth nothing. From memory.</remarks>
    /// <param name="worth">For each thing what it is worth at each place; nothing or less is never taken.</param>
    /// <param name="places">How many places there are.</param>
    internal static int[] Best(IReadOnlyList<double[]> worth, int places)
    {
        var things = worth.Count;
        var columns = places + things;
        var potentialOfThing = new double[things + 1];
        var potentialOfPlace = new double[columns + 1];
        var holder = new int[columns + 1];
        var way = new int[columns + 1];
        for (var thing = 1; thing <= things; thing++)
        {
            holder[0] = thing;
            var least = new double[columns + 1];
            Array.Fill(least, double.PositiveInfinity);
            var used = new bool[columns + 1];
            var at = 0;
            do
            {
                used[at] = true;
                var of = holder[at];
                var delta = double.PositiveInfinity;
                var next = 0;
                for (var j = 1; j <= columns; j++)
                {
                    if (used[j])
                    {
                        continue;
                    }

                    var cost = Cost(worth[of - 1], j - 1, places, of - 1) - potentialOfThing[of] - potentialOfPlace[j];
                    if (cost < least[j])
                    {
                        (least[j], way[j]) = (cost, at);
                    }

                    if (least[j] < delta)
                    {
                        (delta, next) = (least[j], j);
                    }
                }

                for (var j = 0; j <= columns; j++)
                {
                    if (used[j])
                    {
                        potentialOfThing[holder[j]] += delta;
                        potentialOfPlace[j] -= delta;
                    }
                    else
                    {
                        least[j] -= delta;
                    }
                }

                at = next;
            }
            while (holder[at] != 0);

            do
            {
                holder[at] = holder[way[at]];
                at = way[at];
            }
            while (at != 0);
        }

        var result = new int[things];
        Array.Fill(result, -1);
        for (var j = 1; j <= places; j++)
        {
            if (holder[j] > 0 && worth[holder[j] - 1][j - 1] > 0)
            {
                result[holder[j] - 1] = j - 1;
            }
        }

        return result;
    }

    private static double Cost(double[] worth, int place, int places, int thing) =>
        place < places ? worth[place] > 0 ? -worth[place] : 1e6 : place - places == thing ? 0 : 1e6;
}
