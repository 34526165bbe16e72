using System.Globalization;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Handover;
using Runup.Reports.Html;

namespace Runup.Reports.Handover;

/// <summary>What the checks found, what they could not say, what they had nothing against.</summary>
internal static class FindingsSection
{
    public static void Write(HtmlWriter html, HandoverModel model)
    {
        html.Element("h2", "2 Findings of the checks");
        var checks = model.Checks;
        if (checks.Findings.Count == 0)
        {
            html.Element("p", string.Create(CultureInfo.InvariantCulture, $"None of {checks.Results.Count} checks has a finding."));
        }

        foreach (var finding in checks.Findings)
        {
            Finding(html, finding, model.StandingOf(finding));
        }

        foreach (var same in checks.Undecided.GroupBy(u => u.Missing, StringComparer.Ordinal))
        {
            Undecided(html, [.. same], model);
        }

        Gone(html, model);

        var satisfied = checks.Results.OfType<CheckResult.Satisfied>().ToList();
        if (satisfied.Count > 0)
        {
            html.Element("h3", "Without objection").In("table", "tight", table => table.In("tbody", null, body =>
            {
                foreach (var fine in satisfied)
                {
                    body.In("tr", null, row => row.Element("td", FindingIds.Words(fine.Id), "keep").Element("td", fine.Because));
                }
            }));
        }
    }

    // An acceptance is never lost sight of, also where there is nothing left to accept.
    private static void Gone(HtmlWriter html, HandoverModel model)
    {
        foreach (var gone in model.AcceptedAndGone)
        {
            html.Element("p", $"{gone.Body.Finding} was accepted by {gone.Body.By} on {Numbers.Of(gone.Time)} as {gone.Body.Weight}: {gone.Body.Title}. The checks no longer find it.", "small");
        }
    }

    // All that wait for the same datum together: twelve boxes that say the same hide the thirteenth.
    private static void Undecided(HtmlWriter html, IReadOnlyList<CheckResult.Undecided> same, HandoverModel model) => html.In("div", "finding", box =>
    {
        box.In("h3", null, head => head.Undecided().Text(same.Count == 1
                ? $" {FindingIds.Words(same[0].Id)}"
                : string.Create(CultureInfo.InvariantCulture, $" {same.Count} checks wait for the same")))
            .Element("p", $"Missing: {same[0].Missing}");
        foreach (var undecided in same)
        {
            box.Element("p", same.Count == 1 ? $"It would decide: {undecided.WouldChange}" : $"{FindingIds.Words(undecided.Id)}: would decide {undecided.WouldChange}")
                .Standing(model.StandingOf(undecided), isToBeAccepted: false);
        }
    });

    private static void Finding(HtmlWriter html, CheckResult.Violated finding, FindingStanding standing) => html.In("div", finding.Severity == Severity.Blocker ? "finding heavy" : "finding", box =>
    {
        box.In("h3", null, head => head.Weight(finding.Severity).Text($" {finding.Title}"))
            .Element("p", finding.Explanation)
            .In("p", null, line => line.Element("b", "What to do: ").Text(finding.Remedy));
        box.Standing(standing, isToBeAccepted: finding.Severity > Severity.Note)
            .Element("p", $"{finding.Id}{Numbers.Against(finding.Value, finding.Limit, finding.Unit)}. Source: {finding.Basis.Text}", "small");
    });
}
