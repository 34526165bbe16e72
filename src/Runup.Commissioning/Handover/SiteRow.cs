using System.Globalization;
using Runup.Commissioning.Checks;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Handover;

/// <summary>A set of a site in one row: what is done, what is open, who has control.</summary>
public sealed record SiteRow
{
    /// <summary>Equipment tag.</summary>
    public required string Tag { get; init; }

    /// <summary>What the set is, in words, or null.</summary>
    public string? Title { get; init; }

    /// <summary>The drive's family and size.</summary>
    public required string Drive { get; init; }

    /// <summary>How far the set has come as a whole: never further than its least stage, and not done while anything is open.</summary>
    public required StageState State { get; init; }

    /// <summary>Its stages.</summary>
    public required IReadOnlyList<StageFact> Stages { get; init; }

    /// <summary>What is open.</summary>
    public required IReadOnlyList<OpenPoint> Open { get; init; }

    /// <summary>The gravest finding, or null where there is none.</summary>
    public CheckResult.Violated? Gravest { get; init; }

    /// <summary>How many checks say nothing for want of data.</summary>
    public required int Undecided { get; init; }

    /// <summary>Where run commands come from, as the drive was left; null where that is not known.</summary>
    public string? RunSource { get; init; }

    /// <summary>The bus time-out and what follows it, as the drive was left; null where that is not known.</summary>
    public string? BusTimeout { get; init; }

    /// <summary>The handover's file, from the site's folder.</summary>
    public required string Handover { get; init; }

    /// <summary>The row of a set.</summary>
    /// <param name="model">Its handover.</param>
    /// <param name="profile">The drive's profile.</param>
    /// <param name="size">Its size.</param>
    /// <param name="handover">The handover's file, from the site's folder.</param>
    public static SiteRow Of(HandoverModel model, DriveProfile profile, DriveSize size, string handover)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(size);
        var left = model.Story.AsLeft.Count == 0
            ? null
            : SettingsReader.Read(profile, size, ParameterValues.Defaults(profile, size).With(ParameterValues.From(model.Story.AsLeft)));
        return new()
        {
            Tag = model.Tag,
            Title = model.Title,
            Drive = DriveOf(profile, size),
            State = StateOf(model.Stages, model.Open),
            Stages = model.Stages,
            Open = model.Open,
            Gravest = model.Checks.Findings.OrderByDescending(f => f.Severity).FirstOrDefault(),
            Undecided = model.Checks.Undecided.Count,
            RunSource = left?.Choice(Setting.RunCommandSource),
            BusTimeout = left is null ? null : BusTimeoutOf(left),
            Handover = handover,
        };
    }

    /// <summary>A drive in short: family and size.</summary>
    public static string DriveOf(DriveProfile profile, DriveSize size)
    {
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(size);
        return $"{profile.Identity?.Product ?? profile.Family} {size.Name}";
    }

    private static StageState StateOf(IReadOnlyList<StageFact> stages, IReadOnlyList<OpenPoint> open) =>
        stages.Any(s => s.State == StageState.HeldUp) ? StageState.HeldUp
        : stages.Count == 0 || stages.Any(s => s.State == StageState.NotDone) ? StageState.NotDone
        : open.Count > 0 || stages.Any(s => s.State == StageState.Open) ? StageState.Open
        : StageState.Done;

    private static string? BusTimeoutOf(SettingSet left) => left.Number(Setting.BusTimeout) switch
    {
        null => null,
        0 => "off",
        var seconds => string.Create(CultureInfo.InvariantCulture, $"{seconds:0.##} s, then {left.Choice(Setting.BusLossAction) switch { "none" => "nothing", { } action => action, null => "not known" }}"),
    };
}
