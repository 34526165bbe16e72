namespace Runup.Files.Listings;

/// <summary>Finds lowest, highest and factory value among columns of bare numbers without headings: the factory value lies between the limits.</summary>
internal static class BareFigures
{
    private const double Nearly = 0.9;

    private static readonly NumberHabit Point = new(false);

    internal static void Settle(ColumnRole?[] roles, IReadOnlyList<ListingRow> body)
    {
        var free = Enumerable.Range(0, roles.Length).Where(c => roles[c] is null or ColumnRole.Default or ColumnRole.Scale).ToList();
        var columns = free.Select(c => (Column: c, Values: body.Select(r => Point.Read(r[c])?.Value).ToList())).Where(c => c.Values.Count(v => v is not null) * 2 > body.Count).ToList();
        for (var low = 0; low < columns.Count; low++)
        {
            for (var high = low + 1; high < columns.Count; high++)
            {
                for (var preset = 0; preset < columns.Count; preset++)
                {
                    if (preset != low && preset != high && Lies(columns[low].Values, columns[preset].Values, columns[high].Values))
                    {
                        roles[columns[low].Column] = ColumnRole.Low;
                        roles[columns[high].Column] = ColumnRole.High;
                        roles[columns[preset].Column] = ColumnRole.Default;
                        return;
                    }
                }
            }
        }
    }

    private static bool Lies(List<decimal?> low, List<decimal?> preset, List<decimal?> high)
    {
        var whole = 0;
        var between = 0;
        for (var i = 0; i < low.Count; i++)
        {
            if (low[i] is { } l && preset[i] is { } p && high[i] is { } h)
            {
                whole++;
                between += l <= p && p <= h && l < h ? 1 : 0;
            }
        }

        return whole >= 3 && between >= Nearly * whole;
    }
}
