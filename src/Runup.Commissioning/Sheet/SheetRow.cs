using Runup.Commissioning.Plan;
using Runup.Profiles;

namespace Runup.Commissioning.Sheet;

/// <summary>A line of the sheet with what the plan says of it.</summary>
/// <param name="Line">The line: parameter, value, display.</param>
/// <param name="Rank">How much it matters; null for a parameter that the plan leaves alone.</param>
/// <param name="Reason">Why this value; null as before.</param>
public sealed record SheetRow(SheetLine Line, Rank? Rank, string? Reason);

/// <summary>A set's settings in its drive's own parameters, in the order of entry, each with its reason.</summary>
public static class JobSheet
{
    /// <summary>The sheet of a plan, numbered from 1.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="profile">The drive's profile.</param>
    /// <param name="size">Its size.</param>
    /// <param name="before">What the values are worked out from: those of the factory.</param>
    /// <param name="extent">How much of it.</param>
    /// <param name="found">What the display shows before, where that was read.</param>
    public static IReadOnlyList<SheetRow> For(SettingsPlan plan, DriveProfile profile, DriveSize size, ParameterValues before, SheetExtent extent = SheetExtent.Decided, ParameterValues? found = null)
    {
        var lines = extent is SheetExtent.Everything
            ? Profiles.Sheet.Whole(profile, size, plan.Values, before, found)
            : Profiles.Sheet.For(profile, size, plan.Values, before, found);
        var rows = lines.Select(line => Row(line, plan));
        return [.. extent is SheetExtent.Must ? rows.Where(r => r.Rank is Rank.Must).Select(Renumbered) : rows];
    }

    // A gap in the numbers would look like a line that was lost.
    private static SheetRow Renumbered(SheetRow row, int place) => row with { Line = row.Line with { Order = place + 1 } };

    private static SheetRow Row(SheetLine line, SettingsPlan plan)
    {
        var planned = line.Settings.Select(setting => plan[setting]).OfType<PlannedSetting>().ToList();
        if (planned.Count == 0)
        {
            return new(line, null, line.Note);
        }

        // That there is no parameter is what such a line stands for.
        var reasons = planned.Select(p => p.Reason).Append(line.Parameter is null ? null : line.Note).OfType<string>().Distinct(StringComparer.Ordinal);
        return new(line, planned.Min(p => p.Rank), string.Join("; ", reasons));
    }
}
