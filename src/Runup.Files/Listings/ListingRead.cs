using Runup.Files.Yaml;
using Runup.Profiles;

namespace Runup.Files.Listings;

/// <summary>A manual's table as it was understood.</summary>
/// <param name="Parameters">Its parameters, in the table's order; no number stands twice.</param>
/// <param name="Columns">Each column that holds anything, with what it was taken for; none for an EDS file.</param>
public sealed record Listing(IReadOnlyList<ListedParameter> Parameters, IReadOnlyList<ListedColumn> Columns);

/// <summary>A column as it was understood.</summary>
/// <param name="Column">Its letter, as in a spreadsheet.</param>
/// <param name="Title">Its heading.</param>
/// <param name="Role">What it was taken for; null where it is not used.</param>
/// <param name="Sample">What stands in its first filled cell.</param>
public sealed record ListedColumn(string Column, string Title, ColumnRole? Role, string Sample);

/// <summary>Turns gathered rows into parameters, and says of each cell that it can't read which it is.</summary>
internal sealed class ListingRead
{
    private readonly Problems cautions;
    private readonly Columns columns;
    private readonly NumberHabit habit;
    private readonly RegisterColumn registers;
    private readonly AccessLegend legend;
    private readonly RunningMarks marks;
    private readonly string headingUnit;

    private ListingRead(ListingGrid grid, Columns columns, Problems cautions)
    {
        this.columns = columns;
        this.cautions = cautions;
        ColumnRole[] figures = [ColumnRole.Range, ColumnRole.Low, ColumnRole.High, ColumnRole.Default, ColumnRole.Scale];
        var places = figures.SelectMany(columns.All).ToList();
        habit = NumberHabit.Of(grid.Rows.SelectMany(r => places.Select(p => r[p])));
        var register = columns.Of(columns.NumbersAreRegisters ? ColumnRole.Number : ColumnRole.Register);
        registers = RegisterColumn.Of([.. grid.Rows.Where(r => r.Line > (columns.LastHeaderLine ?? -1) && !columns.IsHeader(r)).Select(r => r[register]).Where(c => c.Any(char.IsAsciiDigit))], register >= 0 ? columns.Titles[register] : "");
        legend = AccessLegend.Of(grid, columns);
        marks = RunningMarks.Of(grid, columns);
        headingUnit = figures.SelectMany(columns.All).Select(c => Patterns.Bracketed().Match(columns.Titles[c])).Where(m => m.Success).Select(m => UnitCell.Read(m.Groups["unit"].Value)).OfType<string>().FirstOrDefault() ?? "";
    }

    internal static Listing Of(ListingGrid grid, Columns columns, Problems problems, Problems cautions)
    {
        var reader = new ListingRead(grid, columns, cautions);
        var parameters = new List<ListedParameter>();
        var first = new Dictionary<string, ListedParameter>(StringComparer.OrdinalIgnoreCase);
        foreach (var draft in ListingRows.Of(grid, columns))
        {
            var parameter = reader.Read(draft, parameters);
            if (first.TryGetValue(parameter.Number, out var before))
            {
                problems.Add(new Place(draft.Line, 1, 0, 0), $"parameter {parameter.Number}", $"the number stands twice: in line {before.Line} as {Quote.Of(before.Name)} and in line {draft.Line} as {Quote.Of(parameter.Name)}", "each number once; the first is kept");
                continue;
            }

            first.Add(parameter.Number, parameter);
            parameters.Add(parameter);
        }

        return new Listing(parameters, [.. Enumerable.Range(0, grid.Width).Select(c => Column(grid, columns, c)).OfType<ListedColumn>()]);
    }

    private static ListedColumn? Column(ListingGrid grid, Columns columns, int c)
    {
        var sample = grid.Rows.Where(r => columns.LastHeaderLine is not { } h || r.Line > h).Select(r => r[c]).FirstOrDefault(t => t.Length > 0);
        return sample is null ? null : new ListedColumn(ListingGrid.ColumnName(c), columns.Titles[c], columns.Roles[c], sample);
    }

