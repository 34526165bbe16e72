using System.Globalization;
using Runup.Commissioning.Handover;
using Runup.Commissioning.Records;
using Runup.Reports.Html;
using Runup.Reports.Plots;

namespace Runup.Reports.Handover;

/// <summary>The steps of the first run, each reading beside what was expected, and the starts over their predictions.</summary>
internal static class FirstRunSection
{
    // So many are kept on one page.
    private const int FewReadings = 12;

    public static void Write(HtmlWriter html, HandoverModel model)
    {
        html.Element("h2", "3 First run");
        if (model.Steps.Count == 0)
        {
            html.Element("p", "None is on record.");
            return;
        }

        html.Element("p", "Expected values are estimates from the plate and the survey; a reading is within when it lies between the lowest and the highest accepted. In tables across frequencies only readings outside are marked.", "small head");
        foreach (var step in model.Steps)
        {
            Step(html, step, model);
        }
    }

    private static void Step(HtmlWriter html, StepStory step, HandoverModel model) => html.In("section", "step", section =>
    {
        section.In("div", step.Readings.Count <= FewReadings ? "whole" : null, box =>
        {
            box.In("div", "whole head", head => Head(head, step));
            if (step.Readings.Count > 0)
            {
                Readings(box, step, model);
            }
        });
        if (TrendPlot.Of(step, model) is { } plot)
        {
            section.In("figure", null, figure => figure.Own(SvgPlot.Write(plot)).Element("figcaption", $"{plot.Title} Its stop may begin at another second than the one that was given: compare slopes and heights."));
        }
    });

    private static void Head(HtmlWriter html, StepStory step)
    {
        html.In("h3", null, title => title.Outcome(step).Text($" {step.Title}"));
        if (step.Attempts > 0)
        {
            html.Element("p", $"Begun {Numbers.Of(step.Begun)}{Again(step)}{(step.RunBy is { } by ? $", run by {by}" : string.Empty)}", "small");
            if (step.Typed is { } typed)
            {
                html.Element("p", typed, "small");
            }
        }

        if (step.Ended?.Remark is { } remark)
        {
            html.Element("p", remark);
        }
    }

    private static void Readings(HtmlWriter html, StepStory step, HandoverModel model)
    {
        if (ReadingMatrix.Of(step.Readings) is { } matrix)
        {
            matrix.Write(html, model.RatedCurrent);
            return;
        }

        html.In("table", null, table => table
            .Own("<thead><tr><th>Reading</th><th class=\"n\">Measured</th><th></th><th class=\"n\">Expected</th><th>Accepted</th></tr></thead>\n")
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
        .In("td", "n cell", cell =>
        {
            cell.Element("b", Numbers.Of(reading.Measured, reading.Unit));
            if (Numbers.PercentOf(reading.Measured, reading.Unit, model.RatedCurrent) is { } part)
            {
                cell.Element("small", $"{part} of rated");
            }
        })
        .In("td", null, cell => cell.Within(reading.Within))
        .Element("td", Numbers.Of(reading.Expected, reading.Unit), "n")
        .Element("td", Numbers.Between(reading.Low, reading.High, reading.Unit) ?? "–");

    private static string Again(StepStory step) => step.Attempts > 1 ? string.Create(CultureInfo.InvariantCulture, $", attempt {step.Attempts}") : string.Empty;
}
