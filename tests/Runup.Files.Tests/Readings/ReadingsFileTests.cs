using Runup.Commissioning.Diagnosis;
using Runup.Files.Readings;

namespace Runup.Files.Tests.Readings;

public sealed class ReadingsFileTests
{
    private static IReadOnlyList<ReadingRow> Rows(string text) => ReadingsFile.ReadText(text, "a.readings.csv").ShouldBeOfType<ReadingsText.Read>().Rows;

    private static string Problem(string text) =>
        ReadingsFile.ReadText(text, "a.readings.csv").ShouldBeOfType<ReadingsText.Faulty>().Problems.ShouldHaveSingleItem().ToString();

    [Fact]
    public void Every_column_is_read_in_its_unit()
    {
        var row = Rows(
            "time_s,output_frequency_Hz,output_current_A,current_error_percent,dc_bus_V,output_voltage_V,speed_rpm,torque_percent,winding_resistance_ohm,winding_temperature_C,state,trip,coupled,note\n"
            + "1.5,50,6.2,3,560,398,1497,12,0.98,21,running,,no,\"clamp, averaging\"\n").ShouldHaveSingleItem();
        row.Line.ShouldBe(2);
        row.Time!.Value.Seconds.ShouldBe(1.5);
        row.Frequency!.Value.Hertz.ShouldBe(50);
        row.Current!.Value.Amperes.ShouldBe(6.2);
        row.CurrentError.Percent.ShouldBe(3, 1e-12);
        row.DcBus!.Value.Volts.ShouldBe(560);
        row.OutputVoltage!.Value.Volts.ShouldBe(398);
        row.Speed!.Value.Rpm.ShouldBe(1497, 1e-9);
        row.Torque!.Value.Percent.ShouldBe(12, 1e-12);
        row.WindingResistance!.Value.Ohms.ShouldBe(0.98);
        row.WindingTemperature!.Value.Celsius.ShouldBe(21, 1e-9);
        row.State.ShouldBe("running");
        row.Trip.ShouldBeNull();
        row.Coupled.ShouldBe(false);
        row.Note.ShouldBe("clamp, averaging");
    }

    [Fact]
    public void Blanks_and_missing_columns_are_what_was_not_read()
    {
        var row = Rows("output_current_A;output_frequency_Hz\n6,2;\n").ShouldHaveSingleItem();
        row.Current!.Value.Amperes.ShouldBe(6.2);
        row.Frequency.ShouldBeNull();
        row.Coupled.ShouldBeNull();
        row.CurrentError.Percent.ShouldBe(2, 1e-12);
    }

    [Theory]
    [InlineData("output_current\n6.2\n", "a.readings.csv:1:1 (file): the column `output_current`; columns ")]
    [InlineData("output_current_A\nsix\n", "a.readings.csv:2:1 output_current_A: ")]
    [InlineData("output_current_A\n-6\n", "a.readings.csv:2:1 output_current_A: `-6`; a value below that has no meaning here")]
    [InlineData("output_current_A,coupled\n6,perhaps\n", "a.readings.csv:2:3 coupled: `perhaps`; `yes` or `no` would do")]
    [InlineData("speed_rpm\n1e99\n", "a.readings.csv:2:1 speed_rpm: `1e99`; no machine has such a figure")]
    [InlineData("speed_rpm\n", "a.readings.csv:1:1 (file): it holds no readings; ")]
    public void What_is_wrong_is_said_with_its_place(string text, string said) => Problem(text).ShouldStartWith(said);

    [Fact]
    public void A_file_that_is_not_there_is_said() =>
        ReadingsFile.Read("/nowhere/a.readings.csv").ShouldBeOfType<ReadingsText.Faulty>().Problems.ShouldHaveSingleItem().Found.ShouldBe("there is no such file");

    [Fact]
    public void The_page_names_every_column_and_its_example_is_read()
    {
        var page = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "readings-file.md")).ReplaceLineEndings("\n");
        foreach (var column in ReadingsFile.Columns)
        {
            page.ShouldContain($"| `{column}` |");
        }

        Rows(page.Split("```csv\n")[1].Split("```")[0]).Count.ShouldBe(4);
    }
}