    private ListedParameter Read(RowDraft draft, IReadOnlyList<ListedParameter> before)
    {
        var named = NameCell.Read(draft[ColumnRole.Name]);
        var (name, nameUnit) = Name(named.Name);
        var (choices, range) = Values(draft, named, before);
        var preset = Default(draft, choices, range);
        var scale = Scale(draft, range, preset.Decimals);
        var unit = new[] { draft[ColumnRole.Unit] is { Length: > 0 } u ? UnitCell.Read(u) : null, range?.Unit, scale.Unit, nameUnit, preset.Unit, choices.Count == 0 ? headingUnit : null }.FirstOrDefault(t => !string.IsNullOrEmpty(t)) ?? "";
        if (nameUnit is not null && !string.Equals(unit, nameUnit, StringComparison.Ordinal))
        {
            // "Frequency to be avoided, second", in Hz: that is no unit.
            name = string.Join(' ', NumberCell.Clean(named.Name).Split([' ', '\n', '\t', '\r'], StringSplitOptions.RemoveEmptyEntries));
        }

        var type = TypeCell.Read(draft[ColumnRole.Type]);
        if (name.Length == 0)
        {
            Say(draft, ColumnRole.Name, "no name", "the parameter's name would do");
        }

        return new ListedParameter
        {
            Number = draft.Number,
            Name = name,
            Group = draft.Group,
            Unit = choices.Count > 0 && range is null ? "" : unit.Length == 0 && Patterns.PolePairs().IsMatch(name) ? "pole pairs" : unit,
            UnitText = string.Join(' ', draft[ColumnRole.Unit], range?.Rest).Trim(),
            Scale = choices.Count > 0 && range is null ? null : scale.PerCount,
            Low = range?.Low,
            High = range?.High,
            Default = preset.Value,
            Choices = choices,
            Access = Access(draft),
            Register = Register(draft),
            Width = draft.Wide ? 32 : type?.Width,
            Signed = type?.Signed ?? (range?.Low < 0 ? true : null),
            Remark = draft[ColumnRole.Remark],
            Line = draft.Line,
        };
    }

    private static (string Name, string? Unit) Name(string text)
    {
        var plain = string.Join(' ', NumberCell.Clean(text).Split([' ', '\n', '\t', '\r'], StringSplitOptions.RemoveEmptyEntries));
        var bracket = Patterns.Bracketed().Match(plain);
        if (bracket.Success && bracket.Index + bracket.Length == plain.Length && UnitCell.Read(bracket.Groups["unit"].Value) is { } unit)
        {
            return (NumberCell.Clean(plain[..bracket.Index]), unit);
        }

        var comma = plain.LastIndexOf(',');
        return comma > 0 && plain.Length - comma <= 8 && UnitCell.Read(plain[(comma + 1)..]) is { } behind ? (plain[..comma].Trim(), behind) : (plain, null);
    }

