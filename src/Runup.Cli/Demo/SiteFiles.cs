using System.Text;
using Runup.Cli.Handover;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Handover;
using Runup.Reports.Site;

namespace Runup.Cli.Demo;

/// <summary>The summary of a site: a row for each set, and the page with links to the handovers.</summary>
internal static class SiteFiles
{
    private const string Index = "index.html";

    internal static SiteRow Row(LoadedJob job, HandoverFiles files) =>
        SiteRow.Of(files.Model, job.Profile, job.Size, Path.GetRelativePath(job.Folder, files.Report));

    /// <summary>Writes the page into the site's folder; its path.</summary>
    /// <exception cref="Complaint">It can't be written.</exception>
    internal static string Write(string folder, string name, IReadOnlyList<SiteRow> rows, string? remark)
    {
        var file = Path.Combine(folder, Index);
        var summary = new SiteSummary(name, rows, TimeProvider.System.GetLocalNow(), $"Runup {typeof(SiteFiles).Assembly.GetName().Version!.ToString(3)}", remark);
        try
        {
            File.WriteAllText(file, SiteReport.Write(summary), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new Complaint(ExitStatus.BadInput, $"runup: {file} can't be written: {e.Message}");
        }

        return file;
    }
}
