using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;
using MiniExcelLibs;
using Runup.Commissioning.Sheet;
using Runup.Files.Sheets;

namespace Runup.Files.Tests.Sheets;

/// <summary>The spreadsheet held against MiniExcel, a reader that did not write it.</summary>
public sealed class SheetBookTests
{
    [Fact]
    public void A_number_is_a_number_and_words_are_words()
    {
        var rows = Read(Sheets.Of(Sheets.Entry(1, "1.60"), Sheets.Entry(2, "bus forward"), Sheets.Entry(3, "-10")));
        rows[0]["enter"].ShouldBe(1.6);
        rows[1]["enter"].ShouldBe("bus forward");
        rows[2]["enter"].ShouldBe(-10.0);
        rows[0]["parameter"].ShouldBe("104");
        rows[0]["found"].ShouldBeNull();
    }

    [Theory]
    [InlineData("=1+1")]
    [InlineData("a < b & \"c\" > 'd'")]
    [InlineData("_x0041_ stays as it is")]
    [InlineData("smörgåsbord Ω ‰ 𝛀")]
    [InlineData("  blanks  ")]
    public void Words_stay_as_they_are_and_are_never_a_formula(string words) => Read(Sheets.Of(Sheets.Entry(1, "1", words)))[0]["why"].ShouldBe(words);

    [Fact]
    public void What_a_file_cannot_hold_becomes_a_visible_mark() => Read(Sheets.Of(Sheets.Entry(1, "1", "a\u0000b\u0001")))[0]["why"].ShouldBe("a\uFFFDb\uFFFD");

    [Fact]
    public void The_second_tab_says_what_the_first_is_about()
    {
        using var bytes = new MemoryStream(SheetBook.Write(Sheets.Of(Sheets.Entry(1, "1"))));
        var about = bytes.Query(useHeaderRow: true, sheetName: "about").Cast<IDictionary<string, object?>>().Select(r => (r["what"], r["value"])).ToList();
        about.ShouldContain(("tag", "P & 1"));
        about.ShouldContain(("checksum", "0123456789ab"));
        about.ShouldContain(("written", "2026-03-01 12:00:00 +02:00"));
    }

    [Fact]
    public void The_same_sheet_gives_the_same_bytes() =>
        SheetBook.Write(Sheets.Of(Sheets.Entry(1, "1.60"))).ShouldBe(SheetBook.Write(Sheets.Of(Sheets.Entry(1, "1.60"))));

    [Fact]
    public void The_file_obeys_the_schema_of_its_format()
    {
        using var bytes = new MemoryStream(SheetBook.Write(Sheets.Of(Sheets.Entry(1, "1.60", "a & b _x0041_ \u0001"), Sheets.Entry(2, "off"), Sheets.Entry(3, "50.000"))));
        using var document = SpreadsheetDocument.Open(bytes, isEditable: false);
        new OpenXmlValidator(FileFormatVersions.Office2007).Validate(document, TestContext.Current.CancellationToken).Select(e => $"{e.Part?.Uri} {e.Path?.XPath}: {e.Description}").ShouldBeEmpty();
    }

    private static List<IDictionary<string, object?>> Read(SheetModel sheet)
    {
        using var bytes = new MemoryStream(SheetBook.Write(sheet));
        return [.. bytes.Query(useHeaderRow: true).Cast<IDictionary<string, object?>>()];
    }
}
