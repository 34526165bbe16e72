namespace Runup.Reports.Plots;

/// <summary>Leaves out points that can't be seen; peaks stay.</summary>
internal static class Thinning
{
    /// <summary>At most about twice as many points as columns: in each column the lowest and the highest, in their order.</summary>
    public static IReadOnlyList<(double X, double Y)> To(int columns, IReadOnlyList<(double X, double Y)> points)
    {
        if (points.Count <= 2 * columns)
        {
            return points;
        }

        var thin = new List<(double X, double Y)> { points[0] };
        for (var column = 0; column < columns; column++)
        {
            var from = (int)((long)points.Count * column / columns);
            var to = (int)((long)points.Count * (column + 1) / columns);
            var (lowest, highest) = (from, from);
            for (var i = from; i < to; i++)
            {
                lowest = points[i].Y < points[lowest].Y ? i : lowest;
                highest = points[i].Y > points[highest].Y ? i : highest;
            }

            thin.Add(points[Math.Min(lowest, highest)]);
            if (lowest != highest)
            {
                thin.Add(points[Math.Max(lowest, highest)]);
            }
        }

        thin.Add(points[^1]);
        return thin;
    }
}
