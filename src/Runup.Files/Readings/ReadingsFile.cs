using Runup.Commissioning.Diagnosis;
using Runup.Files.Csv;
using Runup.Quantities;

namespace Runup.Files.Readings;

/// <summary>Reads files of readings (<c>*.readings.csv</c>): columns with their unit in the name, in any order, any of them; blanks are what was not read.</summary>
public static class ReadingsFile
{
    private const int LargestBytes = 4 << 20;

    /// <summary>The columns that are known.</summary>
    public static IReadOnlyList<string> Columns { get; } =
    [
        "time_s", "output_frequency_Hz", "output_current_A", "current_error_percent", "dc_bus_V", "output_voltage_V", "speed_rpm", "torque_percent",
        "winding_resistance_ohm", "winding_temperature_C", "state", "trip", "coupled", "note",
    ];

    /// <summary>Reads a file.</summary>
    public static ReadingsText Read(string path)
    {
        var problems = new Problems(path);
        return Rows(CsvTable.ReadFile(path, LargestBytes, problems), problems);
    }

    /// <summary>Reads a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="name">What the file is called in problems.</param>
    public static ReadingsText ReadText(string text, string name)
    {
        var problems = new Problems(name);
        return Rows(CsvTable.Read(text, problems), problems);
    }

    private static ReadingsText Rows(CsvTable? table, Problems problems)
    {
        if (table is null)
        {
            return new ReadingsText.Faulty(problems.InOrder());
        }

        foreach (var unknown in table.Header.Where(cell => !Columns.Contains(cell.Text, StringComparer.OrdinalIgnoreCase)))
        {
            problems.Add(unknown.Place, FileProblem.WholeFile, $"the column {Quote.Of(unknown.Text)}", $"columns {Quote.List(Columns)} would do");
        }

        var rows = table.Rows.Select(cells => Row(new ReadingCells(table, cells, problems))).ToList();
        if (rows.Count == 0)
        {
            problems.AddForFile("it holds no readings", "a row for each reading beneath the names of the columns would do");
        }

        return problems.Any ? new ReadingsText.Faulty(problems.InOrder()) : new ReadingsText.Read(rows);
    }

    private static ReadingRow Row(ReadingCells cells) => new()
    {
        Line = cells.Line,
        Time = cells.Number("time_s", Duration.FromSeconds),
        Frequency = cells.Number("output_frequency_Hz", ElectricalFrequency.FromHertz),
        Current = cells.Number("output_current_A", LineCurrent.FromAmperes, lowest: 0),
        CurrentError = cells.Number("current_error_percent", percent => Fraction.FromRatio(percent / 100), lowest: 0) ?? ReadingRow.UsualError,
        DcBus = cells.Number("dc_bus_V", DcVoltage.FromVolts, lowest: 0),
        OutputVoltage = cells.Number("output_voltage_V", LineVoltage.FromVolts, lowest: 0),
        Speed = cells.Number("speed_rpm", ShaftSpeed.FromRpm),
        Torque = cells.Number("torque_percent", percent => Fraction.FromRatio(percent / 100)),
        WindingResistance = cells.Number("winding_resistance_ohm", Resistance.FromOhms, lowest: 0),
        WindingTemperature = cells.Number("winding_temperature_C", Temperature.FromCelsius, lowest: -273),
        State = cells.Text("state"),
        Trip = cells.Text("trip"),
        Coupled = cells.YesOrNo("coupled"),
        Note = cells.Text("note"),
    };
}