    private (IReadOnlyList<NamedValue> Choices, RangeText? Range) Values(RowDraft draft, NameCell name, IReadOnlyList<ListedParameter> before)
    {
        var limits = Limits(draft);
        IReadOnlyList<NamedValue> choices = draft.Beneath.Count > 0 ? [.. Beside(draft).Concat(draft.Beneath).DistinctBy(c => c.Raw)] : [];
        foreach (var role in (ColumnRole[])[ColumnRole.Choices, ColumnRole.Range, ColumnRole.Remark])
        {
            choices = choices.Count > 0 ? choices : ChoiceText.Read(draft[role]);
        }

        choices = choices.Count > 0 ? choices : name.Choices;
        var text = draft[ColumnRole.Range];
        foreach (var role in (ColumnRole[])[ColumnRole.Choices, ColumnRole.Range])
        {
            choices = choices.Count > 0 ? choices : ChoicesElsewhere.Read(draft[role], before);
        }

        if (choices.Count == 0)
        {
            choices = ChoiceText.ReadNumbers(text) is { Count: > 0 } numbers ? numbers : ChoiceText.ReadNumbers(draft[ColumnRole.Choices]);
        }

        if (choices.Count == 0 && limits is null && RangeText.Read(text, habit) is null)
        {
            choices = ChoiceText.ReadNames(text) is { Count: > 0 } named ? named : ChoiceText.ReadNames(draft[ColumnRole.Choices]);
            if (choices.Count > 0)
            {
                Say(draft, ColumnRole.Range, $"{Quote.Of(text.Replace('\n', ' '))} names choices without their values", "they are counted from 0; compare with the drive");
            }
        }

        var range = limits ?? (choices.Count == 0 || !OnlyChoices(text, choices) ? RangeText.Read(Before(text, choices), habit) : null);
        if (choices.Count > 0 && range is not null && Covers(choices, range))
        {
            range = null;
        }

        if (choices.Count == 0 && range is null && text.Any(char.IsAsciiDigit) && text.Length > 1)
        {
            var lone = Patterns.HalfRange().Match(NumberHabit.HoldTogether(text)) is { Success: true } half && habit.Read(half.Groups["low"].Value) is { } value ? new RangeText(value.Value, null, value.Decimals, null, "") : null;
            Say(draft, ColumnRole.Range, lone is null ? $"{Quote.Of(text)} is neither a range nor choices" : $"{Quote.Of(text)} gives one number only", lone is null ? "a range such as `0.0 to 400.0 Hz`, or choices such as `0: kW 1: hp`, would do" : "it is taken for the lowest value; the highest is left open");
            return (choices, lone);
        }

        return (choices, range);
    }

    // The first choice may stand in the parameter's own row, the others beneath.
    private static IEnumerable<NamedValue> Beside(RowDraft draft)
    {
        foreach (var text in (string[])[draft[ColumnRole.Choices], draft[ColumnRole.Range]])
        {
            if (ChoiceText.Read(text) is { Count: > 0 } several)
            {
                return several;
            }

            if (ChoiceText.ReadOne(text) is { } one)
            {
                return [one];
            }
        }

        return [];
    }

    private RangeText? Limits(RowDraft draft)
    {
        var low = Limit(draft, ColumnRole.Low);
        var high = Limit(draft, ColumnRole.High);
        return low is null && high is null ? null : new RangeText(low?.Value, high?.Value, Math.Max(low?.Decimals ?? 0, high?.Decimals ?? 0), low?.Unit ?? high?.Unit, "");
    }

    private (decimal Value, int Decimals, string? Unit)? Limit(RowDraft draft, ColumnRole role)
    {
        var text = NumberHabit.HoldTogether(NumberCell.Clean(draft[role]));
        if (Patterns.AnyNumber().Match(text) is { Success: true, Index: 0 } match && habit.Read(match.Value) is { } value)
        {
            return (value.Value, value.Decimals, UnitCell.Read(text[match.Length..]));
        }

        if (text.Any(char.IsAsciiDigit))
        {
            Say(draft, role, $"{Quote.Of(text)} is no number", "a number would do; a limit that another parameter gives is left out");
        }

        return null;
    }

    // A cell of choices only has no range, whatever signs stand between them.
    private static bool OnlyChoices(string text, IReadOnlyList<NamedValue> choices) =>
        choices.Count > 2 || text.Length == 0 || ChoiceText.ReadOne(text) is not null || ChoiceText.ReadNumbers(text).Count > 0;

    private static string Before(string text, IReadOnlyList<NamedValue> choices) =>
        choices.Count > 0 && Patterns.MarkedChoice().Match(text) is { Success: true, Index: > 0 } choice && RangeText.Read(text[..choice.Index], new NumberHabit(false)) is not null ? text[..choice.Index] : text;

