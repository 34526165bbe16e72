using System.Globalization;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Handover;
using Runup.Reports.Handover;
using Runup.Reports.Html;

namespace Runup.Reports.Site;

/// <summary>The summary of a site as one HTML file that needs nothing but the handovers beside it.</summary>
public static class SiteReport
{
    private static readonly StageState[] Worst = [StageState.HeldUp, StageState.NotDone, StageState.Open, StageState.Done];

    /// <summary>The page; the same summary gives the same page, byte for byte.</summary>
    public static string Write(SiteSummary summary)
    {
        ArgumentNullException.ThrowIfNull(summary);
        return HtmlPage.Write(
            $"Site {summary.Name}",
            HtmlPage.Style("handover.css") + HtmlPage.Style("site.css") + HtmlPage.Paper("size: landscape; margin: 14mm 13mm 17mm;", $"{summary.Name}, drive sets, {Numbers.Of(summary.WrittenAt)}"),
            body => Body(body, summary));
    }

    /// <summary>How many sets are how far, in words: those that need somebody first.</summary>
    public static string Counts(IReadOnlyList<SiteRow> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        var parts = from state in Worst
                    let count = rows.Count(r => r.State == state)
                    where count > 0
                    select string.Create(CultureInfo.InvariantCulture, $"{count} {Words(state)}");
        return string.Create(CultureInfo.InvariantCulture, $"{rows.Count} {(rows.Count == 1 ? "set" : "sets")}: {string.Join(", ", parts)}");
    }

    private static string Words(StageState state) => state switch
    {
        StageState.HeldUp => "held up by a blocker",
        StageState.NotDone => "with a stage not done",
        StageState.Open => "gone through with open points",
        StageState.Done => "done with nothing open",
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, null),
    };

    private static void Body(HtmlWriter html, SiteSummary summary)
    {
        html.In("header", null, header => header
            .Element("p", "Drive sets of a site", "kind")
            .Element("h1", summary.Name)
            .Element("p", $"{Counts(summary.Rows)}.", "what")
            .Element("p", $"Written {Numbers.Of(summary.WrittenAt)} by {summary.WrittenBy}", "small"));
        if (summary.Remark is { } remark)
        {
            html.Element("p", remark, "decides");
        }

        html.In("table", "sets", table =>
        {
            table.In("thead", null, head => head.In("tr", null, row => row
                .Element("th", "Set").Element("th", "State").Element("th", "Stages").Element("th", "Gravest finding").Element("th", "Run commands come from").Element("th", "Bus time-out")));
            table.In("tbody", null, body =>
            {
                foreach (var row in summary.Rows)
                {
                    body.In("tr", null, line => Row(line, row));
                }
            });
        });
        html.Element("p", "State is the least of a set's stages, and never done while a point is open. Run source and time-out are as the drive was left.", "small");
        html.Element("h2", "What is open");
        foreach (var row in summary.Rows)
        {
            Open(html, row);
        }

        html.Element("p", SafetyWords.WhoDecides, "decides");
    }

    private static void Row(HtmlWriter html, SiteRow row) => html
        .In("th", "set", cell => cell.Link(row.Handover, row.Tag).Element("small", row.Title ?? "(no title in the job file)").Element("small", row.Drive))
        .In("td", null, cell => cell.State(row.State).Element("small", row.Open.Count switch
        {
            0 => "no point open",
            1 => "1 point open",
            var count => string.Create(CultureInfo.InvariantCulture, $"{count} points open"),
        }))
        .In("td", "stages", cell =>
        {
            foreach (var stage in row.Stages)
            {
                cell.In("div", null, line => line.State(stage.State).Element("small", stage.Stage));
            }
        })
        .In("td", "gravest", cell => Gravest(cell, row))
        .Element("td", row.RunSource ?? "not known", "from")
        .Element("td", row.BusTimeout ?? "not known", "silence");

    private static void Gravest(HtmlWriter html, SiteRow row)
    {
        if (row.Gravest is { } finding)
        {
            html.Weight(finding.Severity).Element("small", finding.Title);
        }
        else
        {
            html.Text("none");
        }

        if (row.Undecided > 0)
        {
            html.Element("small", string.Create(CultureInfo.InvariantCulture, $"{row.Undecided} undecided"));
        }
    }

    private static void Open(HtmlWriter html, SiteRow row) => html.In("section", "of", section =>
    {
        section.Element("h3", $"{row.Tag}  {row.Title}".TrimEnd());
        if (row.Open.Count == 0)
        {
            section.Element("p", "No open restrictions are known.");
            return;
        }

        section.In("ol", null, list =>
        {
            foreach (var point in row.Open)
            {
                list.In("li", null, item => item.Element("b", $"{point.Subject.TrimEnd('.')}.").Text($" {point.Words}"));
            }
        });
    });
}
