using System.Text.RegularExpressions;
using Runup.Profiles;

namespace Runup.Files.Listings;

/// <summary>What a table's own legend says of its marks for access: <c>RW = any time; X = drive stopped</c>, above or beneath the table.</summary>
internal sealed partial class AccessLegend
{
    private const int LongestMark = 4;

    private readonly Dictionary<string, ParameterAccess> marks = new(StringComparer.Ordinal);

    /// <summary>The legend of the marks that stand in the columns of access; empty where the table explains none of them.</summary>
    internal static AccessLegend Of(ListingGrid grid, Columns columns)
    {
        var legend = new AccessLegend();
        var places = columns.All(ColumnRole.Access).Concat(columns.All(ColumnRole.WhileRunning)).ToList();
        var used = grid.Rows.SelectMany(r => places.Select(p => r[p])).Where(c => c.Length is > 0 and <= LongestMark).ToHashSet(StringComparer.Ordinal);
        foreach (var text in grid.Rows.Where(r => used.Count > 0 && r.Filled.Count is 1 or 2 or 3).SelectMany(r => r.Filled.Select(c => r[c])))
        {
            var running = Running().IsMatch(text);
            foreach (var pair in Pair().Matches(text).Where(m => used.Contains(m.Groups["mark"].Value)))
            {
                if (Meaning(pair.Groups["meaning"].Value, running) is { } access)
                {
                    legend.marks.TryAdd(pair.Groups["mark"].Value, access);
                }
            }
        }

        // One explained mark is more likely a choice or a remark.
        return legend.marks.Count >= 2 ? legend : new AccessLegend();
    }

    /// <summary>Whether a text explains marks of access, and is no row.</summary>
    internal static bool Explains(string text) => Pair().Matches(text).Count(m => Meaning(m.Groups["meaning"].Value, Running().IsMatch(text)) is not null) >= 2;

    /// <summary>What a mark stands for; null where the legend does not say.</summary>
    internal ParameterAccess? Find(string mark) => marks.TryGetValue(mark.Trim(), out var access) ? access : null;

    private static ParameterAccess? Meaning(string text, bool running)
    {
        var plain = text.Trim().TrimEnd('.', ')').Trim();
        return Reading().IsMatch(plain) ? ParameterAccess.ReadOnly
            : Stopped().IsMatch(plain) ? ParameterAccess.StoppedOnly
            : Running().IsMatch(plain) || Always().IsMatch(plain) ? ParameterAccess.AnyTime
            : AccessCell.Read(plain, running);
    }

    [GeneratedRegex(@"(?<![\w])(?<mark>[A-Za-z]{1,4}(?:/[A-Za-z]{1,3})?|[^\w\s=:;,.()\[\]])\s*[=:]\s*(?<meaning>[^;=]+?)(?=$|;|,\s*\S{1,4}\s*[=:]|\s{2,}\S{1,4}\s*[=:])", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Pair();

    [GeneratedRegex(@"\b(?:running|run|operation|operating|while the motor turns)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase, 1000)]
    private static partial Regex Running();

    [GeneratedRegex(@"\b(?:any ?time|always|at all times|freely)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase, 1000)]
    private static partial Regex Always();

    [GeneratedRegex(@"\b(?:stop|stopped|standstill|at rest|not|cannot|can't|only when off|no change)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase, 1000)]
    private static partial Regex Stopped();

    [GeneratedRegex(@"\b(?:read[ -]?only|display only|only display|only read|reading|detected|measured|monitor|actual|look only)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase, 1000)]
    private static partial Regex Reading();
}
