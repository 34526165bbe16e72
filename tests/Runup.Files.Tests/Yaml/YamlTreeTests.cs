using FsCheck;
using FsCheck.Fluent;
using Runup.Files.Yaml;

namespace Runup.Files.Tests.Yaml;

public sealed class YamlTreeTests
{
    private const string Pump = """
        runup: 1   # format
        motor:
          plate: {output: 7.5 kW, speed: "1460 rpm"}
          list:
            - 1
            - {a: b}
        tag: 'SWP-101'
        """;

    [Fact]
    public void Every_value_knows_its_line_its_column_and_its_key()
    {
        var output = (YamlScalar)Find(Read(Pump), "motor", "plate", "output");
        output.Text.ShouldBe("7.5 kW");
        (output.Place.Line, output.Place.Column).ShouldBe((3, 19));
        output.KeyPath.ShouldBe("motor.plate.output");
        (output.KeyPlace.Line, output.KeyPlace.Column).ShouldBe((3, 11));
    }

    [Fact]
    public void Entries_of_a_list_are_counted_from_one()
    {
        var list = (YamlList)Find(Read(Pump), "motor", "list");
        list.Items[0].KeyPath.ShouldBe("motor.list[1]");
        ((YamlMap)list.Items[1]).Find("a")!.KeyPath.ShouldBe("motor.list[2].a");
    }

    [Theory]
    [InlineData("")]
    [InlineData("\uFEFF")]
    public void The_span_of_a_value_is_what_stands_there(string mark)
    {
        foreach (var text in new[] { mark + Pump, (mark + Pump).ReplaceLineEndings("\r\n") })
        {
            var root = Read(text);
            var output = Find(root, "motor", "plate", "output").Place;
            text[output.Start..output.End].ShouldBe("7.5 kW");
            var speed = Find(root, "motor", "plate", "speed").Place;
            text[speed.Start..speed.End].ShouldBe("\"1460 rpm\"");
            var tag = Find(root, "tag").Place;
            text[tag.Start..tag.End].ShouldBe("'SWP-101'");
        }
    }

    [Theory]
    [InlineData("", "(file)", "it holds nothing")]
    [InlineData("# nothing but a comment\n", "(file)", "it holds nothing")]
    [InlineData("just words", "(file)", "it holds `just words`")]
    [InlineData("- a\n- b\n", "(file)", "it holds a list")]
    [InlineData("a: {b: 7,5 kW, c: 1}\n", "a.b", "`7,5 kW` in braces, where a comma ends a value")]
    [InlineData("a: 1\na: 2\n", "a", "the key stands twice, first in line 1")]
    [InlineData("a: &x 1\nb: *x\n", "a", "the anchor `&x`")]
    [InlineData("a: !!binary aGk=\n", "a", "a YAML tag")]
    [InlineData("%YAML 1.1\n---\na: 1\n", "(file)", "a YAML directive")]
    [InlineData("a: 1\n---\nb: 2\n", "(file)", "a second document in one file")]
    [InlineData("a:\n\tb: 1\n", "(file)", "a tab in the indentation")]
    [InlineData("a: \0\n", "(file)", "a NUL character")]
    [InlineData("a: \u001b[31m\n", "(file)", "the control character U+001B")]
    [InlineData("a: \"x\n", "(file)", "a quote that is not closed")]
    [InlineData("a: {b: 1\n", "(file)", "a bracket or brace that is not closed")]
    [InlineData("a: b: c\n", "(file)", "a second `: ` on the line, or a line indented too far")]
    [InlineData("a: 1\n  b: 2\n", "(file)", "a second `: ` on the line, or a line indented too far")]
    [InlineData("a:\n    b: 1\n  c: 1\n", "(file)", "a line that does not fit the indentation around it")]
    [InlineData("? {a: b}\n: c\n", "(file)", "a key that is not a word")]
    public void What_is_no_plain_map_is_refused_with_a_reason(string text, string key, string found)
    {
        var problems = new Problems("x.yaml");
        YamlTree.Read(text, problems);
        problems.InOrder().ShouldContain(p => p.Key == key && p.Found == found, string.Join('\n', problems.InOrder()));
    }

