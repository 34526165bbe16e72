using System.Text.Json;

namespace Runup.Acceptance.Tests;

/// <summary><c>runup profile</c> as a person uses it, with wrong input too.</summary>
public sealed class ProfileTests
{
    private const string Table = """
        No.;Name;Range;Unit;Default
        104;Motor power;0,05...150,00;kW;4,00
        106;Motor rated current;0,1...200,0;A;8,2
        170;Acceleration time;0,10...600,00;s;5,00
        230;Stopping method;0 = ramp, 1 = coast, 2 = DC braking;;0
        1003;Output frequency;0,00...400,00;Hz;
        """;

    [Theory]
    [InlineData("tern")]
    [InlineData("osprey")]
    public async Task A_profile_that_we_ship_is_sound(string family)
    {
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, "profile", "lint", family);
        run.Status.ShouldBe(0);
        run.Errors.ShouldBeEmpty();
        run.Output.ShouldContain("is sound");
    }

    [Fact]
    public async Task A_profile_is_shown_with_what_it_leaves_open()
    {
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, "profile", "show", "tern", "--size", "7.5-400");
        run.Status.ShouldBe(0);
        run.Output.ShouldContain("as a part of 106");
        run.Output.ShouldContain("No parameter means");
        (await RunupProgram.Call(scratch.Folder, "profile", "show", "tern", "--size", "9-400")).Status.ShouldBe(2);
    }

    [Fact]
    public async Task What_is_wrong_in_a_profile_is_said_with_its_line_and_status_2()
    {
        using var scratch = new Scratch();
        await File.WriteAllTextAsync(Path.Combine(scratch.Folder, "wren.drive.yaml"), "drive-profile: 2\nfamily: wren\n");
        var run = await RunupProgram.Call(scratch.Folder, "profile", "lint", "wren");
        run.Status.ShouldBe(2);
        run.Errors.ShouldContain("wren.drive.yaml:1:16 drive-profile: format version 2, which is newer than this program; a newer Runup reads it");
        run.ShowsNoInsides();
    }

    [Fact]
    public async Task A_table_is_shown_first_and_its_draft_written_only_when_told_and_never_over_a_file()
    {
        using var scratch = new Scratch();
        await File.WriteAllTextAsync(Path.Combine(scratch.Folder, "manual.csv"), Table);
        var shown = await RunupProgram.Call(scratch.Folder, "profile", "import", "manual.csv");
        shown.Status.ShouldBe(0);
        shown.Output.ShouldContain("Nothing is written");
        Directory.GetFiles(scratch.Folder).Length.ShouldBe(1);
        (await RunupProgram.Call(scratch.Folder, "profile", "import", "manual.csv", "--to", "wren", "--confirm", "104,170")).Status.ShouldBe(0);
        var draft = await File.ReadAllTextAsync(Path.Combine(scratch.Folder, "wren.drive.yaml"));
        draft.ShouldContain("means: motor-rated-power");
        draft.ShouldContain("perhaps: motor-rated-current");
        draft.ShouldNotContain("means: motor-rated-current");
        var again = await RunupProgram.Call(scratch.Folder, "profile", "import", "manual.csv", "--to", "wren");
        again.Status.ShouldBe(2);
        again.Errors.ShouldContain("it is there already and is left as it is");
        (await File.ReadAllTextAsync(Path.Combine(scratch.Folder, "wren.drive.yaml"))).ShouldBe(draft);
        (await RunupProgram.Call(scratch.Folder, "profile", "import", "manual.csv", "--to", "wren", "--replace")).Status.ShouldBe(0);
        (await File.ReadAllTextAsync(Path.Combine(scratch.Folder, "wren.drive.yaml"))).ShouldNotBe(draft);
    }

    [Fact]
    public async Task A_table_with_a_number_twice_names_both_lines_and_saves_nothing_over_a_good_profile()
    {
        using var scratch = new Scratch();
        await File.WriteAllTextAsync(Path.Combine(scratch.Folder, "manual.csv"), Table + "\n106;Another current;0,1...200,0;A;8,2\n");
        var good = Path.Combine(scratch.Folder, "wren.drive.yaml");
        await File.WriteAllTextAsync(good, "good");
        var run = await RunupProgram.Call(scratch.Folder, "profile", "import", "manual.csv", "--to", "wren", "--replace");
        run.Status.ShouldBe(2);
        run.Errors.ShouldContain("manual.csv:7:1 parameter 106: the number stands twice: in line 3 as `Motor rated current` and in line 7 as `Another current`");
        (await File.ReadAllTextAsync(good)).ShouldBe("good");
        run.ShowsNoInsides();
    }

    [Fact]
    public async Task The_json_of_an_import_is_as_others_rely_on()
    {
        using var scratch = new Scratch();
        await File.WriteAllTextAsync(Path.Combine(scratch.Folder, "manual.csv"), Table);
        var json = (await RunupProgram.Call(scratch.Folder, "profile", "import", "manual.csv", "--json")).Json;
        json.GetProperty("problems").GetArrayLength().ShouldBe(0);
        var rows = json.GetProperty("parameters").EnumerateArray().ToList();
        rows.Count.ShouldBe(5);
        rows[0].EnumerateObject().Select(p => p.Name).ShouldBe(["number", "name", "unit", "scale", "low", "high", "default", "choices", "access", "register", "meaning", "certainty", "reason", "conversion", "to_ask"]);
        rows[0].GetProperty("high").GetDecimal().ShouldBe(150);
        rows[0].GetProperty("meaning").GetString().ShouldBe("motor-rated-power");
        rows[3].GetProperty("choices").GetProperty("2").GetString().ShouldBe("DC braking");
        rows[4].GetProperty("meaning").ValueKind.ShouldBe(JsonValueKind.Null);
        rows[4].GetProperty("certainty").GetDouble().ShouldBe(0);
    }

    [Fact]
    public async Task Text_pasted_on_standard_input_is_read_and_columns_may_be_named()
    {
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, ["profile", "import", "--column", "number=A", "--column", "name=B", "--json"], "104\tMotor power\t0.05-150.00 kW\n105\tMotor voltage\t100-500 V\n");
        run.Status.ShouldBe(0);
        run.Json.GetProperty("parameters")[1].GetProperty("unit").GetString().ShouldBe("V");
        var wrong = await RunupProgram.Call(scratch.Folder, ["profile", "import", "--column", "colour=A"], "x");
        wrong.Status.ShouldBe(2);
        wrong.ShowsNoInsides();
    }
}
