using System.Globalization;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Handover;
using Runup.Reports.Html;

namespace Runup.Reports.Handover;

/// <summary>The first page: what set, what is done, what is open, what can hurt.</summary>
internal static class GlanceSection
{
    public static void Write(HtmlWriter html, HandoverModel model)
    {
        html.In("header", null, header => header
            .Element("p", "Handover of a drive set", "kind")
            .Element("h1", model.Tag)
            .Element("p", model.Title ?? "(no title in the job file)", "what")
            .Element("p", $"Written {Numbers.Of(model.WrittenAt)} by {model.WrittenBy}", "small"));
        Stages(html, model);
        Open(html, model);
        Facts(html, model);
        Cautions(html, model);
    }

    private static void Stages(HtmlWriter html, HandoverModel model) => html.In("table", "glance", table => table.In("tbody", null, body =>
    {
        foreach (var fact in model.Stages)
        {
            body.In("tr", null, row => row.Element("th", fact.Stage).In("td", null, cell => cell.State(fact.State)).Element("td", fact.Words));
        }
    }));

    private static void Open(HtmlWriter html, HandoverModel model) => html.In("section", "open", section =>
    {
        if (model.Open.Count == 0)
        {
            section.Element("h3", "No open restrictions are known").Element("p", "That is: none was found by the checks made and the steps done, which are listed below.");
            return;
        }

        section.Element("h3", string.Create(CultureInfo.InvariantCulture, $"Open restrictions: {model.Open.Count}")).In("ol", null, list =>
        {
            foreach (var point in model.Open)
            {
                list.In("li", null, item => item.Element("b", $"{point.Subject}.").Text($" {point.Words}"));
            }
        });
    });

    private static void Facts(HtmlWriter html, HandoverModel model) => html.In("table", "facts whole", table => table.In("tbody", null, body =>
    {
        foreach (var (name, value) in model.Facts)
        {
            body.In("tr", null, row => row.Element("th", name).Element("td", value));
        }
    }));

    private static void Cautions(HtmlWriter html, HandoverModel model) => html
        .Element("h2", "1 Cautions")
        .In("dl", "cautions", list =>
        {
            foreach (var caution in model.Cautions)
            {
                list.In("div", null, pair => pair.Element("dt", caution.Title).Element("dd", caution.Words));
            }
        })
        .Element("p", SafetyWords.WhoDecides, "decides");
}