    [Theory]
    [InlineData("a: 1\nl:\n  - {b: 1, c: {d: 2, e: 3}\n  - {b: 2}\n", "x.yaml:3:5 (file): a `{` that is not closed before line 4; close it, with commas between what is inside")]
    [InlineData("l:\n  - {b: 1\n  - {b: 2}\n", "x.yaml:2:5 (file): a `{` that is not closed before line 3; close it, with commas between what is inside")]
    [InlineData("l:\n  - {b: [1, 2}\n  - {b: 2}\n", "x.yaml:2:14 (file): a bracket or brace that is not closed; close it, with commas between what is inside")]
    public void A_brace_left_open_is_told_on_its_own_line_and_not_on_the_next(string text, string expected)
    {
        var problems = new Problems("x.yaml");
        YamlTree.Read(text, problems).ShouldBeNull();
        problems.InOrder().ShouldHaveSingleItem().ToString().ShouldBe(expected);
    }

    [Fact]
    public void Half_of_a_character_is_refused()
    {
        var problems = new Problems("x.yaml");
        YamlTree.Read("a: \ud800\n", problems).ShouldBeNull();
        problems.InOrder().ShouldHaveSingleItem().ToString().ShouldBe("x.yaml:1:4 (file): half of a character; delete it and write it again");
    }

    [Fact]
    public void All_duplicates_are_told_at_once_with_their_places()
    {
        var problems = new Problems("x.yaml");
        YamlTree.Read("a: 1\nb: {c: 1, c: 2}\na: 3\n", problems);
        problems.InOrder().Select(p => p.ToString()).ShouldBe([
            "x.yaml:2:11 b.c: the key stands twice, first in line 2; keep one of the two",
            "x.yaml:3:1 a: the key stands twice, first in line 1; keep one of the two"]);
    }

    [Theory]
    [InlineData('[')]
    [InlineData('{')]
    public void Deep_nesting_is_refused_and_costs_nothing(char bracket)
    {
        var problems = new Problems("x.yaml");
        YamlTree.Read("a: " + new string(bracket, 100_000), problems).ShouldBeNull();
        problems.InOrder().ShouldHaveSingleItem().Found.ShouldStartWith("groups nested more than");
    }

    [Fact]
    public void A_file_too_large_is_refused()
    {
        var problems = new Problems("x.yaml");
        YamlTree.Read(new string('#', 5_000_000), problems).ShouldBeNull();
        problems.Count.ShouldBe(1);
    }

    [Fact]
    public void Any_text_at_all_becomes_a_map_or_problems() =>
        Prop.ForAll<string>(text => MapOrProblems(text ?? "")).QuickCheckThrowOnFailure();

    [Fact]
    public void Any_mutation_of_a_good_file_becomes_a_map_or_problems()
    {
        var pieces = Gen.Elements("\t", "\0", "{", "}", "[", "]", "\"", "'", "&", "*", "!", "|", ">", "-", "?", ": ", ",", "#", "%", "@", "`", "\n", "\r", "  ", "\u0085", "\ud800", "---\n", "...\n", "<<: ", "\\", "é", "\U0001F600");
        var mutations = Gen.ListOf(Gen.Zip(Gen.Choose(0, Pump.Length), pieces));
        Prop.ForAll(Arb.From(mutations), list => MapOrProblems(Mutate(list)))
            .Check(Config.QuickThrowOnFailure.WithMaxTest(2000));
    }

    private static string Mutate(IEnumerable<(int At, string Piece)> mutations) =>
        mutations.Aggregate(Pump, (text, m) => text.Insert(Math.Min(m.At, text.Length), m.Piece));

    private static bool MapOrProblems(string text)
    {
        var problems = new Problems("x.yaml");
        var map = YamlTree.Read(text, problems);
        return map is null ? problems.Any : problems.Any || SpansHold(text, map);
    }

    private static bool SpansHold(string text, YamlNode node) => node switch
    {
        YamlMap map => map.Entries.All(e => SpansHold(text, e.Value)),
        YamlList list => list.Items.All(i => SpansHold(text, i)),
        YamlScalar { IsPlain: true } scalar => text[scalar.Place.Start..scalar.Place.End] is var span && (span.Contains('\n', StringComparison.Ordinal) || span.Contains('\r', StringComparison.Ordinal) || string.Equals(span, scalar.Text, StringComparison.Ordinal)),
        _ => true,
    };

    private static YamlMap Read(string text)
    {
        var problems = new Problems("x.yaml");
        return YamlTree.Read(text, problems) ?? throw new Xunit.Sdk.XunitException(string.Join('\n', problems.InOrder()));
    }

    private static YamlNode Find(YamlNode node, params string[] path) => path.Aggregate(node, (n, key) => ((YamlMap)n).Find(key)!);
}
