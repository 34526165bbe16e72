using System.Text.RegularExpressions;
using Runup.Profiles;

namespace Runup.Files.Listings;

/// <summary>The marks of a column that says whether a parameter may be written while the motor runs: most ask whether it may, some whether it may not.</summary>
/// <param name="AsksForLock">Whether the heading asks for the lock, such as <c>Locked in run</c>: yes is then no.</param>
/// <param name="HasWords">Whether yes and no are written out, so that a dash says neither.</param>
internal sealed partial record RunningMarks(bool AsksForLock, bool HasWords)
{
    internal static RunningMarks Of(ListingGrid grid, Columns columns)
    {
        var column = columns.Of(ColumnRole.WhileRunning);
        return column < 0 ? new RunningMarks(false, false) : new RunningMarks(Lock().IsMatch(columns.Titles[column]), grid.Rows.Any(r => r[column].ToUpperInvariant() is "NO" or "N"));
    }

    /// <summary>What a mark says; null where it says nothing.</summary>
    internal ParameterAccess? Read(string mark)
    {
        if (HasWords && mark.Trim() is "-" or "–" or "—")
        {
            return null;
        }

        return (AccessCell.Read(mark, whileRunning: true), AsksForLock) switch
        {
            (ParameterAccess.AnyTime, true) => ParameterAccess.StoppedOnly,
            (ParameterAccess.StoppedOnly, true) => ParameterAccess.AnyTime,
            var (access, _) => access,
        };
    }

    [GeneratedRegex(@"\b(?:lock(?:ed|ing)?|block(?:ed)?|barred|protect(?:ed)?|not|no change|inhibit(?:ed)?|fixed|stop(?:ped)?|standstill|at rest)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase, 1000)]
    private static partial Regex Lock();
}
