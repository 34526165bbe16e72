using Runup.Settings;

namespace Runup.Profiles;

/// <summary>Two states side by side: by meaning where there is one that both know, by number where not.</summary>
public sealed record StateComparison
{
    private StateComparison()
    {
    }

    /// <summary>The one state, laid over the other.</summary>
    public required HeldState Left { get; init; }

    /// <summary>The other state, laid over the one.</summary>
    public required HeldState Right { get; init; }

    /// <summary>Whether both are of one family, so that numbers mean the same.</summary>
    public bool OneFamily => Left.IsOfFamily(Right);

    /// <summary>What differs: of one make in its menu order, of two in the vocabulary's.</summary>
    public required IReadOnlyList<StateDifference> Differences { get; init; }

    /// <summary>Of how many settings and parameters both states speak.</summary>
    public required int Compared { get; init; }

    /// <summary>Parameters of which only the left state speaks, or which mean nothing that the right one knows.</summary>
    public required IReadOnlyList<Parameter> OnlyLeft { get; init; }

    /// <summary>The same of the right state.</summary>
    public required IReadOnlyList<Parameter> OnlyRight { get; init; }

    /// <summary>Compares.</summary>
    public static StateComparison Of(HeldState one, HeldState other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        var (left, right, oneMake) = (one.Over(other), other.Over(one), one.IsOfFamily(other));
        var settings = Setting.All.Where(s => left.Of(s) is not null && right.Of(s) is not null).ToList();
        var byMeaning = settings.Where(s => !SaysTheSame(left, right, s, oneMake)).Select(s => ByMeaning(left, right, s, oneMake)).ToList();
        var told = byMeaning.SelectMany(d => d.Left.Parameters).Select(p => p.Number).ToHashSet(StringComparer.Ordinal);
        var both = oneMake ? left.Profile.Parameters.Where(p => p.IsKept && left.Of(p) is not null && right.Of(p) is not null).ToList() : [];
        var byNumber = both.Where(p => left.Of(p) != right.Of(p) && !told.Contains(p.Number)).Select(p => ByNumber(left, right, p, settings));
        var differences = byMeaning.Concat(byNumber).ToList();
        return new()
        {
            Left = left,
            Right = right,
            Differences = oneMake ? [.. differences.OrderBy(d => Place(left.Profile, d))] : differences,
            Compared = oneMake ? both.Count : settings.Count,
            OnlyLeft = Alone(left, right, settings, oneMake),
            OnlyRight = Alone(right, left, settings, oneMake),
        };
    }

    // What one drive cannot say finer than the other is no difference.
    private static bool SaysTheSame(HeldState left, HeldState right, Setting setting, bool oneMake)
    {
        var (a, b) = (left.Of(setting)!, right.Of(setting)!);
        return Same(a, b) || (!oneMake && ((right.Saying(setting, a) is { } there && Same(there, b)) || (left.Saying(setting, b) is { } here && Same(here, a))));
    }

    private static bool Same(SettingValue a, SettingValue b) =>
        (a, b) is (SettingValue.Number x, SettingValue.Number y) ? Fit.Same(x.Si, y.Si) : a == b;

    private static StateDifference ByMeaning(HeldState left, HeldState right, Setting setting, bool oneMake)
    {
        var (here, there) = (left.Carrying(setting).ToList(), right.Carrying(setting).ToList());
        var (a, b) = (left.Of(setting)!, right.Of(setting)!);

        // Equal digits may say different things, such as a ramp that is counted to another frequency.
        var shown = oneMake && Shown(left, here) is { } x && Shown(right, there) is { } y && !string.Equals(x, y, StringComparison.Ordinal);
        return new()
        {
            Setting = setting,
            Left = new(here, shown ? Shown(left, here) : SettingText.Of(setting, a), a),
            Right = new(there, shown ? Shown(right, there) : SettingText.Of(setting, b), b),
        };
    }

    private static StateDifference ByNumber(HeldState left, HeldState right, Parameter parameter, List<Setting> settings) => new()
    {
        Setting = parameter.Meaning?.Settings is [var only] ? only : null,
        Left = new([parameter], left.Shown(parameter), null),
        Right = new([parameter], right.Shown(parameter), null),
        SaysTheSame = parameter.Meaning?.Settings.All(settings.Contains) is true,
    };

    private static string Shown(HeldState state, IEnumerable<Parameter> parameters) => string.Join(", ", parameters.Select(state.Shown));

    private static int Place(DriveProfile profile, StateDifference difference)
    {
        for (var i = 0; i < profile.Parameters.Count; i++)
        {
            if (string.Equals(profile.Parameters[i].Number, difference.Left.Parameters[0].Number, StringComparison.Ordinal))
            {
                return i;
            }
        }

        return profile.Parameters.Count;
    }

    private static IReadOnlyList<Parameter> Alone(HeldState of, HeldState other, List<Setting> settings, bool oneMake) =>
    [
        .. of.Profile.Parameters.Where(p => p.IsKept && of.Of(p) is not null && (oneMake ? other.Profile.Find(p.Number) is not { } same || other.Of(same) is null : p.Meaning?.Settings.Any(settings.Contains) is not true)),
    ];
}
