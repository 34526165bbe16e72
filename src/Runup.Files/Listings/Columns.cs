namespace Runup.Files.Listings;

/// <summary>Which column holds what, and the rows that say so.</summary>
/// <param name="Roles">For each column its role; null where it holds nothing that is used.</param>
/// <param name="Titles">For each column its heading; empty where there is none.</param>
/// <param name="HeaderLine">Line of the heading; null where the table has none.</param>
internal sealed record Columns(IReadOnlyList<ColumnRole?> Roles, IReadOnlyList<string> Titles, int? HeaderLine)
{
    /// <summary>Line of the last row of the heading.</summary>
    internal int? LastHeaderLine { get; init; } = HeaderLine;

    /// <summary>Whether parameters have no numbers but their registers.</summary>
    internal bool NumbersAreRegisters { get; init; }

    /// <summary>The column of a role; -1 where there is none.</summary>
    internal int Of(ColumnRole role)
    {
        for (var i = 0; i < Roles.Count; i++)
        {
            if (Roles[i] == role)
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>All columns of a role.</summary>
    internal IEnumerable<int> All(ColumnRole role) => Enumerable.Range(0, Roles.Count).Where(i => Roles[i] == role);

    /// <summary>Whether a row is the heading once more, as at the top of each page.</summary>
    internal bool IsHeader(ListingRow row)
    {
        if (HeaderLine is null || row.Filled.Count < 2)
        {
            return false;
        }

        var same = row.Filled.Count(i => i < Titles.Count && Titles[i].Length > 0 && Titles[i].Contains(row[i], StringComparison.OrdinalIgnoreCase));
        return same * 3 >= row.Filled.Count * 2;
    }
}
