using Runup.Commissioning.Handover;
using Runup.Reports.Html;

namespace Runup.Reports.Handover;

/// <summary>A handover as one HTML file that needs nothing else, neither network nor script, for screen and paper.</summary>
public static class HandoverReport
{
    /// <summary>The page; the same model gives the same page, byte for byte.</summary>
    public static string Write(HandoverModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        var html = new HtmlWriter();
        html.Own("<!DOCTYPE html>\n<html lang=\"en\">\n")
            .In("head", null, head => Head(head, model))
            .In("body", null, body => Body(body, model))
            .Own("</html>\n");
        return html.ToString();
    }

    private static void Head(HtmlWriter html, HandoverModel model) => html
        .Own("<meta charset=\"utf-8\"/>\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n")
        .Own("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; img-src data:\"/>\n")
        .Element("title", $"Handover {model.Tag}")
        .Own($"<style>\n{Style()}{Foot(model)}</style>\n");

    private static void Body(HtmlWriter html, HandoverModel model)
    {
        GlanceSection.Write(html, model);
        FindingsSection.Write(html, model);
        FirstRunSection.Write(html, model);
        ParametersSection.Write(html, model);
        SettingsSection.Write(html, model);
        CurvesSection.Write(html, model);
        SurveySection.Write(html, model);
        RecordSection.Write(html, model);
        ProgrammersSection.Write(html, model);
        ParametersSection.WriteUntouched(html, model);
    }

    // On paper each sheet names its set, so that sheets that were parted find one another.
    private static string Foot(HandoverModel model) =>
        $"@page {{ margin: 14mm 13mm 17mm; @bottom-left {{ content: \"{Escape.Css(model.Tag)} handover, {Escape.Css(Numbers.Of(model.WrittenAt))}\"; font: 8pt -apple-system, \"Segoe UI\", \"Liberation Sans\", Arial, sans-serif; color: #555; }} @bottom-right {{ content: \"page \" counter(page) \" of \" counter(pages); font: 8pt -apple-system, \"Segoe UI\", \"Liberation Sans\", Arial, sans-serif; color: #555; }} }}\n";

    private static string Style()
    {
        using var stream = typeof(HandoverReport).Assembly.GetManifestResourceStream("handover.css")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
