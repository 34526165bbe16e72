using System.IO.Compression;
using System.Text;
using MiniExcelLibs;
using Runup.Files.Listings;

namespace Runup.Files.Tests.Listings;

/// <summary>Spreadsheets: one that another program writes, and one by hand with everything that cells can be.</summary>
public sealed class SpreadsheetTests
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Links = "http://schemas.openxmlformats.org/package/2006/relationships";
    private const string Office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    private static readonly (string Part, string Kind)[] Types = [("workbook", "sheet.main"), ("worksheets/sheet1", "worksheet"), ("worksheets/sheet2", "worksheet"), ("styles", "styles"), ("sharedStrings", "sharedStrings")];

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

    /// <summary>Files that were made to do harm, or that lack what they point at: one line each, and quickly.</summary>
    [Theory]
    [InlineData("xl/worksheets/sheet2.xml", "<!DOCTYPE worksheet [<!ENTITY x SYSTEM \"file:///etc/passwd\">]><worksheet xmlns=\"" + Main + "\"><sheetData><row><c t=\"inlineStr\"><is><t>&x;</t></is></c></row></sheetData></worksheet>")]
    [InlineData("xl/sharedStrings.xml", "<!DOCTYPE sst [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;\">]><sst xmlns=\"" + Main + "\"><si><t>&b;</t></si></sst>")]
    [InlineData("xl/workbook.xml", "<workbook/>")]
    [InlineData("xl/workbook.xml", "")]
    [InlineData("xl/worksheets/sheet2.xml", "<worksheet")]
    [InlineData("[Content_Types].xml", "<Types/>")]
    public void A_hostile_or_broken_part_is_told_in_one_line(string part, string text)
    {
        var (listing, problems, _) = Read(With(part, Encoding.UTF8.GetBytes(text)));
        listing.ShouldBeNull();
        problems.Count.ShouldBe(1);
        problems[0].ShouldMatch("it can't be read as a spreadsheet|it has no sheets");
    }

    [Theory]
    [InlineData("xl/worksheets/sheet2.xml", "<worksheet xmlns=\"" + Main + "\"><sheetData>", "<row><c><v>1</v></c></row>", 1_000_000)]
    [InlineData("xl/sharedStrings.xml", "<sst xmlns=\"" + Main + "\">", "<si/>", 3_000_000)]
    [InlineData("xl/styles.xml", "<styleSheet xmlns=\"" + Main + "\"><numFmts>", "<numFmt/>", 3_000_000)]
    [InlineData("xl/workbook.xml", "<workbook xmlns=\"" + Main + "\"><sheets>", "<sheet/>", 3_000_000)]
    [InlineData("xl/worksheets/sheet2.xml", "<worksheet xmlns=\"" + Main + "\"><sheetData><row>", "<row>", 1_000_000)]
    [InlineData("xl/worksheets/sheet2.xml", "<worksheet xmlns=\"" + Main + "\"><sheetData><row><c><is>", "<a>", 1_000_000)]
    [InlineData("[Content_Types].xml", "<Types>", "<Default Extension=\"xml\" ContentType=\"application/xml\"/>", 100_000)]
    [InlineData("xl/_rels/workbook.xml.rels", "<Relationships xmlns=\"" + Links + "\">", "<Relationship/>", 1_000_000)]
    public void A_file_that_swells_when_it_is_opened_is_refused_in_one_line(string part, string begin, string again, int times)
    {
        var swollen = new byte[begin.Length + ((long)again.Length * times)];
        Encoding.UTF8.GetBytes(begin, swollen);
        for (var i = 0; i < times; i++)
        {
            Encoding.UTF8.GetBytes(again, swollen.AsSpan(begin.Length + (i * again.Length)));
        }

        var book = With(part, swollen);
        book.Length.ShouldBeLessThan(1024 * 1024);
        Read(book).Problems.Single().ShouldContain("it can't be read as a spreadsheet");
    }

    [Theory]
    [InlineData("xl/sharedStrings.xml")]
    [InlineData("xl/styles.xml")]
    [InlineData("xl/worksheets/sheet1.xml")]
    [InlineData("xl/worksheets/sheet2.xml")]
    [InlineData("xl/workbook.xml")]
    [InlineData("_rels/.rels")]
    [InlineData("xl/_rels/workbook.xml.rels")]
    [InlineData("[Content_Types].xml")]
    public void A_part_that_is_missing_is_done_without_or_told(string part)
    {
        var (listing, problems, _) = Read(With(part, null));
        (listing is null ? problems.Count : 1).ShouldBe(1);
        problems.ShouldAllBe(p => !p.Contains("Exception", StringComparison.Ordinal));
    }

    private static byte[] With(string part, byte[]? content)
    {
        using var stream = new MemoryStream();
        stream.Write(Book());
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Update, leaveOpen: true))
        {
            zip.GetEntry(part).ShouldNotBeNull().Delete();
            if (content is not null)
            {
                using var entry = zip.CreateEntry(part).Open();
                entry.Write(content);
            }
        }

        return stream.ToArray();
    }

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
            Part(zip, "[Content_Types].xml", $"<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Default Extension=\"xml\" ContentType=\"application/xml\"/>{string.Concat(Types.Select(t => $"<Override PartName=\"/xl/{t.Part}.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.{t.Kind}+xml\"/>"))}</Types>");
            Part(zip, "_rels/.rels", $"<Relationships xmlns=\"{Links}\"><Relationship Id=\"r0\" Type=\"{Office}/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
            Part(zip, "xl/_rels/workbook.xml.rels", $"<Relationships xmlns=\"{Links}\"><Relationship Id=\"r1\" Type=\"{Office}/worksheet\" Target=\"worksheets/sheet1.xml\"/><Relationship Id=\"r2\" Type=\"{Office}/worksheet\" Target=\"/xl/worksheets/sheet2.xml\"/><Relationship Id=\"r3\" Type=\"{Office}/styles\" Target=\"styles.xml\"/><Relationship Id=\"r4\" Type=\"{Office}/sharedStrings\" Target=\"sharedStrings.xml\"/></Relationships>");
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
