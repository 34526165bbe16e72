using Runup.Profiles;

namespace Runup.Files.Profiles;

/// <summary>Puts what the lint finds at its line in the file.</summary>
internal static class LintPlaces
{
    internal static void Report(IEnumerable<LintFinding> findings, ParameterRows rows, Problems problems, Problems? cautions)
    {
        foreach (var finding in findings)
        {
            var into = finding.Severity == LintSeverity.Error ? problems : cautions;
            if (into is null)
            {
                continue;
            }

            if (finding.Parameter is null || rows.Row(finding.Parameter) is not { } row)
            {
                into.AddForFile(finding.Found, finding.WouldDo);
                continue;
            }

            var node = finding.Key is null ? null : row.Map.Find(finding.Key);
            into.Add(node?.Place ?? row.Map.Place, $"parameter {finding.Parameter}{(finding.Key is null ? "" : "." + finding.Key)}", finding.Found, finding.WouldDo);
        }
    }
}
