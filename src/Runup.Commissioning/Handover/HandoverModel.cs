using Runup.Commissioning.Checks;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Handover.ControlSystem;
using Runup.Commissioning.Records;
using Runup.Commissioning.Rehearsal;
using Runup.Commissioning.Survey;
using Runup.Engineering.Drives;
using Runup.Profiles;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Commissioning.Handover;

/// <summary>All that a handover says, before anybody writes it down.</summary>
public sealed record HandoverModel
{
    private HandoverModel()
    {
    }

    /// <summary>Equipment tag.</summary>
    public required string Tag { get; init; }

    /// <summary>What the set is, in words.</summary>
    public string? Title { get; init; }

    /// <summary>When it was written.</summary>
    public required DateTimeOffset WrittenAt { get; init; }

    /// <summary>What wrote it.</summary>
    public required string WrittenBy { get; init; }

    /// <summary>What is done and what is not, at a glance.</summary>
    public required IReadOnlyList<StageFact> Stages { get; init; }

    /// <summary>What is open.</summary>
    public required IReadOnlyList<OpenPoint> Open { get; init; }

    /// <summary>What can hurt.</summary>
    public required IReadOnlyList<HandoverCaution> Cautions { get; init; }

    /// <summary>The set in a few lines: name and value.</summary>
    public required IReadOnlyList<(string Name, string Value)> Facts { get; init; }

    /// <summary>The motor's rated current, against which readings are seen.</summary>
    public required LineCurrent RatedCurrent { get; init; }

    /// <summary>Levels of the DC bus at which the drive acts.</summary>
    public required IReadOnlyList<(string Name, DcVoltage Level)> BusLevels { get; init; }

    /// <summary>The survey, part by part.</summary>
    public required IReadOnlyList<SurveyPart> Survey { get; init; }

    /// <summary>The job's photos.</summary>
    public required IReadOnlyList<ReportPhoto> Photos { get; init; }

    /// <summary>Photos of the set as a whole, with what they show.</summary>
    public required IReadOnlyList<SetPhoto> SetPhotos { get; init; }

    /// <summary>What the checks say.</summary>
    public required CheckReport Checks { get; init; }

    /// <summary>The settings with their reasons.</summary>
    public required IReadOnlyList<SettingRow> Settings { get; init; }

    /// <summary>The parameters as found, as left and from the factory.</summary>
    public required IReadOnlyList<ParameterRow> Parameters { get; init; }

    /// <summary>What the record tells.</summary>
    public required RecordStory Story { get; init; }

    /// <summary>The steps of the first run, those that were never begun with no attempt.</summary>
    public required IReadOnlyList<StepStory> Steps { get; init; }

    /// <summary>Points for the plots, or null.</summary>
    public HandoverCurves? Curves { get; init; }

    /// <summary>What whoever programs the control system has to know; null where the profile does not tell how the drive is commanded.</summary>
    public ProgrammersPage? Programmers { get; init; }

    /// <summary>The file that restores the drive; null where nothing was read of it.</summary>
    public RestoreFile? Restore { get; init; }

    /// <summary>Acceptances of what the checks no longer find.</summary>
    public IEnumerable<At<RecordBody.FindingAccepted>> AcceptedAndGone =>
        Story.Accepted.Where(a => !Checks.Results.Any(r => r is not CheckResult.Satisfied && string.Equals(r.Id, a.Body.Finding, StringComparison.Ordinal)));

    /// <summary>Who stands for a finding or an undecided check.</summary>
    public FindingStanding StandingOf(CheckResult result) => FindingStanding.Of(result, Story);

    /// <summary>Puts a handover together.</summary>
    public static HandoverModel Of(HandoverSources sources)
    {
        ArgumentNullException.ThrowIfNull(sources);
        var story = RecordStory.Of(sources.Record);
        var parameters = ParameterTable.Of(sources.Profile, sources.Size, story, sources.Sheet);
        var steps = StepsOf(sources.Steps, story.Steps, sources.WrittenAt);
        return new()
        {
            Tag = sources.Job.Tag,
            Title = sources.Job.Title,
            WrittenAt = sources.WrittenAt,
            WrittenBy = sources.WrittenBy,
            Stages = StageFacts.Of(sources.Checks, story, parameters, steps),
            Open = OpenPoints.Of(sources, story, parameters, steps),
            Cautions = HandoverCaution.Of(sources.Job, sources.Plan.Values, story),
            Facts = SetFacts.Of(sources.Context, sources.Profile, sources.Size, story),
            RatedCurrent = sources.Job.Motor.Plate.Current.Value,
            BusLevels = BusLevelsOf(sources.Context.Rating),
            Survey = SurveyTable.Of(sources.Job),
            Photos = sources.Photos,
            SetPhotos = sources.Job.Photos,
            Checks = sources.Checks,
            Settings = SettingRow.Of(sources.Plan, sources.Sheet),
            Parameters = parameters,
            Story = story,
            Steps = steps,
            Curves = HandoverCurves.Of(sources.Context, Held(sources, story)),
            Programmers = ProgrammersPage.Of(sources.Job, sources.Profile, Held(sources, story), HeldValues(sources, story), story.AsLeft.Count > 0, OwnControl(sources)),
            Restore = RestoreFile.Of(sources.Job, sources.Profile, sources.Size, story),
        };
    }

    private static IReadOnlyList<(string, DcVoltage)> BusLevelsOf(DriveRating rating) =>
        [("overvoltage trip", rating.OvervoltageTrip), ("deceleration stretched", rating.OvervoltageControl), ("undervoltage trip", rating.UndervoltageTrip)];

    // What the drive was left with; before anything was read of it, what it is to hold.
    private static SettingSet Held(HandoverSources sources, RecordStory story) => story.AsLeft.Count == 0
        ? JobRehearsal.Held(sources.Plan, sources.Profile, sources.Size)
        : SettingsReader.Read(sources.Profile, sources.Size, HeldValues(sources, story));

    private static string? OwnControl(HandoverSources sources) =>
        OwnControlOnly.ByMachine(sources.Job, sources.Checks.LoadDrivesMotor);

    private static ParameterValues HeldValues(HandoverSources sources, RecordStory story)
    {
        var factory = ParameterValues.Defaults(sources.Profile, sources.Size);
        return story.AsLeft.Count == 0 ? Profiles.Sheet.After(sources.Profile, sources.Size, sources.Sheet, factory) : factory.With(ParameterValues.From(story.AsLeft));
    }

    // In the plan's order; what was done and is not in the plan comes after.
    private static IReadOnlyList<StepStory> StepsOf(IReadOnlyList<PlannedStep> planned, IReadOnlyList<StepStory> done, DateTimeOffset at) =>
    [
        .. planned.Select(p => (done.FirstOrDefault(d => string.Equals(d.Step, p.Step, StringComparison.Ordinal)) ?? new StepStory { Step = p.Step, Title = p.Title, Attempts = 0, Begun = at }) with { Title = p.Title }),
        .. done.Where(d => planned.All(p => !string.Equals(d.Step, p.Step, StringComparison.Ordinal))),
    ];
}
