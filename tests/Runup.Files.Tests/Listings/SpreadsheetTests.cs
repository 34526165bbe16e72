using System.IO.Compression;
using System.Text;
using MiniExcelLibs;
using Runup.Files.Listings;

namespace Runup.Files.Tests.Listings;

/// <summary>Spreadsheets: one that another program writes, and one by hand with everything that cells can be.</summary>
public sealed class SpreadsheetTests
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    [Fact]
    public void A_spreadsheet_that_MiniExcel_wrote_is_read()
    {
        using var stream = new MemoryStream();
        stream.SaveAs(new[] { new { No = 104, Name = "Motor output", Range = "0.05 to 150.00 kW", Default = 4.0 }, new { No = 105, Name = "Motor voltage", Range = "100 to 500 V", Default = 400.0 } });
        Read(stream.ToArray()).Listing!.Parameters.Select(r => $"{r.Number} {r.Name} {Reading.Shown(r)}").ShouldBe(["104 Motor output 0.05..150.00 kW x0.01 = 4 []", "105 Motor voltage 100..500 V x1 = 400 []"]);
    }

    [Fact]
    public void Numbers_come_with_the_decimals_that_their_cells_show_and_merged_cells_with_their_first()
    {
        var listing = Read(Book()).Listing!;
        listing.Parameters.Select(r => $"{r.Line} {r.Number} {r.Group}: {r.Name} {Reading.Shown(r)}").ShouldBe([
            "3 104 Motor: Motor output 0.05..150.00 kW x0.01 = 4.00 []",
            "4 105 Motor: Motor voltage 100..500 V x1 = 400 []",
            "5 106 Motor: Motor current ?..200 A x1 = 8 []",
        ]);
    }

    [Fact]
    public void A_cell_that_became_a_date_is_told_so() =>
        Read(Book()).Cautions.ShouldBe(["t.xlsx:5:3 parameter 106, cell C5: `(a date: 45300)` is no number; a number would do; a limit that another parameter gives is left out"]);

    [Fact]
    public void A_sheet_may_be_named()
    {
        Read(Book(), "Notes").Problems.ShouldNotBeEmpty();
        Read(Book(), "List").Listing.ShouldNotBeNull();
        Read(Book(), "None").Problems.Single().ShouldContain("`Notes`, `List` would do");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(10)]
    [InlineData(300)]
    public void What_is_cut_off_is_no_spreadsheet(int length) => Read(Book()[..length]).Problems.Single().ShouldContain("it can't be read as a spreadsheet");

    private static (Listing? Listing, IReadOnlyList<string> Problems, IReadOnlyList<string> Cautions) Read(byte[] bytes, string? sheet = null)
    {
        var problems = new Problems("t.xlsx");
        var cautions = new Problems("t.xlsx");
        var listing = ListingFile.Read(bytes, ListingKind.Spreadsheet, new ListingOptions { Sheet = sheet }, problems, cautions);
        return (listing, [.. problems.InOrder().Select(p => p.ToString())], [.. cautions.InOrder().Select(p => p.ToString())]);
    }

    internal static byte[] Book()
    {
        using var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            Part(zip, "xl/_rels/workbook.xml.rels", "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"r1\" Target=\"worksheets/sheet1.xml\"/><Relationship Id=\"r2\" Target=\"/xl/worksheets/sheet2.xml\"/></Relationships>");
            Part(zip, "xl/workbook.xml", $"<workbook xmlns=\"{Main}\" xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\"><sheets><sheet name=\"Notes\" sheetId=\"1\" r:id=\"r1\"/><sheet name=\"List\" sheetId=\"2\" r:id=\"r2\"/></sheets></workbook>");
            Part(zip, "xl/styles.xml", $"<styleSheet xmlns=\"{Main}\"><numFmts><numFmt numFmtId=\"164\" formatCode=\"0.00;-0.00\"/><numFmt numFmtId=\"165\" formatCode=\"d-mmm\"/></numFmts><cellStyleXfs><xf numFmtId=\"0\"/></cellStyleXfs><cellXfs><xf numFmtId=\"0\"/><xf numFmtId=\"164\"/><xf numFmtId=\"165\"/></cellXfs></styleSheet>");
            Part(zip, "xl/sharedStrings.xml", $"<sst xmlns=\"{Main}\"><si><t>Motor output</t></si><si><r><t>Motor </t></r><r><t>voltage</t></r><rPh><t>no</t></rPh></si></sst>");
            Part(zip, "xl/worksheets/sheet1.xml", $"<worksheet xmlns=\"{Main}\"><sheetData><row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>nothing</t></is></c></row></sheetData></worksheet>");
            Part(zip, "xl/worksheets/sheet2.xml", $"""
                <worksheet xmlns="{Main}"><sheetData>
                <row r="1">{Word("A1", "No.")}{Word("B1", "Name")}{Word("C1", "Min")}{Word("D1", "Max")}{Word("E1", "Unit")}{Word("F1", "Default")}</row>
                <row r="2">{Word("A2", "Motor")}</row>
                <row r="3"><c r="A3"><v>104</v></c><c r="B3" t="s"><v>0</v></c><c r="C3" s="1"><v>0.050000000000000003</v></c><c r="D3" s="1"><v>150</v></c>{Word("E3", "kW")}<c r="F3" s="1"><v>4</v></c></row>
                <row r="4"><c r="A4"><v>105</v></c><c r="B4" t="s"><v>1</v></c><c r="C4"><v>100</v></c><c r="D4"><v>500</v></c>{Word("E4", "V")}<c r="F4"><v>400</v></c></row>
                <row r="5"><c r="A5"><v>106</v></c>{Word("B5", "Motor current")}<c r="C5" s="2"><v>45300</v></c><c r="D5"><v>200</v></c>{Word("E5", "A")}<c r="F5"><v>8</v></c></row>
                </sheetData><mergeCells><mergeCell ref="A2:F2"/></mergeCells></worksheet>
                """);
        }

        return stream.ToArray();
    }

    private static string Word(string at, string text) => $"<c r=\"{at}\" t=\"inlineStr\"><is><t>{text}</t></is></c>";

    private static void Part(ZipArchive zip, string name, string text)
    {
        using var part = zip.CreateEntry(name).Open();
        part.Write(Encoding.UTF8.GetBytes(text));
    }
}
