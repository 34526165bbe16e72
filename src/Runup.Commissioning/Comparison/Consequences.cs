using Runup.Commissioning.Checks;
using Runup.Commissioning.Plan;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Comparison;

/// <summary>What the differences of two states do to a set.</summary>
public sealed record Consequences
{
    private Consequences()
    {
    }

    /// <summary>For each difference what it does, or null where nothing can be said.</summary>
    public required IReadOnlyList<string?> OfEach { get; init; }

    /// <summary>What a start and a stop come to with all of the left side; null where it can't be told.</summary>
    public string? Left { get; init; }

    /// <summary>The same with all of the right side.</summary>
    public string? Right { get; init; }

    /// <summary>Works them out.</summary>
    /// <param name="context">The set that the drive is on.</param>
    /// <param name="comparison">The states and what differs.</param>
    /// <param name="cancellation">Ends the work.</param>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static Consequences Of(JobContext context, StateComparison comparison, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        if (comparison.Differences.Count == 0)
        {
            return new() { OfEach = [] };
        }

        var plan = SettingsPlan.For(context);
        var runs = new RunConsequences(context, comparison.Left, comparison.Right, cancellation);
        return new()
        {
            OfEach = [.. comparison.Differences.Select(d => OfOne(d, context, comparison, plan, runs, cancellation))],
            Left = runs.Left?.Words,
            Right = runs.Right?.Words,
        };
    }

    private static string? OfOne(
        StateDifference difference, JobContext context, StateComparison states, SettingsPlan plan, RunConsequences runs, CancellationToken cancellation)
    {
        if (difference.SaysTheSame)
        {
            return "says the same";
        }

        if (difference.Setting is not { } setting)
        {
            return null;
        }

        var (here, there) = (Value(setting, states.Left, context, plan), Value(setting, states.Right, context, plan));
        var alike = string.Equals(here, there, StringComparison.Ordinal);
        var run = runs.Of(difference, cancellation);
        var words = new[]
        {
            Side(difference.Left, alike ? null : here, runs.OfRight ? null : run),
            Side(difference.Right, alike ? null : there, runs.OfRight ? run : null),
        }.OfType<string>().ToList();
        return words.Count == 0 ? null : string.Join("; ", words);
    }

    private static string? Side(StateSide side, string? value, string? run) =>
        (value ?? run) is null ? null : $"with {side.Text}: {string.Join("; ", new[] { value, run }.OfType<string>())}";

    private static string? Value(Setting setting, HeldState state, JobContext context, SettingsPlan plan) =>
        state.Of(setting) is null ? null : ValueConsequences.Of(setting, state.Settings, context, plan);
}
