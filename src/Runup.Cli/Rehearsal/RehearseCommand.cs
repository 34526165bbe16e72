using System.ComponentModel;
using Runup.Cli.Entry;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Rehearsal;
using Runup.Dynamics;
using Runup.Quantities;
using Runup.Engineering.Motors.Ensemble;
using Spectre.Console.Cli;

namespace Runup.Cli.Rehearsal;

/// <summary><c>runup rehearse JOB</c>: simulates start, run and stop with the settings as the drive will hold them.</summary>
internal sealed class RehearseCommand : Command<RehearseCommand.Settings>
{
    public override int Execute(Spectre.Console.Cli.CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        FileOption.RequirePlace("--plot", settings.Plot);
        var ready = Task.Run(() => MakeReady(settings), cancellationToken);
        var job = LoadedJob.From(settings.Job);
        var plan = SettingsPlan.For(job.Context);
        ready.GetAwaiter().GetResult();
        using var interruption = new Interruption(cancellationToken);
        RehearsalResult result;
        RehearsedEnsemble? ensemble;
        try
        {
            result = One(job, plan, settings, interruption.Token);
            ensemble = settings.Ensemble ? Ensemble(job, plan, result, settings.Seed, interruption.Token) : null;
        }
        catch (OperationCanceledException)
        {
            throw new Complaint(ExitStatus.BadInput, $"runup: the rehearsal of {job.Job.Tag} was interrupted; nothing was written");
        }

        if (settings.Plot is { } plot)
        {
            File.WriteAllText(plot, RehearsalPlot.Svg(result, ensemble?.Result, job, JobRehearsal.Control(job.Context, plan, job.Profile, job.Size)));
        }

        if (settings.Json)
        {
            RehearsalJson.Write(result, ensemble, settings.PlantDetail is { } more ? DetailWords.Of(job, more) : null);
        }
        else
        {
            RehearsalPage.Write(job, JobRehearsal.Control(job.Context, plan, job.Profile, job.Size), result, ensemble, settings.PlantDetail is { } more ? DetailWords.Of(job, more) : null, settings.Plot);
        }

        return (int)(result is { Tripped: null, Breakdown: null, TimeToSpeedS: not null } ? ExitStatus.Fine : ExitStatus.Blocked);
    }

    private static RehearsalResult One(LoadedJob job, SettingsPlan plan, Settings settings, CancellationToken cancellation)
    {
        using var progress = WorkProgress.Of(job.Job.Tag);
        return Result(job, JobRehearsal.Of(job.Context, plan, job.Profile, job.Size, settings.Gap, settings.PlantDetail, progress, cancellation));
    }

    // Beside the reading of the job: what simulates, then what prints, each by a little of it.
    private static void MakeReady(Settings settings)
    {
        WarmUp.Run(settings.Ensemble);
        if (!settings.Json)
        {
            var page = new Page(TextWriter.Null);
            page.Heading("");
            page.Table([new("", Digits: true), new("")], [["0", "0"]]);
        }
    }

    internal static RehearsalResult Result(LoadedJob job, RehearsalOutcome? outcome) => outcome switch
    {
        RehearsalOutcome.Ran ran => ran.Result,
        RehearsalOutcome.Refused refused => throw Impossible(job, "rehearsed", refused.Problems.Select(p => p.ToString())),
        null => throw Impossible(job, "rehearsed", [$"it would take {RehearsalSystem.Missing(job.Context)}"]),
        _ => throw new InvalidOperationException("The set of outcomes is closed."),
    };

    /// <summary>What to say where a set can't be simulated: each reason by itself.</summary>
    internal static Complaint Impossible(LoadedJob job, string what, IEnumerable<string> reasons) =>
        new(ExitStatus.BadInput, reasons.Select(r => $"{job.Path}:1:1 (file): can't be {what}: {r.TrimEnd('.')}; `runup check {job.Path}` says more"));

    private static RehearsedEnsemble Ensemble(LoadedJob job, SettingsPlan plan, RehearsalResult middle, ulong seed, CancellationToken cancellation)
    {
        using var progress = WorkProgress.Of($"{job.Job.Tag}, {MotorEnsemble.DefaultSize} motors");
        return JobEnsembleRehearsal.Of(job.Context, plan, job.Profile, job.Size, middle, MotorEnsemble.DefaultSize, seed, progress, cancellation) is { Ensemble: var many }
            ? new(many, seed)
            : throw new Complaint(ExitStatus.BadInput, $"{job.Path}:1:1 (file): no ensemble of motors fits the plate; `runup rehearse {job.Path}` without --ensemble would do");
    }

    internal sealed class Settings : JobSettings
    {
        private const double ShortestGap_s = 0.001;
        private const double LongestGap_s = 3600;

        [CommandOption("--plot <FILE.svg>")]
        [Description("Trends of frequency, current, DC bus and torque")]
        public string? Plot { get; set; }

        [CommandOption("--supply-gap <SECONDS>")]
        [Description("The supply is gone for so long once the set is at speed")]
        public NumberOption? GapSeconds { get; set; }

        [CommandOption("--ensemble")]
        [Description("Also with every motor that the plate may stand for: bands")]
        public bool Ensemble { get; set; }

        [CommandOption("--seed <N>")]
        [Description("With --ensemble: another draw of motors; the same number gives the same ones")]
        public NumberOption? SeedText { get; set; }

        [CommandOption("--detail")]
        [Description("With both cages of the motor, where it has two, and iron that saturates; several times slower")]
        public bool Detail { get; set; }

        internal PlantDetail? PlantDetail => Detail ? RehearsalSystem.UsualDetail : null;

        internal Duration? Gap => GapSeconds?.Within(ShortestGap_s, LongestGap_s) is { } seconds ? Duration.FromSeconds(seconds) : null;

        internal ulong Seed => SeedText?.Whole(uint.MaxValue) ?? MotorEnsemble.DefaultSeed;

        public override Spectre.Console.ValidationResult Validate() => this switch
        {
            { GapSeconds: { } gap } when gap.Within(ShortestGap_s, LongestGap_s) is null => gap.Wrong("--supply-gap", "a number of seconds from 0.001 to 3600, such as 0.25,"),
            { SeedText: not null, Ensemble: false } => Spectre.Console.ValidationResult.Error("--seed goes with --ensemble: the motors are drawn by it; both, or neither, would do"),
            { SeedText: { } seed } when seed.Whole(uint.MaxValue) is null => seed.Wrong("--seed", "a whole number from 0 to 4294967295"),
            { GapSeconds: not null, Ensemble: true } => Spectre.Console.ValidationResult.Error("--supply-gap is of one motor, the members of --ensemble know no gap; one of them would do"),
            { Detail: true, Ensemble: true } => Spectre.Console.ValidationResult.Error("--detail is of one motor, --ensemble of many without such detail; one of them would do"),
            _ => FileOption.Named("--plot", Plot, ".svg"),
        };
    }
}
