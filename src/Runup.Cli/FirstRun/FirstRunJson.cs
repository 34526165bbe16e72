using Runup.Cli.Terminal;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Handover;

namespace Runup.Cli.FirstRun;

/// <summary>What a first run came to, as JSON: each step of the plan with its last attempt.</summary>
internal static class FirstRunJson
{
    internal static void Write(string tag, FirstRunPlan plan, FirstRunReport report, RecordStory story) => JsonOut.Write(json =>
    {
        json.WriteStartObject();
        json.WriteString("tag", tag);
        json.WriteString("own_control_only", plan.OwnControlOnly);
        json.WriteBoolean("finished", report.Ending is FirstRunEnding.Finished);
        json.WriteString("why_not_finished", FirstRunPage.WhyNotFinished(report));
        json.WriteString("run_source", report.RunSource);
        json.Array("steps", FirstRunPage.StoriesOf(plan, story), (j, s) =>
        {
            j.WriteStartObject();
            j.WriteString("step", s.Step.Id);
            j.WriteString("title", s.Step.Title);
            j.WriteString("outcome", s.Story?.Ended?.Outcome);
            j.WriteString("remark", s.Story?.Ended?.Remark);
            j.WriteNumber("attempts", s.Story?.Attempts ?? 0);
            j.WriteString("run_by", s.Story?.RunBy);
            j.Array("readings", s.Story?.Readings ?? [], (r, reading) =>
            {
                r.WriteStartObject();
                r.WriteString("quantity", reading.Quantity);
                r.WriteString("unit", reading.Unit);
                r.Number("expected", reading.Expected);
                r.Number("low", reading.Low);
                r.Number("high", reading.High);
                r.Number("measured", reading.Measured);
                if (reading.Within is { } within)
                {
                    r.WriteBoolean("within", within);
                }
                else
                {
                    r.WriteNull("within");
                }

                r.WriteString("typed_by", reading.TypedBy);
                r.WriteString("read_from", reading.ReadFrom);
                r.WriteEndObject();
            });
            j.WriteEndObject();
        });
        json.WriteEndObject();
    });
}
