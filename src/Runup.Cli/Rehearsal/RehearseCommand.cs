using System.ComponentModel;
using System.Globalization;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Rehearsal;
using Runup.Dynamics;
using Runup.Quantities;
using Runup.Engineering.Motors.Ensemble;
using Runup.Settings;
using Spectre.Console.Cli;

namespace Runup.Cli.Rehearsal;

/// <summary><c>runup rehearse JOB</c>: simulates start, run and stop with the settings as the drive will hold them.</summary>
internal sealed class RehearseCommand : Command<RehearseCommand.Settings>
{
    public override int Execute(Spectre.Console.Cli.CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var job = LoadedJob.From(settings.Job);
        var plan = SettingsPlan.For(job.Context);
        var result = Result(job, JobRehearsal.Of(job.Context, plan, job.Profile, job.Size, settings.Gap, cancellation: cancellationToken));
        var ensemble = settings.Ensemble ? Ensemble(job, plan, result, cancellationToken) : null;
        if (settings.Plot is { } plot)
        {
            File.WriteAllText(plot, RehearsalPlot.Svg(result, ensemble, job));
        }

        if (settings.Json)
        {
            Write(result, ensemble);
        }
        else
        {
            Show(job, result, ensemble, settings.Plot);
        }

        return (int)(result.Tripped is null && result.Breakdown is null ? ExitStatus.Fine : ExitStatus.Blocked);
    }

    internal static RehearsalResult Result(LoadedJob job, RehearsalOutcome? outcome) => outcome switch
    {
        RehearsalOutcome.Ran ran => ran.Result,
        RehearsalOutcome.Refused refused => throw new Complaint(ExitStatus.BadInput, refused.Problems.Select(p => $"{job.Path}:1:1 (file): can't be rehearsed: {p}; `runup check {job.Path}` says what would do")),
        null => throw new Complaint(ExitStatus.BadInput, $"{job.Path}:1:1 (file): can't be rehearsed: no induction motor fits the plate, or the load's torque is not known; `runup check {job.Path}` says why"),
        _ => throw new InvalidOperationException("The set of outcomes is closed."),
    };

    private static EnsembleResult Ensemble(LoadedJob job, SettingsPlan plan, RehearsalResult middle, CancellationToken cancellation)
    {
        using var progress = WorkProgress.Of($"{job.Job.Tag}, {MotorEnsemble.DefaultSize} motors");
        return JobEnsembleRehearsal.Of(job.Context, plan, job.Profile, job.Size, middle, MotorEnsemble.DefaultSize, progress, cancellation)?.Ensemble
            ?? throw new Complaint(ExitStatus.BadInput, $"{job.Path}:1:1 (file): no ensemble of motors fits the plate; `runup rehearse {job.Path}` without --ensemble would do");
    }

    private static void Write(RehearsalResult result, EnsembleResult? ensemble) => JsonOut.Write(json =>
    {
        json.WriteStartObject();
        json.Array("events", result.Events, (j, e) =>
        {
            j.WriteStartObject();
            j.Number("t_s", e.TimeS);
            j.WriteString("what", e.What.Name());
            j.WriteEndObject();
        });
        json.Number("peak_current_A", result.PeakCurrentA);
        json.Number("peak_current_t_s", result.PeakCurrentAtS);
        json.Number("largest_mean_current_A", result.LargestMeanCurrentA);
        json.Number("peak_dc_bus_V", result.PeakDcBusV);
        json.Number("time_to_speed_s", result.TimeToSpeedS);
        json.Number("time_to_stop_s", result.TimeToStopS);
        json.WriteString("tripped", result.Tripped?.Name());
        json.WriteString("broke_down", result.Breakdown?.ToString());
        if (ensemble is not null)
        {
            EnsemblePage.Write(json, ensemble);
        }

        json.WriteEndObject();
    });

    private static void Show(LoadedJob job, RehearsalResult result, EnsembleResult? ensemble, string? plot)
    {
        var page = new Page(Console.Out);
        page.Heading($"{job.Job.Tag}: start to the highest frequency and stop{(JobRehearsal.GoesBothWays(job.Context) ? ", lifting and then lowering" : "")}, rehearsed");
        page.Table(
            [new(""), new("", Digits: true), new("")],
            [
                ["from 0 to highest frequency", Text(result.TimeToSpeedS), "s"],
                ["from there to standstill", Text(result.TimeToStopS), $"s  (with the {Dynamics.Rehearsal.HeldAtZero.Seconds:0.0} s at 0 Hz before the output goes off)"],
                ["highest current", Text(result.PeakCurrentA), $"A  (motor {Text(job.Context.Printed.RatedCurrent.Amperes)} A)"],
                ["highest over 0.2 s", Text(result.LargestMeanCurrentA), $"A  (the highest was of a moment at {result.PeakCurrentAtS.ToString("0.00", CultureInfo.InvariantCulture)} s)"],
                ["highest DC bus", Text(result.PeakDcBusV), $"V  (trip {Text(job.Context.Rating.OvervoltageTrip.Volts)} V)"],
                ["trip", result.Tripped?.Name() ?? "none", ""],
            ]);
        page.Heading("Events");
        page.Table(
            [new("t s", Digits: true), new("what")],
            result.Events.Select(e => (IReadOnlyList<string>)[e.TimeS.ToString("0.000", CultureInfo.InvariantCulture), e.What.Name()]));
        if (result.Breakdown is { } breakdown)
        {
            page.Line($"The simulation broke down: {breakdown}");
        }

        if (ensemble is not null)
        {
            EnsemblePage.Write(page, ensemble);
        }

        page.Line($"An estimate, never a permission.{(plot is null ? "" : $" The trends are in {plot}.")}");
    }

    private static string Text(double? value) => value?.ToString("G4", CultureInfo.InvariantCulture) ?? "not reached";

    internal sealed class Settings : JobSettings
    {
        [CommandOption("--plot <FILE.svg>")]
        [Description("Trends of frequency, current, DC bus and torque")]
        public string? Plot { get; set; }

        [CommandOption("--supply-gap <SECONDS>")]
        [Description("The supply is gone for so long once the set is at speed")]
        public double? GapSeconds { get; set; }

        public Duration? Gap => GapSeconds is { } seconds ? Duration.FromSeconds(seconds) : null;

        [CommandOption("--ensemble")]
        [Description("Also with every motor that the plate may stand for: bands")]
        public bool Ensemble { get; set; }

        // Another ending is a slip, and could lie on the job file itself.
        public override Spectre.Console.ValidationResult Validate() => GapSeconds is not (null or (> 0 and <= 3600))
            ? Spectre.Console.ValidationResult.Error($"--supply-gap {GapSeconds!.Value.ToString(CultureInfo.InvariantCulture)} would not do; a number of seconds from 0.001 to 3600 would")
            : Plot is null || Plot.EndsWith(".svg", StringComparison.OrdinalIgnoreCase)
            ? Spectre.Console.ValidationResult.Success()
            : Spectre.Console.ValidationResult.Error($"--plot '{Plot}' would not do; a file whose name ends in .svg would");
    }
}
