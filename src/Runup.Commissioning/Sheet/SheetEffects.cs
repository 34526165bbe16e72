using Runup.Commissioning.Checks;
using Runup.Commissioning.Comparison;
using Runup.Commissioning.Plan;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Sheet;

/// <summary>What comes of values that a drive rounds or cannot reach: the set worked out again with what it will hold, against what is wanted.</summary>
public static class SheetEffects
{
    private const string Nothing = "no other start, stop or current comes of it, rehearsed";

    /// <summary>The effects in a sentence's rest, by the number of the parameter; nothing for values that the drive holds as wanted.</summary>
    /// <param name="context">The set.</param>
    /// <param name="plan">What the job decides.</param>
    /// <param name="profile">The drive's profile.</param>
    /// <param name="size">Its size.</param>
    /// <param name="cancellation">Ends the work.</param>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static IReadOnlyDictionary<string, string> Of(JobContext context, SettingsPlan plan, DriveProfile profile, DriveSize size, CancellationToken cancellation = default)
    {
        var factory = ParameterValues.Defaults(profile, size);
        var lines = Profiles.Sheet.For(profile, size, plan.Values, factory);
        var effects = new Dictionary<string, string>(StringComparer.Ordinal);
        var open = lines.Where(l => l is { Parameter: not null, Settings: [var only] } && FitWords.Of(l.Fit, only) is not null).ToList();
        if (open.Count == 0)
        {
            return effects;
        }

        var held = SettingsReader.Read(profile, size, Profiles.Sheet.After(profile, size, lines, factory));
        var given = new Lazy<RunLook?>(() => RunLook.At(context, held, cancellation));
        foreach (var line in open)
        {
            if (Of(line, held, given, context, plan, cancellation) is { } effect)
            {
                effects[line.Parameter!.Number] = effect;
            }
        }

        return effects;
    }

    private static string? Of(SheetLine line, SettingSet held, Lazy<RunLook?> given, JobContext context, SettingsPlan plan, CancellationToken cancellation)
    {
        var setting = line.Settings[0];
        var wanted_Si = line.Fit switch { Fit.Rounded r => r.WantedSi, Fit.OutOfRange o => o.WantedSi, _ => double.NaN };
        var wanted = held.With(setting, wanted_Si);
        var value = ValueConsequences.Of(setting, held, context, plan);
        var told = string.Equals(value, ValueConsequences.Of(setting, wanted, context, plan), StringComparison.Ordinal) ? null : value;

        // Only what the run feels is run again, and only beside a run that goes well with what is wanted can a value be blamed.
        var run = RunConsequences.IsFelt(setting) && given.Value is { } now && RunLook.At(context, wanted, cancellation) is { IsFine: true } fine ? now.Against(fine) ?? Nothing : null;
        return (told, run) switch
        {
            (null, null) => null,
            (null, Nothing) => Nothing,
            (null, _) => $"so it {run}",
            (_, null or Nothing) => $"so it {told}",
            _ => $"so it {told}; it {run}",
        };
    }
}
