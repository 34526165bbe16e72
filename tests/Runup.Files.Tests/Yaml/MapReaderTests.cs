using Runup.Files.Yaml;
using Runup.Quantities;

namespace Runup.Files.Tests.Yaml;

public sealed class MapReaderTests
{
    private readonly Problems problems = new("d.yaml");

    [Fact]
    public void Reads_each_kind_of_value()
    {
        var map = Reader("name: Tern\nfan: yes\nunit: 7\nscale: 0.01\nshape: Star\nsizes: [{n: a}, {n: b}]\ncurrent: 17 A\nlow: 0,5\n");
        map.Text("name").ShouldBe("Tern");
        map.Flag("fan").ShouldBe(true);
        map.Whole("unit", 1, 247).ShouldBe(7);
        map.Exact("scale").ShouldBe(0.01m);
        map.Choice("shape", Choices.Of(("star", 1), ("delta", 2))).ShouldBe(1);
        map.Groups("sizes").Select(g => g.Text("n")).ShouldBe(["a", "b"]);
        map.Quantity<LineCurrent>("current").ShouldBe(LineCurrent.FromSi(17));
        map.Number("low", 0, 1).ShouldBe(0.5);
        map.Flag("not-there").ShouldBeNull();
        map.Done();
        problems.Any.ShouldBeFalse();
    }

    [Fact]
    public void Tells_all_that_is_wrong_in_the_order_of_the_file()
    {
        var map = Reader("shape: stra\nunit: 300\nnaem: x\nfan: maybe\nscale:\ncurrent: 17\nlow: 2\n");
        map.Text("name", "the family's name would do");
        map.Choice("shape", Choices.Of(("star", 1), ("delta", 2)));
        map.Whole("unit", 1, 247);
        map.Flag("fan");
        map.Exact("scale");
        map.Quantity<LineCurrent>("current");
        map.Number("low", 0, 1);
        map.Done();
        problems.InOrder().Select(p => p.ToString()).ShouldBe([
            "d.yaml:1:1 name: it is missing; the family's name would do",
            "d.yaml:1:8 shape: `stra`; `star` would do, if that is meant; one of `star`, `delta`",
            "d.yaml:2:7 unit: `300`; a whole number from 1 to 247 would do",
            "d.yaml:3:1 naem: there is no such key here; `name` would do",
            "d.yaml:4:6 fan: `maybe`; one of `yes`, `no`, `true`, `false` would do",
            "d.yaml:5:7 scale: no value; a decimal number would do, or leave the key out",
            "d.yaml:6:10 current: `17` has no unit; A, mA or kA would do",
            "d.yaml:7:6 low: `2`; a number from 0 to 1 would do"]);
    }

    [Fact]
    public void A_group_where_a_value_belongs_is_told_and_the_other_way_round()
    {
        var map = Reader("name: {a: 1}\nsizes: 3\nplate: x\n");
        map.Text("name").ShouldBeNull();
        map.List("sizes").ShouldBeEmpty();
        map.Group("plate").ShouldBeNull();
        problems.Count.ShouldBe(3);
    }

    private MapReader Reader(string text) => new(YamlTree.Read(text, problems)!, problems);
}
