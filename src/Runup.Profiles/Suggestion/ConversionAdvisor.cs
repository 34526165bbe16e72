using Runup.Quantities;
using Runup.Settings;

namespace Runup.Profiles;

/// <summary>Finds in a table's own words in which way its rows count: ramps over which frequency, per cent of what, speeds for frequencies.</summary>
/// <param name="rows">The rows.</param>
/// <param name="suggestions">For each row what it may mean.</param>
public sealed class ConversionAdvisor(IReadOnlyList<ListedParameter> rows, IReadOnlyList<Suggestion> suggestions)
{
    private static readonly Setting[] Ramps = [Setting.AccelerationTime, Setting.DecelerationTime, Setting.SecondAccelerationTime, Setting.SecondDecelerationTime];

    /// <summary>The way of counting of a row, by its place.</summary>
    public ConversionAdvice Of(int place)
    {
        var row = rows[place];
        if (suggestions[place].Setting is not { Form: SettingForm.Numeric form } setting || row.IsChosen || row.Access is ParameterAccess.ReadOnly)
        {
            return new ConversionAdvice.None();
        }

        if (row.Number.Length == 7 && row.Number[..4] is "6048" or "6049")
        {
            return row.Number[^1] == '1' ? new ConversionAdvice.Declared("speed-change-in", row.Number[..^1] + "2", "object of IEC 61800-7-201", IsSaid: true)
                : new ConversionAdvice.Declared("change-of", row.Number[..^1] + "1", "object of IEC 61800-7-201", IsSaid: true);
        }

        return Ramps.Contains(setting) ? OfRamp(row) : OfUnit(row, setting, form.Unit);
    }

    private ConversionAdvice OfRamp(ListedParameter row)
    {
        if (CountingWords.IsRate(row.Unit))
        {
            return new ConversionAdvice.Asked($"it counts in {row.Unit}, a rate, and the setting is a time: no conversion says it, leave it a guess");
        }

        return CountingWords.RampCountsTo(row) switch
        {
            RampEnd.Base => Over(Setting.BaseFrequency, "base frequency"),
            RampEnd.Rated => Over(Setting.MotorRatedFrequency, "the motor's rated frequency"),
            RampEnd.Maximum => new ConversionAdvice.None(),
            RampEnd.Fixed => new ConversionAdvice.Declared("counted-over", CountingWords.FixedEnd(row), "the table says so", IsSaid: true),
            _ => new ConversionAdvice.Asked("from 0 to which frequency? Without `counted-over` to the maximum frequency"),
        };
    }

    private ConversionAdvice Over(Setting end, string name) => Carrying(end) is { } number
        ? new ConversionAdvice.Declared("counted-over", number, $"the table says from 0 to {name}", IsSaid: true)
        : new ConversionAdvice.Asked($"it counts from 0 to {name}, and no row here means that: `counted-over` its number");

    private ConversionAdvice OfUnit(ListedParameter row, Setting setting, string unit)
    {
        var isPart = row.Unit is "%" or "‰";
        if (unit is "Hz" && row.Unit is "rpm")
        {
            return Carrying(Setting.MotorPoleCount) is not null
                ? new ConversionAdvice.Declared("at-no-slip", "yes", "it counts in rpm, the setting in Hz", IsSaid: true)
                : new ConversionAdvice.Asked("it counts in rpm and the setting in Hz: `at-no-slip: yes`, which needs a row that means motor-pole-count");
        }

        if (isPart && unit is "A" or "V" or "Hz")
        {
            return PartOf(row, setting, unit);
        }

        if (unit is "%" && ProfileUnit.Find(row.Unit)?.Dimension is { } dimension && (dimension == Dimension.Current || dimension == Dimension.Voltage))
        {
            return Absolute(setting, dimension);
        }

        return new ConversionAdvice.None();
    }

    private ConversionAdvice PartOf(ListedParameter row, Setting setting, string unit)
    {
        var whole = CountingWords.PartOf(row);
        if (whole is Whole.Drive)
        {
            return rows.FirstOrDefault(CountingWords.IsDriveCurrent) is { } rating
                ? new ConversionAdvice.Declared("part-of", rating.Number, "the table says of the drive's rating", IsSaid: true)
                : unit is "A" ? new ConversionAdvice.Declared("part-of", "{current: normal}", "the table says of the drive's rating", IsSaid: true)
                : new ConversionAdvice.Asked($"{row.Unit} of the drive's own rating: `part-of` a fixed value, such as `part-of: 400 V`");
        }

        var of = (unit, whole) switch
        {
            ("A", _) => Setting.MotorRatedCurrent,
            ("V", _) => Setting.MotorRatedVoltage,
            (_, Whole.Base) => Setting.BaseFrequency,
            (_, Whole.Motor) => Setting.MotorRatedFrequency,
            _ => Setting.MaximumFrequency,
        };
        var isSaid = whole is not Whole.Unsaid;
        return of == setting || Carrying(of) is not { } number
            ? new ConversionAdvice.Asked($"{row.Unit} of what? `part-of` the number of the row that holds it")
            : new ConversionAdvice.Declared("part-of", number, isSaid ? $"the table says {(row.UnitText.Length > row.Unit.Length ? row.UnitText : "so")}" : $"usual; the table does not say {row.Unit} of what", isSaid);
    }

    private ConversionAdvice Absolute(Setting setting, Dimension dimension)
    {
        var of = dimension == Dimension.Current ? Setting.MotorRatedCurrent : Setting.MotorRatedVoltage;
        var fits = dimension == Dimension.Current ? setting == Setting.DcBrakingCurrent || setting == Setting.DcPreheatCurrent : setting == Setting.TorqueBoost;
        return fits && Carrying(of) is { } number
            ? new ConversionAdvice.Declared("absolute-of", number, "it is absolute, the setting a part", IsSaid: true)
            : new ConversionAdvice.Asked("it is absolute and the setting is a part: of what? `absolute-of` the number of the row that holds it, or leave it a guess");
    }

    private string? Carrying(Setting setting)
    {
        for (var i = 0; i < rows.Count; i++)
        {
            if (suggestions[i].Setting == setting)
            {
                return rows[i].Number;
            }
        }

        return null;
    }
}
