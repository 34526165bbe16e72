using System.ComponentModel;
using Runup.Cli.Entry;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Reports.Handover;
using Spectre.Console.Cli;

namespace Runup.Cli.Handover;

/// <summary><c>runup handover JOB</c>: the report, the file that restores the drive, and the label for the door.</summary>
internal sealed class HandoverCommand : AsyncCommand<HandoverCommand.Settings>
{
    public override async Task<int> ExecuteAsync(Spectre.Console.Cli.CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var paper = PaperOf(settings.Paper);
        var job = LoadedJob.From(settings.Job);
        using var records = SiteRecords.Open(job.Folder);
        var files = await HandoverFiles.Write(job, records, TimeProvider.System, cancellationToken, paper);
        var pdf = settings.NoPdf ? HandoverPdf.NotWanted(files.Report) : await HandoverPdf.Write(job.Job.Tag, files.Report, settings.Browser, records, cancellationToken);
        if (settings.Json)
        {
            HandoverPage.WriteJson(files, pdf);
            return (int)ExitStatus.Fine;
        }

        var page = new Page(Console.Out);
        page.Heading($"{job.Job.Tag}: handover");
        HandoverPage.Write(page, files);
        if ((pdf.File is { } file ? $"PDF: {file}" : pdf.WhyNot) is { } line)
        {
            page.Line(line);
        }

        return (int)ExitStatus.Fine;
    }

    private static Paper PaperOf(string? name) => name?.ToLowerInvariant() switch
    {
        null or "a4" => Paper.A4,
        "letter" => Paper.Letter,
        _ => throw new Complaint(ExitStatus.BadInput, $"runup: --paper: '{name}'; a4 or letter would do"),
    };

    internal sealed class Settings : JobSettings
    {
        [CommandOption("--paper <PAPER>")]
        [Description("a4 (as long as nothing else is said) or letter")]
        public string? Paper { get; set; }

        [CommandOption("--no-pdf")]
        [Description("The report as HTML only")]
        public bool NoPdf { get; set; }

        [CommandOption("--browser <FILE>")]
        [Description("The browser of the Chromium family that prints the PDF, where none is found by itself")]
        public string? Browser { get; set; }
    }
}
