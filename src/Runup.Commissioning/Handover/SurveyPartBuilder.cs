using System.Globalization;
using Runup.Commissioning.Survey;
using Runup.Quantities;

namespace Runup.Commissioning.Handover;

/// <summary>Collects the rows of one part of the survey.</summary>
internal sealed class SurveyPartBuilder(string title)
{
    private readonly List<SurveyRow> rows = [];
    private readonly List<string> missing = [];

    public SurveyPart Part => new(title, rows, missing);

    /// <summary>A quantity; its absence is named.</summary>
    public SurveyPartBuilder Quantity<T>(string name, Datum<T>? datum)
        where T : struct, IQuantity<T> => Add(name, datum, v => BothUnits.Write(v));

    /// <summary>A word; its absence is named.</summary>
    public SurveyPartBuilder Word(string name, Datum<string>? datum) => Add(name, datum, v => v);

    /// <summary>A count; its absence is named.</summary>
    public SurveyPartBuilder Count(string name, Datum<int>? datum) => Add(name, datum, v => v.ToString(CultureInfo.InvariantCulture));

    /// <summary>Yes or no; its absence is named.</summary>
    public SurveyPartBuilder YesNo(string name, Datum<bool>? datum) => Add(name, datum, v => v ? "yes" : "no");

    /// <summary>One of a set; its absence is named.</summary>
    public SurveyPartBuilder OneOf<T>(string name, Datum<T>? datum)
        where T : struct, Enum => Add(name, datum, v => v.Words());

    /// <summary>What most sets do without: its absence is not named.</summary>
    public SurveyPartBuilder Optional(Action<SurveyPartBuilder> add)
    {
        var before = missing.Count;
        add(this);
        missing.RemoveRange(before, missing.Count - before);
        return this;
    }

    /// <summary>A row that is put together from several data.</summary>
    public SurveyPartBuilder Text(string name, string? value)
    {
        if (value is not null)
        {
            rows.Add(new(name, value, null, Provenance.Unstated, null));
        }

        return this;
    }

    private SurveyPartBuilder Add<T>(string name, Datum<T>? datum, Func<T, string> write)
    {
        if (datum is null)
        {
            missing.Add(name);
            return this;
        }

        var value = write(datum.Value);
        rows.Add(new(name, value, datum.AsWritten is { } written && !Reads(value, written) ? written : null, datum.From, Note(datum), datum.Photo));
        return this;
    }

    // What was written is shown again only where it says more than the value does.
    private static bool Reads(string value, string written) =>
        value.StartsWith(written, StringComparison.OrdinalIgnoreCase) || SameNumber(value, written) || value.Contains($"({written})", StringComparison.Ordinal);

    private static bool SameNumber(string value, string written) =>
        decimal.TryParse(value, NumberStyles.Number, CultureInfo.InvariantCulture, out var a) && decimal.TryParse(written, NumberStyles.Number, CultureInfo.InvariantCulture, out var b) && a == b;

    private static string? Note<T>(Datum<T> datum) => (datum.Note, datum.Error) switch
    {
        (null, null) => null,
        ({ } note, null) => note,
        (null, { } error) => $"±{error}",
        ({ } note, { } error) => $"±{error}; {note}",
    };
}
