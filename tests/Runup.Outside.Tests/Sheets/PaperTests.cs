using System.Globalization;
using Runup.Commissioning.Sheet;
using Runup.Outside.Tests.Modbus;
using Runup.Reports.Sheets;

namespace Runup.Outside.Tests.Sheets;

/// <summary>The sheet on paper, printed by Chromium and counted by Poppler's pdfinfo (Debian's chromium and poppler-utils).</summary>
public sealed class PaperTests
{
    [Theory]
    [InlineData("A4")]
    [InlineData("letter")]
    public async Task What_must_be_entered_fits_one_page_whatever_the_set_and_make(string paper)
    {
        var sheets = DemoSheets.All.Select(d => DemoSheets.Of(d.File, d.Make, SheetExtent.Must)!).ToList();

        // Half as many lines again, for sets that we have not seen.
        var more = DemoSheets.All.Where(d => d.Make is "osprey").Select(d => DemoSheets.Of(d.File, d.Make, SheetExtent.Decided)!).MaxBy(s => s.Entries.Count)!;
        more.Entries.Count.ShouldBeGreaterThanOrEqualTo(40);
        sheets.Add(more with { Extent = SheetExtent.Must });
        sheets.AddRange(DemoSheets.All.Select(d => DemoSheets.Of(d.File, d.Make, SheetExtent.Must, wasRead: true)!));
        sheets.Count.ShouldBeGreaterThan(3);

        var pages = await Printed(paper, sheets);
        pages.Count.ShouldBe(sheets.Count, string.Join("\n", pages.Select(p => p[..Math.Min(p.Length, 90)])));
        foreach (var (page, sheet) in pages.Zip(sheets))
        {
            page.ShouldContain($"Sheet {sheet.Checksum}");
            page.ShouldContain("Entered by");
        }
    }

    [Fact]
    public async Task Each_page_of_a_long_sheet_names_set_drive_and_checksum_and_counts()
    {
        var (file, make) = DemoSheets.All.First();
        var sheet = DemoSheets.Of(file, make, SheetExtent.Everything)!;
        var pages = await Printed("A4", [sheet]);
        pages.Count.ShouldBeGreaterThan(3);
        foreach (var (page, place) in pages.Select((p, i) => (p, i)))
        {
            page.ShouldContain(sheet.Tag);
            page.ShouldContain($"Sheet {sheet.Checksum}");
            page.ShouldContain("from factory");
            page.ShouldContain(string.Create(CultureInfo.InvariantCulture, $"page {place + 1} of {pages.Count}"));
        }
    }

    // One after another in one document, since a browser takes its time to start.
    private static async Task<IReadOnlyList<string>> Printed(string paper, IReadOnlyList<SheetModel> sheets)
    {
        var folder = Directory.CreateTempSubdirectory("runup-paper-");
        try
        {
            var (page, pdf) = (Path.Combine(folder.FullName, "sheet.html"), Path.Combine(folder.FullName, "sheet.pdf"));
            await File.WriteAllTextAsync(page, OnPaper(paper, [.. sheets.Select(SheetPage.Write)]), TestContext.Current.CancellationToken);
            var printed = await OtherProgram.RunAsync("chromium", "--headless", "--no-sandbox", "--disable-gpu", "--no-pdf-header-footer", $"--user-data-dir={Path.Combine(folder.FullName, "own")}", $"--print-to-pdf={pdf}", new Uri(page).AbsoluteUri);
            Assert.SkipUnless(printed is not null, "Chromium is not installed: apt-get install chromium");
            File.Exists(pdf).ShouldBeTrue(printed.Value.Errors);
            var info = await OtherProgram.RunAsync("pdfinfo", pdf);
            var text = await OtherProgram.RunAsync("pdftotext", "-layout", pdf, "-");
            Assert.SkipUnless(info is not null && text is not null, "pdfinfo or pdftotext is not installed: apt-get install poppler-utils");
            var count = info.Value.Output.Split('\n').Single(l => l.StartsWith("Pages:", StringComparison.Ordinal))["Pages:".Length..];
            var pages = text.Value.Output.TrimEnd('\f').Split('\f');
            pages.Length.ShouldBe(int.Parse(count, CultureInfo.InvariantCulture));
            return pages;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static string OnPaper(string paper, IReadOnlyList<string> documents)
    {
        const string size = "size: landscape;";
        documents[0].ShouldContain(size);
        var bodies = documents.Select(d => d[(d.IndexOf("<body>", StringComparison.Ordinal) + "<body>".Length)..d.IndexOf("</body>", StringComparison.Ordinal)]);
        return documents[0][..documents[0].IndexOf("<body>", StringComparison.Ordinal)].Replace(size, $"size: {paper} landscape;", StringComparison.Ordinal)
            + $"<body>{string.Join("<div style=\"break-after: page\"></div>", bodies)}</body></html>";
    }
}
