using Runup.Commissioning.Sheet;
using Runup.Files;
using Runup.Files.Csv;
using Runup.Files.Sheets;
using Runup.Outside.Tests.Modbus;

namespace Runup.Outside.Tests.Sheets;

/// <summary>The spreadsheet held against LibreOffice (Debian's libreoffice-calc): opened, written as CSV as its cells show, read again.</summary>
public sealed class SpreadsheetTests
{
    // Comma, double quote, UTF-8, from the first line, no column formats, no language, quotes where needed, cells as they show.
    private const string AsItShows = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true";

    [Theory]
    [InlineData("tern")]
    [InlineData("osprey")]
    public async Task What_LibreOffice_shows_is_the_sheet(string make)
    {
        var folder = Directory.CreateTempSubdirectory("runup-sheet-");
        try
        {
            var sheets = DemoSheets.All.Where(d => d.Make == make).Select((d, i) => (File: $"{i}.xlsx", Sheet: DemoSheets.Of(d.File, make, SheetExtent.Everything)!)).ToList();
            sheets.ShouldNotBeEmpty();
            foreach (var (file, sheet) in sheets)
            {
                await File.WriteAllBytesAsync(Path.Combine(folder.FullName, file), SheetBook.Write(sheet), TestContext.Current.CancellationToken);
            }

            var run = await OtherProgram.RunAsync(
                "soffice",
                [$"-env:UserInstallation={new Uri(Path.Combine(folder.FullName, "own")).AbsoluteUri}", "--headless", "--convert-to", AsItShows, "--outdir", folder.FullName, .. sheets.Select(s => Path.Combine(folder.FullName, s.File))]);
            Assert.SkipUnless(run is not null, "LibreOffice is not installed: apt-get install libreoffice-calc");
            run.Value.Status.ShouldBe(0, run.Value.Errors);
            foreach (var (file, sheet) in sheets)
            {
                Same(await File.ReadAllTextAsync(Path.Combine(folder.FullName, Path.ChangeExtension(file, ".csv")), TestContext.Current.CancellationToken), sheet);
            }
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static void Same(string csv, SheetModel sheet)
    {
        var problems = new Problems("from LibreOffice");
        var table = CsvTable.Read(csv, problems).ShouldNotBeNull(string.Join('\n', problems.InOrder()));
        table.Header.Select(h => h.Text).ShouldBe(SheetColumns.All.Select(c => c.Name));
        var wanted = sheet.Lines.Select(e => SheetColumns.All.Select(c => c.Cell(e).Text).ToList()).ToList();
        table.Rows.Count.ShouldBe(wanted.Count);
        foreach (var (row, cells) in table.Rows.Zip(wanted))
        {
            row.Select(c => c.Text).ShouldBe(cells);
        }
    }
}
