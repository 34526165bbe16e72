using Runup.Cli.Terminal;
using Runup.Commissioning.Records;
using Runup.Reports.Pdf;

namespace Runup.Cli.Handover;

/// <summary>The report as PDF, where a browser can print it.</summary>
/// <param name="File">The PDF; null where there is none.</param>
/// <param name="WhyNot">Why there is none and how to get one, in a line; null where there is one.</param>
internal sealed record HandoverPdf(string? File, string? WhyNot)
{
    private const string ByHand = "open the report in a browser and print it to PDF";

    /// <summary>Prints the report and records the PDF's checksum.</summary>
    /// <param name="tag">The set.</param>
    /// <param name="report">The report.</param>
    /// <param name="browser">The browser that the person named, or null.</param>
    /// <param name="records">The site's record.</param>
    /// <param name="cancellation">Gives it up.</param>
    /// <exception cref="Complaint">The file can't be written.</exception>
    internal static async Task<HandoverPdf> Write(string tag, string report, string? browser, IRecords records, CancellationToken cancellation)
    {
        var file = Path.ChangeExtension(report, "pdf");
        if ((browser ?? Browser.Find()) is not { } program)
        {
            return new(null, $"No PDF: no browser of the Chromium family was found on PATH or where such are installed. Name one with --browser, or {ByHand}.{Older(file)}");
        }

        switch (await PrintedPage.Print(program, report, PrintedPage.Patience, TimeProvider.System, cancellation))
        {
            case Printing.Printed printed:
                await HandoverFiles.Keep(file, printed.Pdf, tag, records, cancellation);
                return new(file, null);
            case Printing.Failed failed:
                return new(null, $"No PDF: {program}: {failed.Why}; {ByHand}.{Older(file)}");
            default:
                throw new InvalidOperationException("The set of printings is closed.");
        }
    }

    /// <summary>Nothing, where the person wants none.</summary>
    internal static HandoverPdf NotWanted(string report) => Older(Path.ChangeExtension(report, "pdf")) is { Length: > 0 } older ? new(null, $"No PDF was asked for.{older}") : new(null, null);

    // Whoever takes the file that lies there must not take it for this handover.
    private static string Older(string file) => System.IO.File.Exists(file) ? $" {file} is of an earlier handover." : string.Empty;
}
