using System.Globalization;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Plan;
using Runup.Dynamics;
using Runup.Profiles;

namespace Runup.Cli.Demo;

/// <summary>What the demo shows of plan, sheet and rehearsal: enough to see each once.</summary>
internal static class DemoPages
{
    internal static void Plan(Page page, LoadedJob job, SettingsPlan plan, IReadOnlyList<SheetLine> lines)
    {
        page.Heading($"3. Settings with their reasons, in {job.Profile.Title}'s own numbers, in order of entry");
        page.Table(
            [new("no."), new("name"), new("shows", Digits: true), new("unit"), new("says"), new("reason", Whole: false)],
            from line in lines
            where line.Parameter is not null && line.Changed
            let setting = plan[line.Settings[0]]
            select (IReadOnlyList<string>)
            [
                line.Parameter!.Number,
                line.Parameter.Name,
                line.Display ?? "",
                line.Unit ?? "",
                line.Settings[0].Name,
                setting?.Reason ?? "",
            ]);
        page.Line($"{plan.Lines.Count} settings are decided by the job; those that the drive holds from the factory are not shown.");
    }

    internal static void Rehearsal(Page page, RehearsalResult result)
    {
        page.Heading("Rehearsed before power (an estimate, never a permission)");
        page.Line(string.Create(CultureInfo.InvariantCulture, $"0 to highest frequency in {result.TimeToSpeedS:0.0} s, stop in {result.TimeToStopS:0.0} s; highest current {result.PeakCurrentA:0.0} A, highest DC bus {result.PeakDcBusV:0} V; {(result.Tripped is { } cause ? $"TRIPS on {cause}" : "no trip")}."));
    }
}
