using System.Globalization;
using Runup.Commissioning.Handover;
using Runup.Commissioning.Records;
using Runup.Reports.Html;
using Runup.Reports.Plots;

namespace Runup.Reports.Handover;

/// <summary>The steps of the first run, each reading beside what was expected, and the starts over their predictions.</summary>
internal static class FirstRunSection
{
    public static void Write(HtmlWriter html, HandoverModel model)
    {
        html.Element("h2", "3 First run");
        if (model.Steps.Count == 0)
        {
            html.Element("p", "None is on record.");
            return;
        }

        html.Element("p", "Expected values are estimates from the plate and the survey; a reading is within when it lies between the lowest and the highest accepted.", "small");
        foreach (var step in model.Steps)
        {
            Step(html, step, model);
        }
    }

    private static void Step(HtmlWriter html, StepStory step, HandoverModel model) => html.In("section", "step", section =>
    {
        section.In("div", "whole", head =>
        {
            head.In("h3", null, title => title.Outcome(step).Text($" {step.Title}"));
            if (step.Attempts > 0)
            {
                head.Element("p", $"{step.Step}, begun {Numbers.Of(step.Begun)}{Again(step)}", "small");
            }

            if (step.Ended?.Remark is { } remark)
            {
                head.Element("p", remark);
            }
        });
        if (step.Readings.Count > 0)
        {
            Readings(section, step, model);
        }

        if (TrendPlot.Of(step, model) is { } plot)
        {
            section.In("figure", null, figure => figure.Own(SvgPlot.Write(plot)).Element("figcaption", plot.Title));
        }
    });

    private static void Readings(HtmlWriter html, StepStory step, HandoverModel model)
    {
        if (ReadingMatrix.Of(step.Readings) is { } matrix)
        {
            matrix.Write(html, model.RatedCurrent);
            return;
        }

        html.In("table", null, table => table
            .Own("<thead><tr><th>Reading</th><th class=\"n\">Expected</th><th>Accepted</th><th class=\"n\">Measured</th><th></th></tr></thead>\n")
            .In("tbody", null, body =>
            {
                foreach (var reading in step.Readings)
                {
                    body.In("tr", null, row => Reading(row, reading, model));
                }
            }));
    }

    private static void Reading(HtmlWriter row, RecordBody.ReadingTaken reading, HandoverModel model) => row
        .Element("td", reading.Quantity)
        .Element("td", Numbers.Of(reading.Expected, reading.Unit), "n")
        .Element("td", Numbers.Between(reading.Low, reading.High, reading.Unit) ?? "–")
        .In("td", "n cell", cell =>
        {
            cell.Element("b", Numbers.Of(reading.Measured, reading.Unit));
            if (Numbers.OfRated(reading.Measured, reading.Unit, model.RatedCurrent) is { } part)
            {
                cell.Element("small", part);
            }
        })
        .In("td", null, cell => cell.Within(reading.Within));

    private static string Again(StepStory step) => step.Attempts > 1 ? string.Create(CultureInfo.InvariantCulture, $", attempt {step.Attempts}") : string.Empty;
}
