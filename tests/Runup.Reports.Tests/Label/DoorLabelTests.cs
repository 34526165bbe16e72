using System.Globalization;
using System.Xml.Linq;
using Runup.Reports.Label;
using Runup.Reports.Tests.Example;

namespace Runup.Reports.Tests.Label;

public sealed class DoorLabelTests
{
    [Fact]
    public void It_is_ninety_by_fifty_millimetres_and_says_the_tag()
    {
        var label = XElement.Parse(DoorLabel.Write(ExampleHandover.Whole()));

        ((string?)label.Attribute("width"), (string?)label.Attribute("height"), (string?)label.Attribute("viewBox")).ShouldBe(("90mm", "50mm", "0 0 90 50"));
        Words(label).ShouldContain("SWP-101");
        Words(label).ShouldContain("handed over 2026-05-04");
    }

    [Fact]
    public void The_code_has_tag_time_and_both_checksums_in_full()
    {
        var model = ExampleHandover.Whole();

        DoorLabel.Text(model).Split('\n').ShouldBe(
        [
            "Tag SWP-101",
            "Handed over 2026-05-04T11:05:00+02:00",
            $"Open restrictions {model.Open.Count}",
            $"Restore file {model.Restore!.Checksum}",
            $"Record {model.Story.Head!.Hash}",
        ]);
    }

    [Fact]
    public void Open_restrictions_are_on_the_door() => Words(XElement.Parse(DoorLabel.Write(ExampleHandover.Troubled()))).ShouldContain(w => w.StartsWith("OPEN RESTRICTIONS: ", StringComparison.Ordinal));

    [Theory]
    [InlineData("A")]
    [InlineData("</text><script>alert(1)</script>\u202E & the longest tag that anybody ever gave to a pump in a hatchery by the sea, and then some more of it until nobody can read it any longer at all")]
    public void Whatever_the_tag_it_stays_within_its_rim(string tag)
    {
        var label = XElement.Parse(DoorLabel.Write(Hostile.Model(tag)));

        label.Descendants().ShouldNotContain(e => e.Name.LocalName == "script");
        foreach (var text in label.Elements().Where(e => e.Name.LocalName == "text"))
        {
            var size = double.Parse((string)text.Attribute("font-size")!, CultureInfo.InvariantCulture);
            // 41 mm are left of the code; a letter is half as wide as high, or a little more.
            (new StringInfo(text.Value).LengthInTextElements * 0.55 * size).ShouldBeLessThan(42);
            double.Parse((string)text.Attribute("y")!, CultureInfo.InvariantCulture).ShouldBeInRange(0, 49);
        }
    }

    private static List<string> Words(XElement label) => [.. label.Elements().Where(e => e.Name.LocalName == "text").Select(e => e.Value)];
}
