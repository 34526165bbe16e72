using Runup.Files.Listings;
using Runup.Files.Tests.Profiles;
using Runup.Files.Tests.Suggestion;
using Runup.Profiles;

namespace Runup.Files.Tests.Listings.Eds;

/// <summary>An electronic data sheet of our own that uses every production of CiA 306, as its public readers implement it.</summary>
public sealed class EdsTests
{
    private static readonly string Text = File.ReadAllText(Path.Combine(Drives.Root, "tests", "Runup.Files.Tests", "Listings", "Eds", "grebe.eds"));

    [Fact]
    public void Every_object_of_up_to_32_bits_becomes_a_row_and_the_bus_itself_does_not()
    {
        var (listing, _, _) = Read(Text);
        listing!.Parameters.Select(p => p.Number).ShouldBe([
            "1000h", "1001h", "1010h:1", "1018h:1", "6040h", "6041h", "6042h", "6044h", "6046h:1", "6046h:2", "6048h:1", "6048h:2", "6049h:1", "6049h:2", "604Dh", "6073h", "6075h", "6078h", "6079h",
            "2101h", "2102h", "2120h:1", "2120h:2", "2120h:3", "2130h", "2140h", "2160h",
        ]);
    }

    [Fact]
    public void What_is_left_out_is_said_with_its_line()
    {
        var (_, problems, cautions) = Read(Text);
        problems.ShouldBeEmpty();
        cautions.ShouldBe([
            $"grebe.eds:{Line("[6403]") + 2}:1 [6403] DataType: VISIBLE_STRING, which no register of up to 32 bits holds; it is left out",
            $"grebe.eds:{Line("[2150]") + 2}:1 [2150] DataType: REAL32, which no register of up to 32 bits holds; it is left out",
        ]);
    }

    // Numbers: decimal, 0x, octal with a leading 0, two's complement in signed types (CiA 306, seen in public readers).
    [Theory]
    [InlineData("6042h", -32768, 32767, 0)]
    [InlineData("6046h:2", 0, 24000, 988)]
    [InlineData("2102h", -10, 10, -3)]
    [InlineData("2120h:2", 0, 4000, 0)]
    public void Limits_and_defaults_are_read_in_every_writing(string number, int low, int high, int preset)
    {
        var row = Row(number);
        (row.Low, row.High, row.Default).ShouldBe((low, high, preset));
    }

    [Fact]
    public void A_compact_array_has_the_names_that_are_given_and_counts_the_others()
    {
        Row("2120h:1").Name.ShouldBe("Fixed frequency 1");
        Row("2120h:2").Name.ShouldBe("Fixed frequency 2");
        Row("2120h:3").Name.ShouldBe("Fixed frequency 3");
    }

    [Theory]
    [InlineData("6041h", ParameterAccess.ReadOnly)]
    [InlineData("1000h", ParameterAccess.ReadOnly)]
    [InlineData("6075h", ParameterAccess.StoppedOnly)]
    [InlineData("2140h", ParameterAccess.StoppedOnly)]
    [InlineData("2160h", ParameterAccess.Action)]
    public void Access_is_read(string number, ParameterAccess access) => Row(number).Access.ShouldBe(access);

    [Theory]
    [InlineData("6075h", 32, false)]
    [InlineData("6078h", 16, true)]
    [InlineData("2102h", 16, true)]
    public void Types_give_bits_and_sign(string number, int width, bool signed) => (Row(number).Width, Row(number).Signed).ShouldBe((width, signed));

    [Fact]
    public void A_default_that_counts_from_the_nodes_number_needs_the_node()
    {
        Row("2130h").Default.ShouldBeNull();
        var configured = Text + "\n[DeviceComissioning]\nNodeID=0x05\nNodeName=pump\nBaudrate=250\nNetNumber=1\nNetworkName=hall\nCANopenManager=0\nLSS_SerialNumber=1\nNodeRefd=\nNetRefd=\n";
        Read(configured).Listing!.Parameters.Single(p => p.Number == "2130h").Default.ShouldBe(21);
    }

