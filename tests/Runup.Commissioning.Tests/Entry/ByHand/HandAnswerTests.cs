using Runup.Commissioning.Entry.ByHand;
using Runup.Commissioning.Tests.Bench;
using Runup.Profiles;

namespace Runup.Commissioning.Tests.Entry.ByHand;

public sealed class HandAnswerTests
{
    private static readonly ParameterValues Held = ParameterValues.Defaults(BenchMake.Profile, BenchMake.Size);

    [Theory]
    [InlineData("106", "", 144)]
    [InlineData("106", "   ", 144)]
    [InlineData("106", "9.6", 96)]
    [InlineData("106", "9,6", 96)]
    [InlineData("106", " 9.60 A ", 96)]
    [InlineData("106", "9,6a", 96)]
    [InlineData("180", "-1.5", -15)]
    [InlineData("180", "−1,5 Hz", -15)]
    [InlineData("131", "HP", 1)]
    [InlineData("131", "1", 1)]
    public void What_the_display_shows_is_read_as_it_is_typed(string number, string typed, long raw) => Answer(number, typed).ShouldBe(new HandAnswer.Shows(raw));

    [Theory]
    [InlineData("106", "0", "0.1 to 200.0 A")]
    [InlineData("106", "9000", "0.1 to 200.0 A")]
    [InlineData("106", "9.61", "0.1 to 200.0 A")]
    [InlineData("106", "fourteen", "0.1 to 200.0 A")]
    [InlineData("106", "9.6 V", "0.1 to 200.0 A")]
    [InlineData("131", "PS", "kW, hp")]
    [InlineData("131", "2", "kW, hp")]
    [InlineData("106", "s", "s the panel is locked")]
    [InlineData("106", "back to the menu", "0.1 to 200.0 A")]
    public void Anything_else_gets_one_line_that_says_what_would_do(string number, string typed, string says)
    {
        var why = Answer(number, typed).ShouldBeOfType<HandAnswer.Unclear>().Why;
        why.ShouldContain(says);
        why.ShouldNotContain('\n');
    }

    [Fact]
    public void The_other_answers_are_words_of_one_letter_or_written_out()
    {
        Answer("106", "q").ShouldBeOfType<HandAnswer.Quit>();
        Answer("106", "Quit").ShouldBeOfType<HandAnswer.Quit>();
        Answer("106", null).ShouldBeOfType<HandAnswer.Quit>();
        Answer("106", "b").ShouldBeOfType<HandAnswer.Back>();
        Answer("106", "S no access").ShouldBe(new HandAnswer.LeftOut("no access"));
        Answer("106", "skip no access").ShouldBe(new HandAnswer.LeftOut("no access"));
    }

    [Fact]
    public void A_choice_that_is_called_as_a_command_is_meant_as_the_choice()
    {
        var parameter = BenchMake.Of("131") with { Form = new ParameterForm.Choices([new(0, "a"), new(1, "b"), new(2, "s")]) };
        Read(parameter, "b").ShouldBe(new HandAnswer.Shows(1));
        Read(parameter, "s").ShouldBe(new HandAnswer.Shows(2));
    }

    private static HandAnswer Answer(string number, string? typed) => Read(BenchMake.Of(number), typed);

    private static HandAnswer Read(Parameter parameter, string? typed)
    {
        var question = new DisplayQuestion
        {
            Parameter = parameter,
            For = LookFor.Entered,
            Place = 1,
            Of = 1,
            Factory = new(100, "10.0", "A"),
            Expected = new(144, "14.4", "A"),
        };
        return HandAnswer.Read(typed, question, BenchMake.Size, Held);
    }
}
