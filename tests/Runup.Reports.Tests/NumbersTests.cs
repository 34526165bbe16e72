using Runup.Reports.Handover;
using Runup.Reports.Html;

namespace Runup.Reports.Tests;

public sealed class NumbersTests
{
    [Theory]
    [InlineData(49.998, "Hz", "50.00 Hz")]
    [InlineData(6.583, "A", "6.58 A")]
    [InlineData(14.44, "A", "14.4 A")]
    [InlineData(-0.0001, "A", "0.00 A")]
    [InlineData(563.4, "V", "563 V")]
    [InlineData(1459.6, "rpm", "1460 rpm")]
    [InlineData(0.4123, "s", "0.41 s")]
    [InlineData(-6.63, "%", "-6.6 %")]
    [InlineData(0.0312345, "mm/s", "0.03123 mm/s")]
    [InlineData(4.0, "1", "4")]
    [InlineData(double.NaN, "A", "not a number A")]
    public void A_reading_has_the_digits_that_its_unit_is_read_with(double value, string unit, string text) => Numbers.Of(value, unit).ShouldBe(text);

    [Fact]
    public void What_was_not_read_is_a_dash() => Numbers.Of((double?)null, "A").ShouldBe("–");

    [Theory]
    [InlineData("a<b>&\"'", "a&lt;b&gt;&amp;&quot;&#39;")]
    [InlineData("two\nlines\tand", "two lines and")]
    [InlineData("7,5 kW · 35 lb·ft² Ω 漢 😀", "7,5 kW · 35 lb·ft² Ω 漢 😀")]
    [InlineData("\u202Eevil\u200B\u0007\uE000", "\uFFFDevil\uFFFD\uFFFD\uFFFD")]
    public void Text_is_made_harmless(string text, string escaped) => Escape.Text(text).ShouldBe(escaped);

    [Fact]
    public void Half_of_a_pair_is_made_harmless() => Escape.Text("half " + (char)0xD800 + " pair").ShouldBe("half \uFFFD pair");

    [Fact]
    public void Text_in_a_style_sheet_can_not_leave_its_string() =>
        Escape.Css("a\"; } </style> \\ é").ShouldBe("a\\000022 \\00003b  \\00007d  \\00003c \\00002f style\\00003e  \\00005c  \\0000e9 ");
}
