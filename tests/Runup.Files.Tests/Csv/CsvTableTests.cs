using FsCheck;
using FsCheck.Fluent;
using Runup.Files.Csv;

namespace Runup.Files.Tests.Csv;

public sealed class CsvTableTests
{
    private readonly Problems problems = new("c.csv");

    [Theory]
    [InlineData("a,b\n1,2\n")]
    [InlineData("a;b\n1;2\n")]
    [InlineData("a\tb\r\n1\t2")]
    [InlineData("\uFEFF# a remark; with a semicolon\n\na , b\n\n\"1\", 2 \n")]
    public void Reads_what_spreadsheets_write(string text)
    {
        var table = CsvTable.Read(text, problems)!;
        table.Header.Select(h => h.Text).ShouldBe(["a", "b"]);
        table.Rows.ShouldHaveSingleItem().Select(c => c.Text).ShouldBe(["1", "2"]);
    }

    [Fact]
    public void Cells_know_their_places()
    {
        var table = CsvTable.Read("# remark\na,b,c\n\n\"x,y\",2,3\n", problems)!;
        table.Rows[0].Select(c => (c.Place.Line, c.Place.Column)).ShouldBe([(4, 1), (4, 7), (4, 9)]);
    }

    [Fact]
    public void Numbers_with_decimal_commas_between_semicolons()
    {
        var table = CsvTable.Read("speed_rpm;torque_Nm\n0;2,5\n", problems)!;
        table.Numbers(["speed_rpm", "torque_Nm"], problems)!.ShouldHaveSingleItem().ShouldBe([0, 2.5]);
    }

    [Theory]
    [InlineData("", "it holds nothing")]
    [InlineData("a,b\n1\n", "1 cells in a table of 2 columns")]
    [InlineData("a,b\n1,\"2\n", "quotes that do not match")]
    [InlineData("a,b\n1,2\0\n", "a NUL character")]
    public void What_is_no_table_is_refused(string text, string found)
    {
        CsvTable.Read(text, problems).ShouldBeNull();
        problems.InOrder().ShouldContain(p => p.Found == found);
    }

    [Fact]
    public void Any_text_is_a_table_or_problems()
    {
        var pieces = Gen.Elements("a", "1", ",", ";", "\t", "\"", "\n", "\r", "#", "\0", " ", "é", "\"\"", "\uFEFF");
        Prop.ForAll(Arb.From(Gen.ListOf(pieces)), list =>
        {
            var found = new Problems("c.csv");
            return (CsvTable.Read(string.Concat(list), found) is null) == found.Any;
        }).Check(Config.QuickThrowOnFailure.WithMaxTest(2000));
    }
}
