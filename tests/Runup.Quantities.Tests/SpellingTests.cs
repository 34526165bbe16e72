namespace Runup.Quantities.Tests;

public sealed class SpellingTests
{
    private static readonly string[] Keys = ["voltage", "frequency", "phases", "fault-level", "transformer", "generator"];

    [Theory]
    [InlineData("volatge", "voltage")]
    [InlineData("Voltage", "voltage")]
    [InlineData("fault_level", "fault-level")]
    [InlineData("freq", null)]
    [InlineData("frequenzy", "frequency")]
    [InlineData("x", null)]
    [InlineData("", null)]
    public void Finds_the_nearest_word(string word, string? nearest) => Spelling.Nearest(word, Keys).ShouldBe(nearest);

    [Fact]
    public void A_very_long_word_is_near_to_nothing() => Spelling.Nearest(new string('v', 100_000), Keys).ShouldBeNull();
}