    [Fact]
    public void Objects_of_the_drive_profile_are_known_by_index_with_their_units_and_meanings()
    {
        var rows = StandardObjects.Complete(Read(Text).Listing!.Parameters, Bars.Vocabulary());
        rows.Single(r => r.Number == "6075h").Unit.ShouldBe("mA");
        rows.Single(r => r.Number == "6040h").Access.ShouldBe(ParameterAccess.Command);
        var suggestions = Bars.Scorer.Suggest(rows);
        string Meaning(string number) => suggestions[rows.ToList().FindIndex(r => r.Number == number)].Setting?.Name ?? "none";
        Meaning("6046h:1").ShouldBe("minimum-frequency");
        Meaning("6046h:2").ShouldBe("maximum-frequency");
        Meaning("6048h:1").ShouldBe("acceleration-time");
        Meaning("6048h:2").ShouldBe("acceleration-time");
        Meaning("6049h:1").ShouldBe("deceleration-time");
        Meaning("6049h:2").ShouldBe("deceleration-time");
        Meaning("604Dh").ShouldBe("motor-pole-count");
        Meaning("6073h").ShouldBe("current-limit");
        Meaning("6075h").ShouldBe("motor-rated-current");
        Meaning("2101h").ShouldBe("motor-rated-voltage");
        Meaning("2120h:3").ShouldBe("fixed-frequency-3");
        foreach (var none in (string[])["1000h", "6040h", "6041h", "6042h", "6044h", "6078h", "6079h"])
        {
            Meaning(none).ShouldBe("none");
        }
    }

    [Theory]
    [InlineData("[2101]\n", "[6041]\n", "the section stands twice: in line ")]
    [InlineData("DataType=0x0006\nAccessType=rw\nLowLimit=100", "DataType=0x0006\nDataType=0x0007\nAccessType=rw\nLowLimit=100", "the key stands twice, first in line ")]
    [InlineData("[FileInfo]", "FileInfo", "a section such as `[6046sub1]`")]
    public void A_file_that_contradicts_itself_is_refused_with_the_line(string from, string to, string expected)
    {
        var (listing, problems, _) = Read(Text.Replace(from, to, StringComparison.Ordinal));
        listing.ShouldBeNull();
        problems.ShouldContain(p => p.Contains(expected, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("SupportedObjects=7", "SupportedObjects=8", "8 objects are announced and 7 are named")]
    [InlineData("7=0x2160", "7=0x2161", "there is no section for `0x2161`")]
    [InlineData("AccessType=wo", "AccessType=never", "[2160] AccessType: `never`")]
    [InlineData("DefaultValue=3300", "DefaultValue=much", "[6075] DefaultValue: `much`")]
    [InlineData("CompactSubObj=3", "CompactSubObj=900", "[2120] CompactSubObj: `900`")]
    [InlineData("[M1Comments]", "[Strange]", "[Strange]: a section that CiA 306 does not have")]
    [InlineData("ParameterName=Use\nDataType=0x0001", "ParameterName=Use\nDataType=0x0099", "[2140] DataType: `0x0099`")]
    public void What_does_not_fit_is_said_and_the_rest_is_read(string from, string to, string expected)
    {
        var (listing, problems, cautions) = Read(Text.Replace(from, to, StringComparison.Ordinal));
        problems.ShouldBeEmpty();
        listing.ShouldNotBeNull();
        cautions.ShouldContain(c => c.Contains(expected, StringComparison.Ordinal));
    }

    [Fact]
    public void A_text_that_is_no_data_sheet_is_told_so() =>
        Read("[Something]\nA=1\n").Problems.Single().ShouldContain("an electronic data sheet (EDS or DCF) after CiA 306 would do");

    private static int Line(string section) => Text.Split('\n').ToList().IndexOf(section) + 1;

    private static ListedParameter Row(string number) => Read(Text).Listing!.Parameters.Single(p => p.Number == number);

    private static (Listing? Listing, IReadOnlyList<string> Problems, IReadOnlyList<string> Cautions) Read(string text)
    {
        var problems = new Problems("grebe.eds");
        var cautions = new Problems("grebe.eds");
        var listing = ListingFile.ReadText(text, ListingKind.Eds, ListingOptions.Guess, problems, cautions);
        return (listing, [.. problems.InOrder().Select(p => p.ToString())], [.. cautions.InOrder().Select(p => p.ToString())]);
    }
}
