using Runup.Cli.Terminal;
using Runup.Commissioning.Entry;

namespace Runup.Cli.Entry;

/// <summary>What an entry came to, as JSON: numbers of parameters, and each that is not proved by name.</summary>
internal static class EntryJson
{
    internal static void Write(EntryReport report, bool byHand) => JsonOut.Write(json =>
    {
        json.WriteStartObject();
        json.WriteNumber("written", report.Written.Count);
        json.WriteNumber("written_before_cut", report.WrittenBefore.Count);
        json.WriteNumber("verified", report.Verified.Count);
        json.WriteNumber("verified_by_eye", report.VerifiedByEye.Count);
        json.WriteNumber("skipped", report.Skipped.Count);
        json.Array("failed", report.Failed, (j, failed) =>
        {
            j.WriteStartObject();
            j.WriteString("parameter", failed.Parameter);
            j.WriteString("outcome", failed.Outcome.Name);
            j.WriteString("why", failed.Outcome.Why);
            j.WriteEndObject();
        });
        json.WriteBoolean("resumed", report.Resumed is not null);
        json.Array("verified_before_cut", report.Resumed?.Verified ?? [], (j, number) => j.WriteStringValue(number));
        json.WriteString("under_way_at_cut", report.Resumed?.UnderWay);
        json.Array("left_to_person", report.Left, (j, left) =>
        {
            j.WriteStartObject();
            j.WriteString("parameter", left.Parameter);
            j.WriteString("why", left.Why);
            j.WriteEndObject();
        });
        json.WriteBoolean("proved_after_power_cycle", report.PowerCycle == PowerCycleProof.Proved);
        json.WriteBoolean("seen_after_power_cycle", report.PowerCycle == PowerCycleProof.SeenByEye);
        json.WriteBoolean("by_hand", byHand);
        json.WriteString("why_not_finished", EntryPage.WhyNotFinished(report));
        json.WriteString("run_source", report.RunSource);
        json.WriteEndObject();
    });
}
