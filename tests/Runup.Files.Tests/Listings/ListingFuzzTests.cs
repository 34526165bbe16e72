using System.Diagnostics;
using Runup.Files.Listings;
using Runup.Files.Tests.Suggestion;
using Runup.Files.Yaml;

namespace Runup.Files.Tests.Listings;

/// <summary>Whatever stands in a table, a data sheet or a spreadsheet, a person gets rows or problems, and never an exception. With RUNUP_LONG ten minutes.</summary>
public sealed class ListingFuzzTests
{
    private static readonly bool IsLong = Environment.GetEnvironmentVariable("RUNUP_LONG") is not null;

    private static readonly string[] Pieces =
        ["0", "-1", "99999999999999999999999999", "1e999", "0x", "0xFFFFFFFFFFFFFFFFF", "$NODEID", "\"", "\"\"", ";", ",", "\t", "|", "\n", "\r", "\n\n", "[", "]", "[6046sub1]", "=", ":", "0: a 1: b", "…", "~", "...", " - ", "%", "Hz", "¹⁾", "*", "\u202E", "\u0000", "\uD800", "(((((", "No.;Name", "104", "6046h:1", "sub", "CompactSubObj=254", "SubNumber=9", "#", "- ", "{", "}", "🦆", "١٢٣"];

    [Theory]
    [InlineData("heron.csv")]
    [InlineData("plover.txt")]
    [InlineData("rail.csv")]
    [InlineData("dunlin.md")]
    [InlineData("../../Listings/Eds/grebe.eds")]
    public void A_mangled_text_is_read_or_refused(string table)
    {
        var text = File.ReadAllText(Hands.PathOf(table));
        Repeat(seed => Try(Mangled(text, new Random(seed)), ListingFile.KindOf(table)));
    }

    [Fact]
    public void A_mangled_spreadsheet_is_read_or_refused()
    {
        var book = SpreadsheetTests.Book();
        Repeat(seed =>
        {
            var random = new Random(seed);
            var bytes = (byte[])book.Clone();
            for (var i = random.Next(1, 20); i > 0; i--)
            {
                bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
            }

            var problems = new Problems("t.xlsx");
            var listing = ListingFile.Read(bytes, ListingKind.Spreadsheet, ListingOptions.Guess, problems, new Problems("t.xlsx"));
            (listing is null && !problems.Any).ShouldBeFalse();
        });
    }

    [Theory]
    [InlineData(ListingKind.Csv)]
    [InlineData(ListingKind.Pasted)]
    [InlineData(ListingKind.Eds)]
    public void Noise_is_read_or_refused(ListingKind kind) => Repeat(seed =>
    {
        var random = new Random(seed);
        Try(string.Concat(Enumerable.Range(0, random.Next(400)).Select(_ => Pieces[random.Next(Pieces.Length)])), kind);
    });

    [Fact]
    public void A_cell_without_end_is_no_matter_of_time()
    {
        var clock = Stopwatch.StartNew();
        foreach (var piece in (string[])["0: ", "0-", "1 000", "((", "0.", "a, ", "[0] ", "0 a "])
        {
            Try("No.;Name;Range\n104;Output;" + string.Concat(Enumerable.Repeat(piece, 40_000)), ListingKind.Csv);
            Try(string.Concat(Enumerable.Repeat(piece, 40_000)), ListingKind.Pasted);
        }

        clock.Elapsed.ShouldBeLessThan(TimeSpan.FromSeconds(120));
    }

    private static void Repeat(Action<int> attempt)
    {
        // The long lane: ten minutes over all tests of this class.
        var clock = Stopwatch.StartNew();
        for (var seed = 0; IsLong ? clock.Elapsed < TimeSpan.FromSeconds(600 / 9.0) : seed < 12; seed++)
        {
            attempt(seed);
        }
    }

    private static string Mangled(string text, Random random)
    {
        var from = random.Next(text.Length);
        var mangled = text.Substring(from, Math.Min(text.Length - from, random.Next(200, 6000)));
        if (random.Next(2) == 0)
        {
            mangled = text[..Math.Min(200, text.Length)] + mangled;
        }

        for (var i = random.Next(1, 30); i > 0; i--)
        {
            var at = random.Next(mangled.Length);
            var length = Math.Min(mangled.Length - at, random.Next(0, 12));
            mangled = random.Next(4) switch
            {
                0 => mangled.Remove(at, length),
                1 => mangled.Insert(at, mangled.Substring(at, length)),
                _ => mangled.Insert(at, Pieces[random.Next(Pieces.Length)]),
            };
        }

        return mangled;
    }

    private static void Try(string text, ListingKind kind)
    {
        var problems = new Problems("t");
        var cautions = new Problems("t");
        var listing = ListingFile.ReadText(text, kind, ListingOptions.Guess, problems, cautions);
        problems.InOrder().Concat(cautions.InOrder()).ShouldAllBe(p => p.Line >= 0 && p.Found.Length > 0 && p.WouldDo.Length > 0);
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
