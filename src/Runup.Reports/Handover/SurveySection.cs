using Runup.Commissioning.Handover;
using Runup.Commissioning.Survey;
using Runup.Reports.Html;

namespace Runup.Reports.Handover;

/// <summary>What the work was based on, each datum with where it comes from.</summary>
internal static class SurveySection
{
    public static void Write(HtmlWriter html, HandoverModel model)
    {
        html.Element("h2", "7 Survey and assumptions")
            .Element("p", "From: where the value was taken. A dash: the survey has the value, and does not say from where.", "small head");
        foreach (var part in model.Survey)
        {
            html.Element("h3", part.Title);
            if (part.Rows.Count > 0)
            {
                Table(html, part);
                PhotoFigures.OfPart(html, part, model);
            }

            if (part.Missing.Count > 0)
            {
                html.Element("p", $"Not surveyed: {string.Join(", ", part.Missing.Select(m => $"{char.ToLowerInvariant(m[0])}{m[1..]}"))}.", "small");
            }
        }

        PhotoFigures.OfSet(html, model);
        Assumptions(html, model);
    }

    private static void Table(HtmlWriter html, SurveyPart part) => html.In("table", "tight survey", table => table
        .Own("<thead><tr><th>Datum</th><th>Value</th><th>From</th><th>As written, and notes</th></tr></thead>\n")
        .In("tbody", null, body =>
        {
            foreach (var row in part.Rows)
            {
                body.In("tr", null, tr => tr
                    .Element("td", row.Name).Element("td", row.Value).Element("td", From(row.From), "keep")
                    .Element("td", string.Join("; ", ((string?[])[row.AsWritten is { } written ? $"written {written}" : null, row.Note]).Where(t => t is not null))));
            }
        }));

    private static void Assumptions(HtmlWriter html, HandoverModel model)
    {
        html.Element("h3", "Taken for granted, because nobody said it");
        if (model.Checks.Assumptions.Count == 0)
        {
            html.Element("p", "Nothing.");
            return;
        }

        html.In("table", "tight assumed", table => table
            .Own("<thead><tr><th>What</th><th>Value</th><th>Source</th></tr></thead>\n")
            .In("tbody", null, body =>
            {
                foreach (var assumption in model.Checks.Assumptions)
                {
                    body.In("tr", null, row => row.Element("td", assumption.What).Element("td", assumption.Value).Element("td", assumption.FromMemory ? $"{assumption.Source} (from memory)" : assumption.Source));
                }
            }));
    }

    private static string From(Provenance from) => from is Provenance.Unstated ? "–" : from.ToString().ToLowerInvariant();
}
