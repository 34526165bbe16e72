using System.Globalization;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Checks;
using Runup.Commissioning.Plan;
using Runup.Dynamics;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Cli.Demo;

/// <summary>What the demo shows of plan, rehearsal, checks and steps: enough to see each once.</summary>
internal static class DemoPages
{
    internal static void Plan(Page page, SettingsPlan plan, IReadOnlyList<SheetLine> lines)
    {
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

    internal static string Rehearsal(LoadedJob job, RehearsalResult result) => string.Create(
        CultureInfo.InvariantCulture,
        $"0 to {job.Job.Operation.MaximumFrequency.Value.Hertz:0.#} Hz in {result.TimeToSpeedS:0.0} s, stop in {result.TimeToStopS:0.0} s; highest current {result.PeakCurrentA:0.0} A (the motor is rated {job.Job.Motor.Plate.Current.Value.Amperes:0.0} A), highest DC bus {result.PeakDcBusV:0} V; {(result.Tripped is { } cause ? $"TRIPS on {cause.Name()}" : "no trip")}");

    internal static string Counts(CheckReport report) => string.Create(
        CultureInfo.InvariantCulture, $"{report.SatisfiedCount} without objection, {report.Findings.Count} with a finding, {report.Undecided.Count} undecided");
}
