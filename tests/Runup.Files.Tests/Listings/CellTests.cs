using Runup.Files.Listings;

namespace Runup.Files.Tests.Listings;

/// <summary>How manuals write ranges, choices, numbers, registers and units, a cell for each habit.</summary>
public sealed class CellTests
{
    private static readonly NumberHabit Point = new(false);
    private static readonly NumberHabit Comma = new(true);

    [Theory]
    [InlineData("0.00 to 400.00 Hz", false, "0.00 400.00 2 Hz")]
    [InlineData("0.1~3600", false, "0.1 3600 1 ")]
    [InlineData("0,5…600,0", true, "0.5 600.0 1 ")]
    [InlineData("-10 - +10", false, "-10 10 0 ")]
    [InlineData("0-100", false, "0 100 0 ")]
    [InlineData("-100–100 %", false, "-100 100 0 %")]
    [InlineData("0..100", false, "0 100 0 ")]
    [InlineData("0.0 ÷ 50.0 s", false, "0.0 50.0 1 s")]
    [InlineData("10 Hz to 400 Hz", false, "10 400 0 Hz")]
    [InlineData("(0.1 - 999.9)", false, "0.1 999.9 1 ")]
    [InlineData("0 to 24 000 r/min", false, "0 24000 0 rpm")]
    [InlineData("0...24,000", false, "0 24000 0 ")]
    [InlineData("0...24.000", true, "0 24000 0 ")]
    [InlineData("0 to 1'450", false, "0 1450 0 ")]
    [InlineData("20…200 % of rated current", false, "20 200 0 %")]
    [InlineData("±100.0 %", false, "-100.0 100.0 1 %")]
    [InlineData("-300.0~+300.0%", false, "-300.0 300.0 1 %")]
    [InlineData("0000h-FFFFh", false, "0 65535 0 ")]
    [InlineData("0x0 to 0xFF", false, null)]
    [InlineData("1 – 15 kHz", false, "1 15 0 kHz")]
    [InlineData("0.00 Hz … 50.00 Hz", false, "0.00 50.00 2 Hz")]
    [InlineData("by size", false, null)]
    [InlineData("kW / hp", false, null)]
    public void Ranges_are_read_in_every_habit(string text, bool comma, string? expected)
    {
        var range = RangeText.Read(text, comma ? Comma : Point);
        (range is null ? null : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{range.Low} {range.High} {range.Decimals} {range.Unit}")).ShouldBe(expected);
    }

    [Theory]
    [InlineData("0: kW 1: hp", "0 kW|1 hp")]
    [InlineData("0 = off; 1 = on", "0 off|1 on")]
    [InlineData("0=Panel, 1=Terminals, 2=Bus", "0 Panel|1 Terminals|2 Bus")]
    [InlineData("• 0 – ramp\n• 1 – coast\n• 2 – DC braking", "0 ramp|1 coast|2 DC braking")]
    [InlineData("[0] star [1] delta", "0 star|1 delta")]
    [InlineData("(0) star (1) delta", "0 star|1 delta")]
    [InlineData("0) none 1) even 2) odd", "0 none|1 even|2 odd")]
    [InlineData("0 kW, 1 hp", "0 kW|1 hp")]
    [InlineData("Off (0), On (1)", "0 Off|1 On")]
    [InlineData("0: 0-10 V 1: 0-20 mA 2: 4-20 mA", "0 0-10 V|1 0-20 mA|2 4-20 mA")]
    [InlineData("0: 4800 1: 9600 2: 19200", "0 4800|1 9600|2 19200")]
    [InlineData("0: No check (N,8,1) 1: Even (E,8,1)", "0 No check (N,8,1)|1 Even (E,8,1)")]
    [InlineData("1 - Class 10 / 2 - Class 20", "1 Class 10|2 Class 20")]
    [InlineData("0: straight line\n1: square\n2: points", "0 straight line|1 square|2 points")]
    [InlineData("0.00 to 400.00 Hz", "")]
    [InlineData("-10 - +10", "")]
    [InlineData("0 - 400 Hz", "")]
    public void Choices_in_one_cell_are_read_in_every_habit(string text, string expected) =>
        string.Join('|', ChoiceText.Read(text).Select(c => $"{c.Raw} {c.Label}")).ShouldBe(expected);

    [Theory]
    [InlineData("104", "104")]
    [InlineData("104*", "104")]
    [InlineData("104 ¹⁾", "104")]
    [InlineData("No. 104", "104")]
    [InlineData("#104", "104")]
    [InlineData("6046h:1", "6046h:1")]
    [InlineData("0x6046.01", "6046h:1")]
    [InlineData("6046h/2", "6046h:2")]
    [InlineData("2101 sub 3", "2101h:3")]
    [InlineData("2101h sub-index 0A", "2101h:A")]
    [InlineData("6075h", "6075h")]
    [InlineData("0x603F", "603Fh")]
    [InlineData("603F", "603Fh")]
    [InlineData("6046:00", "6046h")]
    [InlineData("170/171", "170")]
    [InlineData("Motor data", null)]
    [InlineData("0.1", null)]
    [InlineData("", null)]
    public void Numbers_of_parameters_are_read_in_every_habit(string text, string? expected)
    {
        var number = NumberCell.Read(text, "", objects: false)?.Number;
        (number is "0.1" ? null : number).ShouldBe(expected);
    }

    [Theory]
    [InlineData("40105", "40105,40106", 104)]
    [InlineData("0x006A", "0x006A", 106)]
    [InlineData("006Ah", "006Ah", 106)]
    [InlineData("00AA", "00AA,0010", 170)]
    [InlineData("170", "170,171", 170)]
    [InlineData("170/171", "170/171", 170)]
    [InlineData("x", "170", null)]
    public void Registers_are_read_as_their_column_counts(string cell, string column, int? expected) =>
        RegisterColumn.Of(column.Split(','), "Modbus").Read(cell).ShouldBe(expected);

    [Theory]
    [InlineData("0.1", "0.1")]
    [InlineData("×0.01", "0.01")]
    [InlineData("0.1 Hz", "0.1")]
    [InlineData("1/100", "0.01")]
    [InlineData("/10", "0.1")]
    [InlineData("1 = 0.01 s", "0.01")]
    [InlineData("10 = 1.0 Hz", "0.1")]
    [InlineData("text", null)]
    public void Scales_are_read_in_every_habit(string text, string? expected) =>
        ScaleCell.Read(text, Point)?.PerCount.ToString("0.####", System.Globalization.CultureInfo.InvariantCulture).ShouldBe(expected);

    [Theory]
    [InlineData("Sec.", "s")]
    [InlineData("[Hz]", "Hz")]
    [InlineData("0.1 s", "s")]
    [InlineData("x0.01A", "A")]
    [InlineData("% In", "%")]
    [InlineData("% of rated", "%")]
    [InlineData("min-1", "rpm")]
    [InlineData("VAC", "V")]
    [InlineData("-", null)]
    [InlineData("bananas", null)]
    public void Units_are_read_in_the_spellings_of_tables(string text, string? expected) => UnitCell.Read(text).ShouldBe(expected);
}
