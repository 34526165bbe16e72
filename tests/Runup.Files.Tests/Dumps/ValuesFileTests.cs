using Runup.Files.Dumps;
using Runup.Files.Profiles;
using Runup.Files.Tests.Profiles;
using Runup.Profiles;

namespace Runup.Files.Tests.Dumps;

public sealed class ValuesFileTests : IDisposable
{
    private static readonly DriveProfile Tern = ProfileReader.ReadFile(Drives.PathOf("tern"), new Problems("tern"))!;
    private readonly string path = Path.Combine(Path.GetTempPath(), $"runup-{Guid.NewGuid():N}.csv");
    private readonly List<FileNote> notes = [];

    public void Dispose() => File.Delete(path);

    [Theory]
    [InlineData("parameter,value\n172,12.00\n", 1200)]
    [InlineData("number;shows\n172;\"12,00 s\"\n", 1200)]
    [InlineData("no.\tdisplay\n172\t12\n", 1200)]
    [InlineData("parameter,raw\n172,1200\n", 1200)]
    [InlineData("parameter,enter,unit,found\n172,5.00,s,12.00\n", 1200)]
    [InlineData("parameter,enter,unit,found\n172,5.00,s,\n", 500)]
    public void The_value_is_the_displays_or_counts_and_what_was_found_stands_above_what_was_to_be_entered(string text, long raw) =>
        Read(text).ShouldNotBeNull()["172"].ShouldBe(raw);

    [Fact]
    public void Digits_are_read_in_the_unit_that_the_table_chooses_in_whatever_order() =>
        Read("parameter,value\n104,10.00\n131,hp\n").ShouldNotBeNull().Count.ShouldBe(2);

    [Theory]
    [InlineData("parameter,value\n172,abc\n", ":2:5 172: \"abc\" is not a number")]
    [InlineData("parameter,value\n172,12\n172,13\n", ":3:1 172: it is there a second time; one of this line and line 2 would do")]
    [InlineData("parameter,value,unit\n172,2,min\n", ":2:5 172: a value in `min`")]
    [InlineData("parameter,value\n151,9999\n", ":2:5 151: `9999`; a value that size 7.5-400 takes")]
    [InlineData("parameter,raw\n172,12.5\n", ":2:5 172: `12.5` is no whole number of counts")]
    [InlineData("what,how\n172,12\n", ":1:1")]
    public void What_is_wrong_is_named_with_its_place_and_nothing_is_taken(string text, string problem)
    {
        var problems = new Problems(path);
        File.WriteAllText(path, text);
        ValuesFile.Read(path, Tern, Tern.FindSize("7.5-400")!, problems, notes).ShouldBeNull();
        problems.InOrder().ShouldHaveSingleItem().ToString().ShouldContain(problem);
    }

    [Fact]
    public void What_the_drive_does_not_know_is_passed_over_and_said()
    {
        Read("parameter,value\n9999,1\n172,12\n").ShouldNotBeNull().Count.ShouldBe(1);
        notes.ShouldHaveSingleItem().Key.ShouldBe("9999");
    }

    private ParameterValues? Read(string text)
    {
        var problems = new Problems(path);
        File.WriteAllText(path, text);
        var values = ValuesFile.Read(path, Tern, Tern.FindSize("7.5-400")!, problems, notes);
        problems.InOrder().ShouldBeEmpty();
        return values;
    }
}
