using Runup.Profiles;

namespace Runup.Files.Tests.Suggestion;

/// <summary>Tables of makes that nobody sells, each written in another hand; those of the second test were written after the vocabulary was fitted to the first.</summary>
public sealed class HandsTests
{
    [Theory]
    [InlineData("heron.csv")]
    [InlineData("plover.txt")]
    [InlineData("wigeon.tsv")]
    [InlineData("sanderling.csv")]
    [InlineData("turnstone.txt")]
    public void Meanings_are_suggested_on_tables_that_the_vocabulary_was_fitted_to(string table) => Hold(table);

    [Theory]
    [InlineData("rail.csv")]
    [InlineData("dunlin.md")]
    [InlineData("smew.tsv")]
    [InlineData("crake.csv")]
    [InlineData("knot.xlsx")]
    [InlineData("phalarope.tsv")]
    [InlineData("dotterel.csv")]
    [InlineData("whimbrel.txt")]
    public void Meanings_are_suggested_on_tables_that_came_after_the_vocabulary(string table) => Hold(table);

    [Fact]
    public void What_is_easily_taken_for_a_setting_is_never_certain_even_where_the_setting_itself_is_missing()
    {
        var rows = Hands.Read("taken-for-settings.tsv", out _).Parameters;
        rows.Count.ShouldBe(104);
        var suggestions = Bars.Scorer.Suggest(rows);
        rows.Where((_, i) => suggestions[i].Certainty >= Runup.Profiles.Suggestion.High).Select(r => r.Name).ShouldBeEmpty();
        rows.Where((_, i) => suggestions[i].Setting is not null).Count().ShouldBeLessThan(30);
    }

    private static void Hold(string table)
    {
        var listing = Hands.Read(table, out var problems);
        var truth = Hands.Truth(table);
        var bars = Bars.Of(listing.Parameters, truth);
        if (Environment.GetEnvironmentVariable("RUNUP_MISSES") is { } file)
        {
            File.WriteAllLines(file + Path.GetFileName(table), [bars.ToString(), listing.Parameters.Count + " rows", .. listing.Columns.Select(c => $"{c.Column} {c.Title}: {c.Role}"), .. problems.Select(p => p.ToString()), .. bars.Misses, "", .. listing.Parameters.Select(Line)]);
        }

        truth.Keys.Except(listing.Parameters.Select(p => p.Number), StringComparer.Ordinal).ShouldBeEmpty();
        bars.RightPart.ShouldBeGreaterThanOrEqualTo(0.9, string.Join('\n', bars.Misses));
        bars.WrongPart.ShouldBeLessThanOrEqualTo(0.02, string.Join('\n', bars.Misses));
    }

    private static string Line(ListedParameter p) =>
        $"{p.Line}: {p.Number} | {p.Group} | {p.Name} | {p.Unit} | x{p.Scale} | {p.Low}..{p.High} | {p.Default} | {string.Join(" ", p.Choices.Select(c => $"{c.Raw}={c.Label}"))} | {p.Access} | {p.Register} | {p.Width} {p.Signed}";
}
