using System.Text.RegularExpressions;
using Runup.Profiles;

namespace Runup.Files.Listings;

/// <summary>Gathers the rows of a grid into parameters: headings, lines that go on, choices beneath, the header again on each page.</summary>
internal sealed partial class ListingRows
{
    private const int FewChoices = 64;

    private readonly ListingGrid grid;
    private readonly Columns columns;
    private readonly bool objects;
    private readonly int number;
    private readonly int sub;
    private readonly int name;
    private readonly List<RowDraft> drafts = [];
    private string group = "";

    private readonly bool isPasted;

    private ListingRows(ListingGrid grid, Columns columns)
    {
        isPasted = grid.IsPasted;
        this.grid = grid;
        this.columns = columns;
        number = columns.Of(ColumnRole.Number);
        sub = columns.Of(ColumnRole.Sub);
        name = columns.Of(ColumnRole.Name);
        objects = sub >= 0 || grid.Rows.Count(r => NumberCell.IsClearlyObject(r[number])) * 4 > grid.Rows.Count(r => NumberCell.Read(r[number], "", objects: false) is not null);
    }

    internal static List<RowDraft> Of(ListingGrid grid, Columns columns)
    {
        var rows = new ListingRows(grid, columns);
        for (var i = 0; i < grid.Rows.Count; i++)
        {
            rows.Take(i);
        }

        return rows.drafts;
    }

    private void Take(int place)
    {
        var row = grid.Rows[place];
        if ((row.Line >= columns.HeaderLine && row.Line <= columns.LastHeaderLine) || columns.IsHeader(row) || (columns.HeaderLine is { } header && row.Line < header && drafts.Count == 0 && row.Filled.Count > 1))
        {
            return;
        }

        // A cell merged over the whole width comes as one cell, or as the same text in each.
        if (row.Filled.Count == 1 || (row.Filled.Count > 2 && row.Filled.All(c => string.Equals(row[c], row[row.Filled[0]], StringComparison.Ordinal))))
        {
            TakeSingle(place, row, row.Filled[0]);
            return;
        }

        if (NumberCell.Read(row[number], sub >= 0 ? row[sub] : "", objects) is { } read && !IsChoiceBeneath(row, read.Number) && !IsSameAgain(row, read.Number))
        {
            var inGroup = columns.Of(ColumnRole.Group) is >= 0 and var column && row[column].Length > 0 ? Clean(row[column]) : group;
            group = inGroup;
            drafts.Add(new RowDraft(read.Number, read.Wide, row.Line, inGroup));
            AddCells(row, continued: false);
        }
        else if (objects && sub >= 0 && row[number].Length == 0 && row[sub].Length > 0 && drafts.Count > 0 && drafts[^1].Number.IndexOf('h', StringComparison.Ordinal) is 4 && NumberCell.Read(drafts[^1].Number[..5], row[sub], objects: true) is { } below)
        {
            // The sub-objects of an index that is printed once.
            drafts.Add(new RowDraft(below.Number, false, row.Line, group));
            AddCells(row, continued: false);
        }
        else if (drafts.Count > 0)
        {
            TakeBeneath(row);
        }
    }

    private void TakeSingle(int place, ListingRow row, int column)
    {
        var text = row[column];
        if ((Patterns.Furniture().IsMatch(text) && !StandsInChoices(column)) || AccessLegend.Explains(text))
        {
            return;
        }

        if (drafts.Count > 0 && !IsNumberedHeading(place, text, column) && ChoiceText.ReadOne(text) is { } choice)
        {
            drafts[^1].BeneathColumn = column;
            if (ChoiceText.Read(text) is { Count: > 1 } several)
            {
                drafts[^1].Beneath.AddRange(several);
            }
            else
            {
                drafts[^1].Beneath.Add(choice);
            }
        }
        else if (drafts.Count > 0 && column > number && !IsHeading(place, text, column))
        {
            AddCells(row, continued: true);
        }
        else if (text.Any(char.IsLetter))
        {
            group = Clean(Ordinal().Replace(text, ""));
        }
    }

    // A line beneath a parameter: a choice in one or two cells, or the rest of a name, a range or a remark.
    private void TakeBeneath(ListingRow row)
    {
        var filled = row.Filled;
        if (filled.Count == 2 && Whole(row[filled[0]]) is { } value && row[filled[1]].Any(char.IsLetter))
        {
            drafts[^1].Beneath.Add(new NamedValue(value, row[filled[1]]));
            return;
        }

        if (filled.Count <= 3 && filled.Select(c => ChoiceText.ReadOne(row[c])).OfType<NamedValue>().FirstOrDefault() is { } choice)
        {
            drafts[^1].Beneath.Add(choice);
            return;
        }

        AddCells(row, continued: true);
    }

