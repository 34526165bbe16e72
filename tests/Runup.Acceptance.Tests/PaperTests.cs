using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Runup.Outside.Tests.Modbus;
using UglyToad.PdfPig;

namespace Runup.Acceptance.Tests;

/// <summary>What goes to the printer: the PDF, and the label for the door.</summary>
public sealed partial class PaperTests
{
    private static readonly string[] Confirmed = ["--by", "N. Ostre", "--confirm", "safe-torque-off-open-or-motor-isolated", "--confirm", "no-run-command-pending"];

    /// <summary>Read back by PdfPig, which knows nothing of the browser that printed it.</summary>
    [Theory]
    [InlineData("tern")]
    [InlineData("osprey")]
    public async Task The_PDF_holds_every_setting_the_tag_on_each_page_and_the_head_of_the_record(string make)
    {
        using var scratch = new Scratch();
        var job = await Entered(scratch, make);
        var settings = (await RunupProgram.Call(scratch.Folder, "settings", job, "--json")).Json.EnumerateArray().Select(s => s.GetProperty("setting").GetString()!).ToList();

        var run = await Handover(scratch, job);

        using var pdf = PdfDocument.Open(run.GetProperty("pdf").GetString()!);
        var pages = pdf.GetPages().Select(p => Letters(p.Text)).ToList();
        var text = string.Concat(pages);
        settings.Count.ShouldBeGreaterThan(20);
        settings.Where(s => !text.Contains(Letters(s.Replace('-', ' ')), StringComparison.Ordinal)).ShouldBeEmpty();
        text.ShouldContain(run.GetProperty("chain_head").GetString()!);
        pages.Count.ShouldBeInRange(6, 30);
        pages.ShouldAllBe(p => p.Contains("SWP-101handover", StringComparison.Ordinal));
        for (var i = 0; i < pages.Count; i++)
        {
            pages[i].ShouldContain($"page{i + 1}of{pages.Count}");
        }

        // A4 in points of 1/72 in: 595 by 842 (ISO 216).
        pdf.GetPages().ShouldAllBe(p => Math.Abs(p.Width - 595) < 2 && Math.Abs(p.Height - 842) < 2);
    }

    [Fact]
    public async Task On_letter_paper_each_page_is_eight_and_a_half_by_eleven_inches()
    {
        using var scratch = new Scratch();

        var run = await Handover(scratch, scratch.DemoJob(), "--paper", "letter");

        using var pdf = PdfDocument.Open(run.GetProperty("pdf").GetString()!);
        pdf.GetPages().ShouldAllBe(p => Math.Abs(p.Width - 612) < 2 && Math.Abs(p.Height - 792) < 2);
    }

    /// <summary>Read back by zbarimg, from the picture that a browser makes of the label.</summary>
    [Fact]
    public async Task The_code_on_the_label_reads_tag_and_checksums()
    {
        using var scratch = new Scratch();
        var job = await Entered(scratch, "tern");
        var run = await Handover(scratch, job, "--no-pdf");
        var (label, picture) = (run.GetProperty("label").GetString()!, Path.Combine(scratch.Folder, "label.png"));
        var root = XElement.Parse(await File.ReadAllTextAsync(label, TestContext.Current.CancellationToken));
        ((string?)root.Attribute("width"), (string?)root.Attribute("height")).ShouldBe(("90mm", "50mm"));
        Assert.SkipUnless(await OtherProgram.RunAsync("zbarimg", "--version") is { Status: 0 }, "zbarimg is not installed: apt-get install zbar-tools");
        var drawn = await OtherProgram.RunAsync("chromium", "--headless=new", "--no-sandbox", "--disable-gpu", $"--user-data-dir={Path.Combine(scratch.Folder, "profile")}", $"--screenshot={picture}", "--window-size=700,400", "--force-device-scale-factor=2", new Uri(label).AbsoluteUri);
        Assert.SkipUnless(drawn is { Status: 0 }, "chromium is not installed: apt-get install chromium");

        var read = (await OtherProgram.RunAsync("zbarimg", "--quiet", "--raw", picture)).ShouldNotBeNull();

        read.Output.ShouldContain("Tag SWP-101\n");
        read.Output.ShouldContain($"Record {run.GetProperty("chain_head").GetString()}");
        var restore = JsonDocument.Parse(await File.ReadAllTextAsync(run.GetProperty("restore").GetString()!, TestContext.Current.CancellationToken)).RootElement;
        read.Output.ShouldContain($"Restore file {restore.GetProperty("sha256").GetString()}\n");
    }

    [Theory]
    [InlineData("nothing/there")]
    [InlineData("swp-101.job.yaml")]
    public async Task A_browser_that_does_not_print_is_said_in_a_line_and_the_report_stands(string browser)
    {
        using var scratch = new Scratch();

        var run = await RunupProgram.Call(scratch.Folder, "handover", scratch.DemoJob(), "--browser", browser);

        run.Status.ShouldBe(0, run.Errors);
        run.Output.ShouldContain("No PDF: ");
        run.Output.ReplaceLineEndings(" ").ShouldContain("open the report in a browser and print it to PDF.");
        run.ShowsNoInsides();
        File.Exists(Path.Combine(scratch.Folder, "handover", "SWP-101.handover.html")).ShouldBeTrue();
    }

    [Fact]
    public async Task Paper_that_is_not_known_is_bad_input()
    {
        using var scratch = new Scratch();

        var run = await RunupProgram.Call(scratch.Folder, "handover", scratch.DemoJob(), "--paper", "a5");

        run.Status.ShouldBe(2);
        run.Errors.ShouldContain("--paper: 'a5'; a4 or letter would do");
    }

    private static async Task<string> Entered(Scratch scratch, string make)
    {
        var job = scratch.DemoJob(text => text.Replace("profile: tern", $"profile: {make}", StringComparison.Ordinal));
        await using var simulator = await Simulator.Start(scratch, job);
        (await RunupProgram.Call(scratch.Folder, ["enter", job, "--link", simulator.Link, .. Confirmed])).Status.ShouldBe(0);
        return job;
    }

    private static async Task<JsonElement> Handover(Scratch scratch, string job, params string[] options)
    {
        var run = await RunupProgram.Call(scratch.Folder, ["handover", job, "--json", .. options]);
        run.Status.ShouldBe(0, run.Errors);
        var why = run.Json.GetProperty("why_no_pdf").GetString();
        Assert.SkipWhen(why?.Contains("no browser", StringComparison.Ordinal) ?? false, "chromium is not installed: apt-get install chromium");
        why.ShouldBeNull();
        return run.Json;
    }

    // A PDF knows places, not blanks.
    private static string Letters(string text) => Blanks().Replace(text, "");

    [GeneratedRegex("\\s+", RegexOptions.None, 1000)]
    private static partial Regex Blanks();
}
