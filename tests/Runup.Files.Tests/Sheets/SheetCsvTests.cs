using System.Text;
using FsCheck.Xunit;
using Runup.Commissioning.Sheet;
using Runup.Files.Csv;
using Runup.Files.Sheets;

namespace Runup.Files.Tests.Sheets;

public sealed class SheetCsvTests
{
    private static readonly int Enter = Place("enter");
    private static readonly int Name = Place("name");

    [Fact]
    public void A_header_comes_first_and_lines_end_as_RFC_4180_wants()
    {
        var text = Encoding.UTF8.GetString(SheetCsv.Write(Sheets.Of(Sheets.Entry(1, "1.60"))));
        text.ShouldStartWith("order,parameter,name,enter,unit,before,before_unit,factory,factory_unit,changed,done,found,mark,why,");
        text.ShouldEndWith("\r\n");
        text.Replace("\r\n", "", StringComparison.Ordinal).ShouldNotContain("\n");
    }

    [Theory]
    [InlineData("=1+1", "\"'=1+1\"")]
    [InlineData("+49 5", "\"'+49 5\"")]
    [InlineData("-off-", "\"'-off-\"")]
    [InlineData("@a", "\"'@a\"")]
    [InlineData("-", "\"'-\"")]
    [InlineData("-1.2.3", "\"'-1.2.3\"")]
    [InlineData("\t=1", "\"'\t=1\"")]
    [InlineData("-10.50", "-10.50")]
    [InlineData("-5", "-5")]
    [InlineData("1.60", "1.60")]
    [InlineData("off", "off")]
    public void Words_never_become_a_formula_and_numbers_keep_their_sign(string display, string cell) =>
        Raw(Sheets.Entry(1, display)).ShouldContain($",{cell},");

    [Property]
    public void Whatever_stands_in_a_cell_is_read_again(FsCheck.NonNull<string> name, FsCheck.NonNull<string> why)
    {
        // Our reader trims cells and takes no line breaks inside them; both are its own rule.
        var (a, b) = (Plain(name.Get), Plain(why.Get));
        var problems = new Problems("sheet.csv");
        var table = CsvTable.Read(Raw(Sheets.Entry(1, "1", b, a)), problems).ShouldNotBeNull(string.Join('\n', problems.InOrder()));
        var row = table.Rows.ShouldHaveSingleItem();
        row[Name].Text.TrimStart('\'').ShouldBe(a.TrimStart('\''));
        row[Enter].Text.ShouldBe("1");
    }

    private static string Plain(string text) => string.Concat(text.Where(c => !char.IsControl(c) && !char.IsSurrogate(c) && c is not ('\u2028' or '\u2029' or '\uFEFF'))).Trim();

    private static string Raw(SheetEntry entry) => Encoding.UTF8.GetString(SheetCsv.Write(Sheets.Of(entry)));

    private static int Place(string column) => SheetColumns.All.Select(c => c.Name).ToList().IndexOf(column);
}
