using System.Globalization;
using Runup.Cli.Checks;
using Runup.Cli.Handover;
using Runup.Cli.Terminal;
using Runup.Commissioning.Handover;
using Runup.Reports.Site;

namespace Runup.Cli.Demo;

/// <summary>The summary of a site for a person at a terminal.</summary>
internal static class SitePage
{
    internal static void Write(Page page, IReadOnlyList<SiteRow> rows)
    {
        page.Line($"{SiteReport.Counts(rows)}.");
        page.Table(
            [new("set"), new("drive"), new("stages"), new("state"), new("open", Digits: true), new("run from"), new("bus time-out")],
            rows.Select(r => (IReadOnlyList<string>)
            [
                r.Tag,
                r.Drive,
                string.Create(CultureInfo.InvariantCulture, $"{r.Stages.Count(s => s.State == StageState.Done)} of {r.Stages.Count}"),
                HandoverPage.Word(r.State),
                r.Open.Count.ToString(CultureInfo.InvariantCulture),
                r.RunSource ?? "not known",
                r.BusTimeout ?? "not known",
            ]));
        page.Line();
        page.Table(
            [new("set"), new("what", Whole: false), new("gravest finding", Whole: false), new("open", Whole: false)],
            rows.Select(r => (IReadOnlyList<string>)
            [
                r.Tag,
                r.Title ?? "",
                Gravest(r),
                r.Open.Count == 0 ? "nothing" : string.Join("; ", r.Open.Select(o => o.Subject.TrimEnd('.'))),
            ]));
    }

    private static string Gravest(SiteRow row) => (row.Gravest, row.Undecided) switch
    {
        ({ } finding, 0) => $"{finding.Severity.Word().ToUpperInvariant()} {finding.Title}",
        ({ } finding, var undecided) => string.Create(CultureInfo.InvariantCulture, $"{finding.Severity.Word().ToUpperInvariant()} {finding.Title}; {undecided} undecided"),
        (null, 0) => "none",
        (null, var undecided) => string.Create(CultureInfo.InvariantCulture, $"none; {undecided} undecided"),
    };
}
