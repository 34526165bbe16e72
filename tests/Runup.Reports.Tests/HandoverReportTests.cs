using System.Text.RegularExpressions;
using Runup.Commissioning.Handover;
using Runup.Commissioning.Records;
using Runup.Reports.Handover;
using Runup.Reports.Tests.Example;

namespace Runup.Reports.Tests;

public sealed partial class HandoverReportTests
{
    public static TheoryData<string> Examples => ["whole", "troubled", "empty"];

    [Fact]
    public void The_first_page_and_first_run_of_a_set_in_order_read_as_approved() =>
        Until("4 Parameters of the drive", PlainText.Of(Page("whole"))).ShouldBeApproved("whole.txt");

    [Fact]
    public void The_first_pages_of_a_set_in_trouble_read_as_approved() =>
        Until("6 Motor, load and voltage", PlainText.Of(Page("troubled"))).ShouldBeApproved("troubled.txt");

    [Theory]
    [MemberData(nameof(Examples))]
    public void The_same_model_gives_the_same_page(string example) => Page(example).ShouldBe(Page(example));

    [Theory]
    [MemberData(nameof(Examples))]
    public void Nothing_is_taken_from_outside_and_nothing_runs(string example)
    {
        var page = Page(example);
        var elements = PlainText.Parse(page).DescendantsAndSelf().ToList();

        elements.Select(e => e.Name.LocalName).ShouldNotContain(n => n == "script" || n == "link" || n == "iframe" || n == "object" || n == "image" || n == "use");
        elements.SelectMany(e => e.Attributes()).Where(a => !a.IsNamespaceDeclaration).ShouldAllBe(a =>
            !a.Name.LocalName.StartsWith("on", StringComparison.Ordinal) && (a.Name.LocalName != "src" || a.Value.StartsWith("data:image/jpeg;base64,", StringComparison.Ordinal)) && a.Name.LocalName != "href" && !a.Value.Contains("url(", StringComparison.Ordinal));
        page.Replace("http://www.w3.org/2000/svg", string.Empty, StringComparison.Ordinal).ShouldNotContain("://");
        page.ShouldNotContain("url(");
        page.ShouldNotContain("@import");
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void It_promises_nothing(string example)
    {
        var text = PlainText.Of(Page(example));

        Promises().Matches(text).ShouldBeEmpty();
        text.ShouldContain("is not an emergency stop and not safe torque off");
        Regex.Count(text, "Local codes, the makers' manuals and licensed people decide", RegexOptions.None, TimeSpan.FromSeconds(1)).ShouldBe(1);
    }

    [Fact]
    public void Hostile_text_stays_text_wherever_it_comes_from()
    {
        const string hostile = "</style></title><script>alert('x')</script>\"'&\u202E\u0000]]>";
        var page = HandoverReport.Write(Hostile.Model(hostile));
        var elements = PlainText.Parse(page).DescendantsAndSelf().ToList();

        elements.ShouldNotContain(e => e.Name.LocalName == "script");
        page.ShouldNotContain("<script");
        page.ShouldNotContain("\u202E");
        page.ShouldNotContain("\0");
        elements.Single(e => e.Name.LocalName == "h1").Value.ShouldStartWith("</style></title><script>alert('x')</script>\"'&\uFFFD");
        elements.Single(e => e.Name.LocalName == "style").Value.ShouldNotContain('<');
        Regex.Count(PlainText.Of(page), Regex.Escape("<script>alert('x')"), RegexOptions.None, TimeSpan.FromSeconds(1)).ShouldBeGreaterThan(15);
    }

    [Fact]
    public void Every_parameter_that_is_kept_stands_on_the_paper_once()
    {
        var model = ExampleHandover.Whole();
        var text = PlainText.Of(HandoverReport.Write(model));

        model.Parameters.Count.ShouldBeGreaterThan(100);
        foreach (var parameter in model.Parameters)
        {
            Regex.Count(text, $"^{Regex.Escape(parameter.Number)} (\\| )?{Regex.Escape(parameter.Name)}( \\||:)", RegexOptions.Multiline, TimeSpan.FromSeconds(1)).ShouldBe(1, parameter.Number);
        }
    }

    [Fact]
    public void A_reading_outside_is_said_in_words()
    {
        var record = new ExampleRecord();
        record.Step("coupled-range", s =>
        {
            record.Reading(s, "output current at 25 Hz", "A", 8, 7, 9, 11.5);
            record.Reading(s, "output current at 50 Hz", "A", 12, 11, 13, 12.1);
        }, "failed", "at 25 Hz outside what is expected: output current");
        record.Step("standstill", s => record.Reading(s, "output frequency", "Hz", 0, null, 0.05, 0.2), "failed", null);
        var text = PlainText.Of(HandoverReport.Write(HandoverModel.Of(ExampleHandover.Sources(record.All, ExampleHandover.Clean))));

        text.ShouldContain("output current, A (% of rated) | 11.5 (80 %) OUTSIDE 8.00 (7.00 to 9.00) | 12.1 (84 %) 12.0 (11.0 to 13.0)");
        text.ShouldContain("output frequency | 0.20 Hz | OUTSIDE | 0.00 Hz | at most 0.05 Hz");
        text.ShouldContain("FAILED 12.5, 25, 37.5, 50 Hz, coupled, with readings at each.");
        text.ShouldContain("coupled, with readings at each. It failed: at 25 Hz outside what is expected: output current.");
    }

    [Fact]
    public void A_photo_stands_once_with_all_that_it_shows_beside_the_part_that_it_supports()
    {
        var model = ExampleHandover.Photographed("<plate>.jpg");
        var page = HandoverReport.Write(model);
        var figures = PlainText.Parse(page).Descendants().Where(e => e.Name.LocalName == "figure" && (string?)e.Attribute("class") == "photo").ToList();

        figures.Count.ShouldBe(2);
        figures[0].Value.ShouldStartWith("Shows: Output 7.5 kW (10.1 hp); Current 14.4 A");
        figures[0].Value.ShouldContain("<plate>.jpg, SHA-256 ");
        ((string?)figures[0].Elements().First().Attribute("src")).ShouldBe("data:image/jpeg;base64,/9g=");
        figures[1].Value.ShouldStartWith("the panel (the photo panel.jpg was not read)");
    }

    [Theory]
    [InlineData(null, "they were kept by the computer's clock, not checked against a time server. In UTC this entry is of 2026-05-04 06:30:01.")]
    [InlineData("a clock of its own", "they were kept by a clock of its own. In UTC")]
    public void What_kept_the_record_s_time_is_said(string? clock, string said)
    {
        var record = new ExampleRecord();
        record.Add(new RecordBody.JobTaken("runup: 1\n", new string('a', 64), clock));

        PlainText.Of(HandoverReport.Write(HandoverModel.Of(ExampleHandover.Sources(record.All, ExampleHandover.Clean)))).ShouldContain(said);
    }

    [Fact]
    public void A_record_of_before_clocks_were_kept_is_read() => RecordText.Read("""{"kind":"job-taken","job_text":"x","sha256":"y"}""")
        .ShouldBe(new RecordReading.Known(new RecordBody.JobTaken("x", "y")));

    [Fact]
    public void Many_parameters_that_were_not_entered_do_not_bury_what_else_is_open()
    {
        var model = HandoverModel.Of(ExampleHandover.Sources([], ExampleHandover.Clean));

        var point = model.Open.Single(p => p.Subject == "Not entered");
        point.Words.ShouldStartWith($"{model.Parameters.Count(p => p.DiffersFromSheet)} parameters of the sheet are other in the drive, or what it holds is not known: 104, 105, ");
        point.Words.Length.ShouldBeLessThan(300);
    }

    [Fact]
    public void A_drive_that_was_put_back_is_not_told_to_have_forgotten()
    {
        var model = HandoverModel.Of(ExampleHandover.Sources(ExampleRecord.PutBack(), ExampleHandover.Clean));

        model.Open.Select(p => p.Subject).ShouldNotContain("Kept without power");
        model.Open.Single(p => p.Subject == "Another sheet").Words.ShouldStartWith("What was entered last is not this sheet: the drive was put back to as found, or the job was changed since. Not as this sheet asks: 106 ");
    }

    [Fact]
    public void Ten_thousand_characters_of_a_note_stay_within_the_page()
    {
        var model = ExampleHandover.Whole(new string('W', 10_000));

        var page = HandoverReport.Write(model);

        PlainText.Parse(page).Descendants().Single(e => (string?)e.Attribute("class") == "what").Value.Length.ShouldBe(10_000);
        page.ShouldContain("overflow-wrap");
    }

    [Fact]
    public void Plots_of_start_torque_and_voltage_lie_within_the_page()
    {
        var page = PlainText.Parse(Page("whole"));
        var plots = page.Descendants().Where(e => e.Name.LocalName == "svg" && (string?)e.Attribute("role") == "img").ToList();

        plots.Select(p => p.Elements().First(e => e.Name.LocalName == "title").Value).ShouldBe(
        [
            "Up to the highest frequency and down again on the drive's ramps, coupled: measured over predicted. The prediction is an estimate.",
            "Torque and speed",
            "Output voltage against frequency",
            "Door label SWP-101",
        ]);
        Page("whole").Length.ShouldBeLessThan(120_000);
    }

    private static string Page(string example) => HandoverReport.Write(example switch
    {
        "whole" => ExampleHandover.Whole(),
        "troubled" => ExampleHandover.Troubled(),
        _ => ExampleHandover.Empty(),
    });

    private static string Until(string heading, string text) => text[..text.IndexOf(heading, StringComparison.Ordinal)];

    [GeneratedRegex("\\b(?:un)?safe(?! torque off)\\b|\\bsafely\\b|complian|complies|certif|guarantee", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Promises();
}
