using System.Text.Json;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;
using Runup.Engineering;

namespace Runup.Cli.Checks;

/// <summary>Verdict, counts, findings, what is undecided and what was assumed.</summary>
internal static class FindingsJson
{
    internal static void Verdict(Utf8JsonWriter json, CheckReport report)
    {
        json.Object("verdict", () =>
        {
            json.WriteBoolean("may_be_entered", report.Verdict.MayBeEntered);
            json.WriteBoolean("may_be_bumped", report.Verdict.MayBeBumped);
            json.WriteBoolean("may_run_coupled", report.Verdict.MayRunCoupled);
            json.Array("blocked_by", report.Verdict.BlockedBy, (j, id) => j.WriteStringValue(id));
        });
        json.Object("counts", () =>
        {
            json.WriteNumber("satisfied", report.SatisfiedCount);
            json.WriteNumber("violated", report.Findings.Count);
            json.WriteNumber("undecided", report.Undecided.Count);
        });
    }

    internal static void Findings(Utf8JsonWriter json, CheckReport report)
    {
        json.Array("findings", report.Findings, Finding);
        json.Array("undecided", report.Undecided, (j, undecided) =>
        {
            j.WriteStartObject();
            j.WriteString("id", undecided.Id);
            j.WriteString("missing", undecided.Missing);
            j.WriteString("would_change", undecided.WouldChange);
            j.WriteEndObject();
        });
        Assumptions(json, report.Assumptions);
    }

    internal static void Assumptions(Utf8JsonWriter json, IEnumerable<Assumption> assumptions) =>
        json.Array("assumptions", assumptions, (j, assumption) =>
        {
            j.WriteStartObject();
            j.WriteString("what", assumption.What);
            j.WriteString("value", assumption.Value);
            j.WriteString("source", assumption.Source);
            j.WriteEndObject();
        });

    private static void Finding(Utf8JsonWriter json, CheckResult.Violated finding)
    {
        json.WriteStartObject();
        json.WriteString("id", finding.Id);
        json.WriteString("severity", finding.Severity.Word());
        json.WriteString("title", finding.Title);
        json.WriteString("explanation", finding.Explanation);
        json.Number("value", finding.Value);
        json.Number("limit", finding.Limit);
        json.WriteString("unit", finding.Unit);
        json.WriteString("source", finding.Basis.Text);
        json.WriteBoolean("from_memory", finding.Basis.FromMemory);
        json.WriteString("remedy", finding.Remedy);
        json.WriteEndObject();
    }
}
