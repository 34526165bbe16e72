using Runup.Settings;

namespace Runup.Commissioning.Plan;

/// <summary>Gathers the lines of a plan in the order in which they are thought of.</summary>
internal sealed class PlanBuilder
{
    internal const string PlateSource = "motor plate, IEC 60034-1";
    internal const string JobSource = "job file";
    internal const string Practice = "common practice, no source";

    private readonly List<PlannedSetting> lines = [];

    internal IReadOnlyList<PlannedSetting> Lines => lines;

    internal void Number(Setting setting, double si, Rank rank, string reason, string source, double? low = null, double? high = null)
    {
        if (double.IsFinite(si))
        {
            lines.Add(new(setting, new SettingValue.Number(si), rank, reason, source, low, high));
        }
    }

    internal void Choice(Setting setting, string choice, Rank rank, string reason, string source) =>
        lines.Add(new(setting, new SettingValue.Choice(choice), rank, reason, source));
}
