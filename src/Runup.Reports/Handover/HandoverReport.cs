using Runup.Commissioning.Handover;
using Runup.Reports.Html;

namespace Runup.Reports.Handover;

/// <summary>A handover as one HTML file that needs nothing else, neither network nor script, for screen and paper.</summary>
public static class HandoverReport
{
    /// <summary>The page; the same model gives the same page, byte for byte.</summary>
    /// <param name="model">What it says.</param>
    /// <param name="paper">What it is printed on.</param>
    public static string Write(HandoverModel model, Paper paper = Paper.A4)
    {
        ArgumentNullException.ThrowIfNull(model);
        return HtmlPage.Write(
            $"Handover {model.Tag}",
            HtmlPage.Style("handover.css") + HtmlPage.Paper($"size: {(paper == Paper.Letter ? "letter" : "A4")}; margin: 14mm 13mm 17mm;", $"{model.Tag} handover, {Numbers.Of(model.WrittenAt)}"),
            body => Body(body, model));
    }

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
        LabelSection.Write(html, model);
    }
}
