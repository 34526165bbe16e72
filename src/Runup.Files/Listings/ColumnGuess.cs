namespace Runup.Files.Listings;

/// <summary>Guesses from headings and contents what each column of a table holds.</summary>
internal static class ColumnGuess
{
    private const int RowsLookedAt = 60;

    internal static Columns Of(ListingGrid grid, IReadOnlyDictionary<ColumnRole, int> told)
    {
        var (headers, body) = Header(grid);
        var titles = Enumerable.Range(0, grid.Width).Select(c => string.Join(' ', headers.Select(h => h[c]).Where(t => t.Length > 0))).ToList();
        var roles = new ColumnRole?[grid.Width];
        var worths = new List<(int Column, ColumnRole Role, double Worth)>();
        for (var column = 0; column < grid.Width; column++)
        {
            var cells = body.Select(r => r[column]).Where(c => c.Length > 0).Take(400).ToList();
            var said = headers.Select(h => Headings.Read(h[column])).Append(Headings.Read(titles[column])).OfType<(ColumnRole Role, double Worth)>().ToList();
            foreach (var role in Enum.GetValues<ColumnRole>())
            {
                var heading = said.Where(s => s.Role == role).Select(s => s.Worth).DefaultIfEmpty(0).Max();
                var fit = ColumnContents.Fit(role, cells);
                var worth = (1.5 * heading) + (headers.Count == 0 || heading > 0 ? fit : 0.55 * fit) - (heading > 0 && fit <= 0.02 && cells.Count > 3 && role is ColumnRole.Number or ColumnRole.Low or ColumnRole.High ? 1 : 0);
                if (worth > (headers.Count == 0 ? 0.45 : said.Count > 0 ? 0.6 : 0.4) && cells.Count > 0)
                {
                    worths.Add((column, role, worth));
                }
            }
        }

        foreach (var (role, column) in told)
        {
            roles[column] = role;
            worths.RemoveAll(w => w.Column == column || w.Role == role);
        }

        foreach (var (column, role, _) in worths.OrderByDescending(w => w.Worth).ThenBy(w => w.Column))
        {
            if (roles[column] is null && (!roles.Contains(role) || role == ColumnRole.Remark))
            {
                roles[column] = role;
            }
        }

        Settle(roles, told, body);
        if (told.Count == 0 && !roles.Any(r => r is ColumnRole.Range or ColumnRole.Low or ColumnRole.High))
        {
            BareFigures.Settle(roles, body);
        }

        // Some makes number their parameters by the registers alone.
        var byRegister = !roles.Contains(ColumnRole.Number) && !told.ContainsKey(ColumnRole.Register) ? Array.IndexOf(roles, ColumnRole.Register) : -1;
        if (byRegister >= 0)
        {
            roles[byRegister] = ColumnRole.Number;
        }

        return new Columns(roles, titles, headers.Count > 0 ? headers[0].Line : null) { LastHeaderLine = headers.Count > 0 ? headers.Max(h => h.Line) : null, NumbersAreRegisters = byRegister >= 0 };
    }

    // Names stand in the column that reads most like names, whatever its heading says.
    private static void Settle(ColumnRole?[] roles, IReadOnlyDictionary<ColumnRole, int> told, IReadOnlyList<ListingRow> body)
    {
        if (roles.Contains(ColumnRole.Name) || told.ContainsKey(ColumnRole.Name))
        {
            return;
        }

        var best = (Column: Array.IndexOf(roles, ColumnRole.Remark), Worth: 0.25);
        for (var column = 0; column < roles.Length; column++)
        {
            var worth = roles[column] is null ? ColumnContents.Fit(ColumnRole.Name, [.. body.Select(r => r[column]).Where(c => c.Length > 0)]) : 0;
            best = worth > best.Worth ? (column, worth) : best;
        }

        if (best.Column >= 0)
        {
            roles[best.Column] = ColumnRole.Name;
        }
    }

    /// <summary>The row, or two rows, that name the columns; and the rows beneath.</summary>
    private static (IReadOnlyList<ListingRow> Headers, IReadOnlyList<ListingRow> Body) Header(ListingGrid grid)
    {
        var best = (Place: -1, Count: 1.6);
        for (var i = 0; i < Math.Min(grid.Rows.Count, RowsLookedAt); i++)
        {
            var row = grid.Rows[i];
            var said = row.Filled.Select(c => Headings.Read(row[c])).OfType<(ColumnRole Role, double Worth)>().ToList();
            var count = said.Select(s => s.Role).Distinct().Count() - (0.5 * row.Filled.Count(c => row[c].Any(char.IsAsciiDigit)));
            best = count > best.Count ? (i, count) : best;
        }

        if (best.Place < 0)
        {
            return ([], grid.Rows);
        }

        var headers = new List<ListingRow> { grid.Rows[best.Place] };
        var below = best.Place + 1 < grid.Rows.Count ? grid.Rows[best.Place + 1] : null;
        if (below is not null && IsSecond(below))
        {
            headers.Add(below);
        }
        else if (best.Place > 0 && IsAbove(grid.Rows[best.Place - 1], grid.Rows[best.Place]))
        {
            headers.Insert(0, grid.Rows[best.Place - 1]);
        }

        // What goes on in small letters is the rest of a heading.
        for (var i = best.Place + 1; i < grid.Rows.Count && headers.Count < 4; i++)
        {
            if (headers.Contains(grid.Rows[i]))
            {
                continue;
            }

            if (!GoesOn(grid.Rows[i], headers[0]))
            {
                break;
            }

            headers.Add(grid.Rows[i]);
        }

        return (headers, [.. grid.Rows.Where(r => r.Line > headers[^1].Line)]);
    }

    // Under a heading that is merged over several columns stand their own; in brackets a remark on the one above.
    private static bool IsSecond(ListingRow row) =>
        row.Filled.Count > 1 && row.Filled.Any(c => row[c][0] is not '(') && row.Filled.All(c => row[c][0] is '(' || Headings.Read(row[c]) is not null || UnitCell.Read(row[c]) is not null) && row.Filled.All(c => !row[c].Any(char.IsAsciiDigit));

    private static bool GoesOn(ListingRow row, ListingRow header) =>
        row.Filled.Count is 1 or 2 or 3 && row.Filled.All(c => char.IsLower(row[c][0]) && header[c].Length > 0 && !row[c].Any(char.IsAsciiDigit) && row[c].Length < 20);

    private static bool IsAbove(ListingRow above, ListingRow header) =>
        above.Filled.Count >= 2 && above.Filled.All(c => Headings.Read(above[c]) is not null) && above.Filled.Any(c => header[c].Length == 0);
}
