using Runup.Quantities;

namespace Runup.Files.Csv;

/// <summary>Reads columns of numbers, whose unit stands in the column's name.</summary>
public static class CsvColumns
{
    /// <summary>The named columns of a table, row by row; null with problems where one is missing or a cell is no number.</summary>
    public static IReadOnlyList<double[]>? Numbers(this CsvTable table, IReadOnlyList<string> names, Problems problems)
    {
        var before = problems.Count;
        var places = names.Select(table.Column).ToList();
        for (var i = 0; i < names.Count; i++)
        {
            if (places[i] is null)
            {
                problems.Add(table.Header[0].Place, names[i], "there is no such column", $"columns {Quote.List(names)} would do");
            }
        }

        foreach (var extra in table.Header.Where(h => !names.Contains(h.Text, StringComparer.OrdinalIgnoreCase)))
        {
            problems.Add(extra.Place, FileProblem.WholeFile, $"the column {Quote.Of(extra.Text)}", $"columns {Quote.List(names)} would do");
        }

        return problems.Count > before ? null : Rows(table, names, [.. places.Select(p => p!.Value)], problems);
    }

    private static List<double[]>? Rows(CsvTable table, IReadOnlyList<string> names, int[] places, Problems problems)
    {
        var before = problems.Count;
        var rows = new List<double[]>(table.Rows.Count);
        foreach (var row in table.Rows)
        {
            var numbers = new double[places.Length];
            for (var i = 0; i < places.Length; i++)
            {
                var cell = row[places[i]];
                switch (QuantityText.ReadSi(Dimension.PureNumber, cell.Text))
                {
                    case Reading<double>.Value v when !Magnitude.Is(v.Quantity):
                        problems.Add(cell.Place, names[i], Quote.Of(cell.Text), Magnitude.WouldDo);
                        break;
                    case Reading<double>.Value v:
                        numbers[i] = v.Quantity;
                        break;
                    case Reading<double>.Problem p:
                        problems.Add(cell.Place, names[i], cell.Text.Length == 0 ? "an empty cell" : p.Found, p.WouldDo);
                        break;
                }
            }

            rows.Add(numbers);
        }

        return problems.Count == before ? rows : null;
    }
}
