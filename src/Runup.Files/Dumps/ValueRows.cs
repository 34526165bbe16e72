using System.Globalization;
using Runup.Files.Csv;
using Runup.Profiles;

namespace Runup.Files.Dumps;

/// <summary>The rows of a table of values, as they come.</summary>
internal sealed class ValueRows(int? counts, DriveProfile profile, DriveSize size, Problems problems, IList<FileNote> notes)
{
    private readonly Dictionary<string, (Parameter Parameter, CsvCell Cell, bool InCounts, string Unit)> rows = new(StringComparer.Ordinal);

    internal void Take(CsvCell number, (int Column, CsvCell? Cell) value, string unit)
    {
        // A spreadsheet's guard against formulas.
        var name = number.Text.TrimStart('\'');
        if (value.Cell is not { } cell || name.Length == 0)
        {
            return;
        }

        if (profile.Find(name) is not { } parameter)
        {
            notes.Add(new(problems.File, number.Place.Line, number.Place.Column, name, $"{profile.Title} has no such parameter; passed over"));
        }
        else if (rows.TryGetValue(name, out var first))
        {
            problems.Add(number.Place, name, "it is there a second time", string.Create(CultureInfo.InvariantCulture, $"one of this line and line {first.Cell.Place.Line} would do"));
        }
        else if (parameter.IsKept)
        {
            rows.Add(name, (parameter, cell, value.Column == counts, unit));
        }
    }

    /// <summary>What they say; null where anything is wrong.</summary>
    internal ParameterValues? Values()
    {
        // Digits mean something only in their unit, which a choice may choose.
        var values = ParameterValues.Empty;
        foreach (var (parameter, cell, inCounts, unit) in rows.Values.OrderBy(r => r.Parameter.Form is not ParameterForm.Choices))
        {
            if (Raw(parameter, cell, inCounts, unit, values) is { } raw)
            {
                values = values.With(parameter.Number, raw);
            }
        }

        return problems.Any ? null : values;
    }

    private long? Raw(Parameter parameter, CsvCell cell, bool inCounts, string unit, ParameterValues values)
    {
        var shown = DisplayText.Unit(parameter, values);
        if (!inCounts && unit.Length > 0 && !string.Equals(unit, shown, StringComparison.Ordinal))
        {
            problems.Add(cell.Place, parameter.Number, $"a value in {Quote.Of(unit)}", shown is null ? "the drive shows it without a unit" : $"the drive shows it in {shown}; or give the parameter that chooses the unit");
            return null;
        }

        var reading = inCounts
            ? long.TryParse(cell.Text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var count) ? new DisplayReading.Value(count) : new DisplayReading.Unreadable($"{Quote.Of(cell.Text)} is no whole number of counts.")
            : DisplayText.Read(parameter, cell.Text.TrimStart('\''), values);
        switch (reading)
        {
            case DisplayReading.Value value when parameter.Accepts(value.Raw, size):
                return value.Raw;
            case DisplayReading.Value:
                problems.Add(cell.Place, parameter.Number, Quote.Of(cell.Text), $"a value that size {size.Name} takes would do");
                return null;
            case DisplayReading.Unreadable unreadable:
                problems.Add(cell.Place, parameter.Number, unreadable.Why.TrimEnd('.'), "what the drive's display shows would do");
                return null;
            default:
                throw new InvalidOperationException("Every reading is told apart.");
        }
    }
}
