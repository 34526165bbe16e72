using Runup.Commissioning.Checks;
using Runup.Commissioning.Plan;
using Runup.Dynamics;
using Runup.Engineering.Loads;
using Runup.Profiles;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Commissioning.Rehearsal;

/// <summary>The first start and stop of a set before power, with the settings as this drive will hold them after rounding.</summary>
public static class JobRehearsal
{
    private static readonly Duration AtSpeed = Duration.FromSeconds(2);

    // Start and stop each get three times their ramp, which limits may stretch, and at most some hours.
    private const double Shortest_s = 20;
    private const double Longest_s = 12_000;

    // A trace of hours is kept in so many samples that it takes some megabytes, and one of a minute in all its detail.
    private const double FinestSample_s = 0.01;
    private const double MostSamples = 50_000;

    /// <summary>The settings that a drive holds once the plan was entered over its factory values.</summary>
    public static SettingSet Held(SettingsPlan plan, DriveProfile profile, DriveSize size)
    {
        var factory = ParameterValues.Defaults(profile, size);
        return SettingsReader.Read(profile, size, Profiles.Sheet.After(profile, size, Profiles.Sheet.For(profile, size, plan.Values, factory), factory));
    }

    /// <summary>Whether the rehearsal goes on backward after the stop: a hoist then lowers.</summary>
    public static bool GoesBothWays(JobContext context) =>
        context.Machine.Machine?.Load is LoadCurve.Hoisting && string.Equals(context.Job.Operation.Directions?.Value, "both", StringComparison.Ordinal);

    /// <summary>Start to the highest frequency, two seconds there, stop; a hoist the same lowering; null where motor or load are not known well enough.</summary>
    /// <param name="context">The job.</param>
    /// <param name="plan">Its settings.</param>
    /// <param name="profile">The drive's family.</param>
    /// <param name="size">Its size.</param>
    /// <param name="supplyGap">How long the supply is gone while the set is at speed; null: not at all.</param>
    /// <param name="detail">What the motor has beyond the plain model; null: nothing.</param>
    /// <param name="progress">Told now and then which part is done.</param>
    /// <param name="cancellation">Ends it.</param>
    public static RehearsalOutcome? Of(
        JobContext context, SettingsPlan plan, DriveProfile profile, DriveSize size, Duration? supplyGap = null, PlantDetail? detail = null, IProgress<double>? progress = null, CancellationToken cancellation = default) =>
        RehearsalSystem.Of(context) is { } system
            ? Run(system with { Detail = detail }, Held(plan, profile, size), context.Job.Operation.MaximumFrequency.Value, GoesBothWays(context), supplyGap, progress, cancellation)
            : null;

    /// <summary>The same with whatever settings the drive holds.</summary>
    public static RehearsalOutcome? With(JobContext context, SettingSet held, IProgress<double>? progress = null, CancellationToken cancellation = default) =>
        RehearsalSystem.Of(context) is { } system
            ? Run(system, held, context.Job.Operation.MaximumFrequency.Value, GoesBothWays(context), null, progress, cancellation)
            : null;

    /// <summary>The control that a rehearsal runs with.</summary>
    public static ControlSettings Control(JobContext context, SettingsPlan plan, DriveProfile profile, DriveSize size)
    {
        ArgumentNullException.ThrowIfNull(context);
        return ControlSettings.From(Held(plan, profile, size), context.Rating);
    }

    internal static RehearsalOutcome To(DriveSystem system, SettingSet held, ElectricalFrequency frequency) => Run(system, held, frequency, bothWays: false, null, null, default);

    private static RehearsalOutcome Run(DriveSystem system, SettingSet held, ElectricalFrequency frequency, bool bothWays, Duration? supplyGap, IProgress<double>? progress, CancellationToken cancellation)
    {
        var control = ControlSettings.From(held, system.Drive);
        var longest = Duration.FromSeconds(Math.Clamp(3 * Math.Max(control.Acceleration.Seconds, control.Deceleration.Seconds), Shortest_s, Longest_s));
        return new Dynamics.Rehearsal
        {
            System = system,
            Settings = control,
            SampleEvery = Duration.FromSeconds(Math.Max(FinestSample_s, Math.Round(longest.Seconds / MostSamples, 3))),
            Script = [.. Dynamics.Rehearsal.StartAndStop(frequency.Hertz, AtSpeed, longest, supplyGap), .. bothWays ? Dynamics.Rehearsal.StartAndStop(-frequency.Hertz, AtSpeed, longest) : []],
        }.Run(progress, cancellation);
    }

    internal static DriveSystem On(DriveSystem system, DrivenMachine machine) => system with { Machine = machine };
}
