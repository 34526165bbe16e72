using Runup.Settings;

namespace Runup.Commissioning.Plan;

/// <summary>A make-independent setting that the job decides.</summary>
/// <param name="Setting">The setting.</param>
/// <param name="Value">Its value, in SI.</param>
/// <param name="Rank">How much it matters.</param>
/// <param name="Reason">Why this value: the formula with its numbers.</param>
/// <param name="Source">Where the value or the formula comes from.</param>
/// <param name="Low">Lowest value that would still do, in SI; null where there is none.</param>
/// <param name="High">Highest value that would still do, in SI; null where there is none.</param>
public sealed record PlannedSetting(
    Setting Setting,
    SettingValue Value,
    Rank Rank,
    string Reason,
    string Source,
    double? Low = null,
    double? High = null);
