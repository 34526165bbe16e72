using Runup.Files.Csv;
using Runup.Quantities;

namespace Runup.Files.Readings;

/// <summary>The cells of one row by the names of their columns; what is wrong with a cell becomes a problem.</summary>
internal sealed class ReadingCells(CsvTable table, IReadOnlyList<CsvCell> cells, Problems problems)
{
    internal int Line => cells[0].Place.Line;

    internal string? Text(string column) => table.Column(column) is { } place && cells[place].Text is { Length: > 0 } text ? text : null;

    internal T? Number<T>(string column, Func<double, T> make, double lowest = double.NegativeInfinity)
        where T : struct
    {
        if (Text(column) is not { } text)
        {
            return null;
        }

        var place = cells[table.Column(column)!.Value].Place;
        switch (QuantityText.ReadSi(Dimension.PureNumber, text))
        {
            case Reading<double>.Value { Quantity: var value } when Magnitude.Is(value) && value >= lowest:
                return make(value);
            case Reading<double>.Value { Quantity: var value }:
                problems.Add(place, column, Quote.Of(text), value < lowest ? "a value below that has no meaning here" : Magnitude.WouldDo);
                return null;
            case Reading<double>.Problem problem:
                problems.Add(place, column, problem.Found, problem.WouldDo);
                return null;
            default:
                throw new InvalidOperationException("The set of readings is closed.");
        }
    }

    internal bool? YesOrNo(string column)
    {
        switch (Text(column)?.ToUpperInvariant())
        {
            case null:
                return null;
            case "YES" or "TRUE":
                return true;
            case "NO" or "FALSE":
                return false;
            default:
                problems.Add(cells[table.Column(column)!.Value].Place, column, Quote.Of(Text(column)!), "`yes` or `no` would do");
                return null;
        }
    }
}
