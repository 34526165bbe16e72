using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Entry.ByHand;

/// <summary>Which parameters a person reads from the display before anything is entered.</summary>
public static class ToLookAt
{
    /// <summary>
    /// What the sheet sets, what chooses the units of others, what can make the motor start by itself, and a lock: first what
    /// chooses units, since the digits of others can't be read without it, then in the make's menu order.
    /// </summary>
    /// <param name="profile">The drive's profile.</param>
    /// <param name="sheet">What is to be entered.</param>
    /// <param name="all">Every parameter that a record keeps.</param>
    public static IReadOnlyList<Parameter> Of(DriveProfile profile, EntrySheet sheet, bool all)
    {
        ArgumentNullException.ThrowIfNull(profile);
        var entered = sheet.Lines.Select(l => l.Number).ToHashSet(StringComparer.Ordinal);
        return [.. profile.Parameters.Where(p => p.IsKept && (all || entered.Contains(p.Number) || Matters(profile, p))).OrderBy(p => EntryOrder.ChoosesUnits(profile, p) ? 0 : 1)];
    }

    private static bool Matters(DriveProfile profile, Parameter parameter) =>
        EntryOrder.ChoosesUnits(profile, parameter) || EntryOrder.CanStartMotor(parameter) || parameter.Meaning?.Settings.Contains(Setting.ParameterLock) == true;
}
