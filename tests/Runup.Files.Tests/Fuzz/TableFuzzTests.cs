using Runup.Files.Listings;
using Runup.Files.Tests.Suggestion;
using Runup.Files.Yaml;

namespace Runup.Files.Tests.Fuzz;

/// <summary>Whatever stands in a table or a data sheet, a person gets rows or problems, and never an exception.</summary>
public sealed class TableFuzzTests
{
    private static readonly string[] Pieces =
        ["0", "-1", "99999999999999999999999999", "1e999", "0x", "0xFFFFFFFFFFFFFFFFF", "\"", "\"\"", ";", ",", "\t", "|", "\n", "\r", "\n\n", "=", ":", "0: a 1: b", "…", "~", "...", " - ", "%", "Hz", "Hz/s", "¹⁾", "*", "\u202E", "\uD800", "(((((", "No.;Name", "104", "6046h:1", "see 104", "ditto", "X = stop; R = run", "2. Ramps", "sub", "#", "- ", "{", "}", "🦆", "١٢٣"];

    private static readonly string[] SheetPieces =
        ["0", "-1", "0x", "0xFFFFFFFFFFFFFFFFF", "08", "$NODEID", "$NODEID+", "[", "]", "[]", "[6046sub1]", "[6046subFF]", "[6046sub]", "[FFFF]", "=", "==", ";", " ; ", "CompactSubObj=254", "CompactSubObj=0", "SubNumber=9", "ObjectType=8", "DataType=0x1B", "NrOfEntries=99999999", "NodeID=x", "\n", "\r\n", "\t", "\u202E", "\uD800", "🦆", "LowLimit=9223372036854775807", "HighLimit=-9223372036854775808"];

    [Theory]
    [InlineData("heron.csv")]
    [InlineData("sanderling.csv")]
    [InlineData("turnstone.txt")]
    [InlineData("dunlin.md")]
    public void A_mangled_table_is_read_or_refused(string table)
    {
        var text = File.ReadAllText(Hands.PathOf(table));
        FuzzLane.Hold(Mutation.Several(Pieces, 30), 25, mutations => Try(Part(Mutation.Apply(text, mutations), mutations[0]), ListingFile.KindOf(table)));
    }

    [Theory]
    [InlineData("grebe.eds")]
    [InlineData("grebe.dcf")]
    public void A_mangled_data_sheet_is_read_or_refused(string sheet)
    {
        var text = File.ReadAllText(Hands.PathOf($"../../Listings/Eds/{sheet}"));
        FuzzLane.Hold(Mutation.Several(SheetPieces, 12), 60, mutations => Try(Mutation.Apply(text, mutations), ListingKind.Eds));
    }

    [Fact]
    public void Noise_is_read_or_refused() => FuzzLane.Hold(Mutation.Several([.. Pieces, .. SheetPieces], 60), 60, mutations =>
    {
        var text = string.Concat(mutations.Select(m => m.Piece));
        foreach (var kind in (ListingKind[])[ListingKind.Csv, ListingKind.Pasted, ListingKind.Eds])
        {
            Try(text, kind);
        }
    });

    // A whole table takes its time; a part of it, with its heading, does as well.
    private static string Part(string text, Mutation by)
    {
        var from = (int)((long)text.Length * by.At / 1_000_000);
        return string.Concat(text.AsSpan(0, Math.Min(300, text.Length)), text.AsSpan(from, Math.Min(text.Length - from, 2000)));
    }

    internal static void Try(string text, ListingKind kind)
    {
        var problems = new Problems("t");
        var cautions = new Problems("t");
        var listing = ListingFile.ReadText(text, kind, ListingOptions.Guess, problems, cautions);
        Hold(listing, problems, cautions);
    }

    internal static void Hold(Listing? listing, Problems problems, Problems cautions)
    {
        problems.InOrder().Concat(cautions.InOrder()).ShouldAllBe(p => p.Line >= 0 && p.Found.Length > 0 && p.WouldDo.Length > 0 && !p.ToString().Any(char.IsControl));
        if (listing is null)
        {
            problems.Any.ShouldBeTrue();
            return;
        }

        listing.Parameters.Select(p => p.Number).ShouldBeUnique();
        if (listing.Parameters.Count > 400)
        {
            return;
        }

        var suggestions = Bars.Scorer.Suggest(listing.Parameters);
        suggestions.ShouldAllBe(s => s.Certainty >= 0 && s.Certainty <= 1);
        suggestions.Where((s, i) => s.Setting is not null && !listing.Parameters[i].Number.StartsWith("6048h", StringComparison.Ordinal) && !listing.Parameters[i].Number.StartsWith("6049h", StringComparison.Ordinal))
            .Select(s => s.Setting!.Name).ShouldBeUnique();
        var draft = new ProfileDraft(Bars.Scorer, listing.Parameters.Take(3).Select(p => p.Number).ToHashSet(StringComparer.Ordinal)).Write("t", "t", listing.Parameters, suggestions);
        var yaml = new Problems("t");
        YamlTree.Read(draft, yaml).ShouldNotBeNull(string.Join('\n', yaml.InOrder()));
    }
}