    // 2. Ramps: a heading where choices stand elsewhere, or where this is none that follows on.
    private bool IsNumberedHeading(int place, string text, int column) =>
        (column <= Math.Max(number, 0) || column == name) && NumberedHeading().IsMatch(text) && !StandsInChoices(column)
        && place + 1 < grid.Rows.Count && NumberCell.Read(grid.Rows[place + 1][number], "", objects) is not null
        && !(drafts[^1].Beneath.Count > 0 && drafts[^1].BeneathColumn == column);

    private bool IsHeading(int place, string text, int column)
    {
        if (column != name || char.IsLower(text[0]) || text[0] is '(' or '-' or '/' || (isPasted && EndsOpen(drafts[^1][ColumnRole.Name])) || StandsInChoices(column))
        {
            return false;
        }

        var before = grid.Rows[place].Line - (place > 0 ? grid.Rows[place - 1].Line : 0);
        var nextIsRow = place + 1 < grid.Rows.Count && NumberCell.Read(grid.Rows[place + 1][number], "", objects) is not null;
        return nextIsRow && (before > 1 || drafts[^1][ColumnRole.Default].Length > 0 || drafts[^1][ColumnRole.Range].Length > 0);
    }

    private bool StandsInChoices(int column) => column < columns.Roles.Count && columns.Roles[column] is ColumnRole.Range or ColumnRole.Choices or ColumnRole.Remark;

    private static bool EndsOpen(string text) => Open().IsMatch(text) || text.Count(c => c == '(') > text.Count(c => c == ')');

    // Beneath a parameter of choices some tables print the values in the column of the numbers.
    private bool IsChoiceBeneath(ListingRow row, string read)
    {
        if (drafts.Count == 0 || Whole(row[number]) is not { } value || value > FewChoices || row.Filled.Count != 2 || !long.TryParse(drafts[^1].Number, out var above) || above <= value)
        {
            return false;
        }

        var last = drafts[^1].Beneath.Count > 0 ? drafts[^1].Beneath[^1].Raw : -1;
        return value > last && drafts[^1][ColumnRole.Range].Length < 12 && !string.Equals(read, drafts[^1].Number, StringComparison.Ordinal);
    }

    // A cell merged downwards comes with each of its rows in some exports: same number, same name.
    private bool IsSameAgain(ListingRow row, string read) =>
        drafts.Count > 0 && string.Equals(drafts[^1].Number, read, StringComparison.Ordinal) && name >= 0
        && (row[name].Length == 0 || string.Equals(row[name], drafts[^1][ColumnRole.Name], StringComparison.Ordinal))
        && columns.All(ColumnRole.Range).Concat(columns.All(ColumnRole.Choices)).Concat(columns.All(ColumnRole.Remark)).Any(c => ChoiceText.ReadOne(row[c]) is not null);

    private void AddCells(ListingRow row, bool continued)
    {
        var draft = drafts[^1];
        foreach (var column in row.Filled)
        {
            if (column >= columns.Roles.Count || columns.Roles[column] is not { } role || role is ColumnRole.Number or ColumnRole.Sub or ColumnRole.Group)
            {
                continue;
            }

            if (continued && string.Equals(draft[role], row[column], StringComparison.Ordinal))
            {
                continue;
            }

            draft.Add(role, row[column], column, row.Line, role is ColumnRole.Name or ColumnRole.Unit or ColumnRole.Default ? " " : "\n");
        }
    }

    private static string Clean(string text) => string.Join(' ', NumberCell.Clean(text).Split([' ', '\n', '\t', '\r'], StringSplitOptions.RemoveEmptyEntries)).TrimEnd(':');

    private static long? Whole(string text) => long.TryParse(text.Trim().TrimEnd(':', ')', '.'), System.Globalization.NumberStyles.AllowLeadingSign, System.Globalization.CultureInfo.InvariantCulture, out var value) ? value : null;

    [GeneratedRegex(@"^\s*(?:(?:[Gg]roup|[Mm]enu|[Ss]ection|[Cc]hapter)\s+)?(?:[A-Z]?\d+(?:\.\d+)*|[A-Z])?\s*[.:)\-–]\s+|^\s*(?:[Gg]roup|[Mm]enu|[Ss]ection|[Cc]hapter)\s+\d+\s*[:.\-–]?\s*|^\s*\d+(?:\.\d+)*\s+(?=\p{Lu})", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Ordinal();

    [GeneratedRegex(@"^\d{1,2}\.(?:\d{1,2}\.?)*\s+\p{Lu}", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex NumberedHeading();

    [GeneratedRegex(@"(?:\b(?:of|for|in|the|and|by|with|or|a)|[-,/(&–])$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase, 1000)]
    private static partial Regex Open();
}
