using Runup.Files.Csv;
using Runup.Profiles;

namespace Runup.Files.Dumps;

/// <summary>
/// Reads what a drive holds from a table (<c>.csv</c>): a column with the parameter's number, and one with its value as the display
/// shows it or in counts. A sheet that was written by Runup and filled in by hand is such a table.
/// </summary>
public static class ValuesFile
{
    private const int LargestBytes = 5_000_000;
    private const string Counts = "raw";

    private static readonly string[] Numbers = ["parameter", "number", "no.", "index"];

    // Of several the first that a row fills in: what somebody found stands above what was to be entered.
    private static readonly string[] Displays = ["found", "display", "value", "shows", "enter"];

    /// <summary>The values of a file; null with problems.</summary>
    /// <param name="path">The file.</param>
    /// <param name="profile">The profile of the drive.</param>
    /// <param name="size">Its size.</param>
    /// <param name="problems">What is wrong.</param>
    /// <param name="notes">What was passed over.</param>
    public static ParameterValues? Read(string path, DriveProfile profile, DriveSize size, Problems problems, IList<FileNote> notes)
    {
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(problems);
        return CsvTable.ReadFile(path, LargestBytes, problems) is { } table ? Read(table, profile, size, problems, notes) : null;
    }

    private static ParameterValues? Read(CsvTable table, DriveProfile profile, DriveSize size, Problems problems, IList<FileNote> notes)
    {
        var number = Numbers.Select(table.Column).FirstOrDefault(c => c is not null);
        var values = Displays.Append(Counts).Select(table.Column).OfType<int>().ToList();
        if (number is not { } place || values.Count == 0)
        {
            problems.Add(
                table.Header[0].Place,
                FileProblem.WholeFile,
                $"columns {Quote.List([.. table.Header.Select(h => h.Text)])}",
                $"a column {Quote.List(Numbers)} and a column {Quote.List([.. Displays, Counts])} would do");
            return null;
        }

        var rows = new ValueRows(table.Column(Counts), profile, size, problems, notes);
        foreach (var row in table.Rows)
        {
            rows.Take(row[place], values.Select(v => (Column: v, Cell: row[v])).FirstOrDefault(v => v.Cell.Text.Length > 0), table.Column("unit") is { } unit ? row[unit].Text : "");
        }

        return rows.Values();
    }
}