    private static bool Covers(IReadOnlyList<NamedValue> choices, RangeText range) =>
        range is { Low: { } low, High: { } high, Decimals: 0 } && low >= choices.Min(c => c.Raw) && high <= choices.Max(c => c.Raw);

    private (decimal? Value, int Decimals, string? Unit) Default(RowDraft draft, IReadOnlyList<NamedValue> choices, RangeText? range)
    {
        var text = NumberHabit.HoldTogether(NumberCell.Clean(draft[ColumnRole.Default]));
        if (text.Length == 0)
        {
            return (null, 0, null);
        }

        if (choices.Count > 0)
        {
            var named = choices.FirstOrDefault(c => string.Equals(c.Label, text, StringComparison.OrdinalIgnoreCase)) ?? ChoiceText.ReadOne(text)
                ?? choices.FirstOrDefault(c => c.Label.Length > 1 && text.StartsWith(c.Label, StringComparison.OrdinalIgnoreCase) && range is null);
            if (named is not null)
            {
                return (named.Raw, 0, null);
            }
        }

        if (Patterns.AnyNumber().Match(text) is { Success: true, Index: < 2 } match && habit.Read(match.Value) is { } value)
        {
            return (value.Value, value.Decimals, UnitCell.Read(UnitCell.Leading(text[(match.Index + match.Length)..].Trim())));
        }

        var hex = text.StartsWith("0x", StringComparison.OrdinalIgnoreCase) ? text[2..] : text.TrimEnd('h', 'H');
        return hex.Length < text.Length && long.TryParse(hex, System.Globalization.NumberStyles.AllowHexSpecifier, System.Globalization.CultureInfo.InvariantCulture, out var raw) ? (raw, 0, null) : (null, 0, null);
    }

    private (decimal PerCount, string? Unit) Scale(RowDraft draft, RangeText? range, int decimals)
    {
        var most = Math.Clamp(Math.Max(range?.Decimals ?? 0, decimals), 0, 6);
        var printed = 1m;
        for (var i = 0; i < most; i++)
        {
            printed /= 10;
        }

        if (ScaleCell.Read(draft[ColumnRole.Scale], habit) is not { } scale)
        {
            var ofUnit = ScaleCell.Read(draft[ColumnRole.Unit], habit);
            return ofUnit is { Unit: not null, PerCount: < 1 } said ? (said.PerCount, said.Unit) : (printed, null);
        }

        // Counts for each unit of the display: 100 where two decimals are printed.
        return scale.PerCount > 1 && printed < 1 && scale.PerCount * printed == 1 ? (printed, scale.Unit) : (scale.PerCount, scale.Unit);
    }

    private ParameterAccess? Access(RowDraft draft)
    {
        var running = draft[ColumnRole.WhileRunning] is { Length: > 0 } mark ? legend.Find(mark) ?? marks.Read(mark) : null;
        var access = draft[ColumnRole.Access] is { Length: > 0 } text ? legend.Find(text) ?? AccessCell.Read(text, whileRunning: false) : null;
        return access is ParameterAccess.ReadOnly or ParameterAccess.Action ? access : running ?? access;
    }

    private int? Register(RowDraft draft)
    {
        var text = columns.NumbersAreRegisters ? draft.Number : draft[ColumnRole.Register];
        if (text.Length == 0)
        {
            return null;
        }

        if (registers.Read(text) is { } register)
        {
            return register;
        }

        Say(draft, ColumnRole.Register, $"{Quote.Of(text)} is no register", "an address, decimal, hexadecimal or from 40001, would do");
        return null;
    }

    private void Say(RowDraft draft, ColumnRole role, string found, string wouldDo)
    {
        var (line, column) = draft.Place(role);
        cautions.Add(new Place(line, column + 1, 0, 0), $"parameter {draft.Number}, cell {ListingGrid.CellName(column, line)}", found, wouldDo);
    }
}
