using System.Globalization;
using Runup.Cli.Terminal;
using Runup.Commissioning.Handover;

namespace Runup.Cli.Handover;

/// <summary>What a handover says, in short, for a person at a terminal and for a program.</summary>
internal static class HandoverPage
{
    internal static void Write(Page page, HandoverFiles files)
    {
        page.Table([new("stage"), new("state"), new("", Whole: false)], files.Model.Stages.Select(s => (IReadOnlyList<string>)[s.Stage, Word(s.State), s.Words]));
        page.Line(files.Model.Open.Count == 0 ? "No open restrictions are known." : string.Create(CultureInfo.InvariantCulture, $"Open restrictions: {files.Model.Open.Count}"));
        foreach (var (point, number) in files.Model.Open.Select((p, i) => (p, i + 1)))
        {
            page.Line(string.Create(CultureInfo.InvariantCulture, $"  {number}. {point.Subject}. {point.Words}"));
        }

        page.Line($"Report: {files.Report}");
        page.Line(files.Restore is { } restore ? $"Restore file: {restore}" : "No restore file: nothing was read of the drive.");
        page.Line($"Label for the panel's door: {files.Label}");
    }

    internal static void WriteJson(HandoverFiles files, HandoverPdf pdf) => JsonOut.Write(json =>
    {
        json.WriteStartObject();
        json.WriteString("tag", files.Model.Tag);
        json.WriteString("report", files.Report);
        json.WriteString("pdf", pdf.File);
        json.WriteString("why_no_pdf", pdf.WhyNot);
        json.WriteString("restore", files.Restore);
        json.WriteString("label", files.Label);
        json.WriteString("chain_head", files.Model.Story.Head?.Hash);
        json.Array("open", files.Model.Open, (j, point) =>
        {
            j.WriteStartObject();
            j.WriteString("subject", point.Subject);
            j.WriteString("words", point.Words);
            j.WriteEndObject();
        });
        json.WriteEndObject();
    });

    internal static string Word(StageState state) => state switch
    {
        StageState.Done => "DONE",
        StageState.Open => "OPEN POINTS",
        StageState.NotDone => "NOT DONE",
        StageState.HeldUp => "HELD UP",
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, null),
    };
}
