namespace Runup.Profiles;

/// <summary>What the parameters of a drive hold, in counts, by parameter number; immutable.</summary>
public sealed class ParameterValues
{
    private readonly Dictionary<string, long> values;

    private ParameterValues(Dictionary<string, long> values) => this.values = values;

    /// <summary>Nothing is known.</summary>
    public static ParameterValues Empty { get; } = new(new Dictionary<string, long>(StringComparer.Ordinal));

    /// <summary>The numbers of the parameters that have a value, in ordinal order.</summary>
    public IEnumerable<string> Numbers => values.Keys.Order(StringComparer.Ordinal);

    /// <summary>How many parameters have a value.</summary>
    public int Count => values.Count;

    /// <summary>The value of a parameter, or null where it is not known.</summary>
    public long? this[string number] => values.TryGetValue(number, out var raw) ? raw : null;

    /// <summary>Factory values of every parameter on a size of the drive.</summary>
    public static ParameterValues Defaults(DriveProfile profile, DriveSize size)
    {
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(size);
        var all = new Dictionary<string, long>(profile.Parameters.Count, StringComparer.Ordinal);
        foreach (var parameter in profile.Parameters)
        {
            all.Add(parameter.Number, size.DefaultOf(parameter.Number) ?? parameter.Default);
        }

        // Those that others decide come after them; a circle, which the lint names, keeps what the rows say.
        var open = profile.Parameters.Where(p => p.DefaultFrom is not null && size.DefaultOf(p.Number) is null).ToList();
        while (open.Find(p => !open.Exists(o => string.Equals(o.Number, p.DefaultFrom!.Parameter, StringComparison.Ordinal))) is { } next)
        {
            all[next.Number] = profile.Default(next, size, new(all));
            open.Remove(next);
        }

        return new(all);
    }

    /// <summary>Values from pairs; a later one of the same number wins.</summary>
    public static ParameterValues From(IEnumerable<KeyValuePair<string, long>> pairs)
    {
        var all = new Dictionary<string, long>(StringComparer.Ordinal);
        foreach (var (number, raw) in pairs)
        {
            all[number] = raw;
        }

        return new(all);
    }

    /// <summary>These values with one more or changed.</summary>
    public ParameterValues With(string number, long raw) => new(new Dictionary<string, long>(values, StringComparer.Ordinal) { [number] = raw });

    /// <summary>These values overlaid by others, which win.</summary>
    public ParameterValues With(ParameterValues others)
    {
        var both = new Dictionary<string, long>(values, StringComparer.Ordinal);
        foreach (var (number, raw) in others.values)
        {
            both[number] = raw;
        }

        return new(both);
    }

    /// <summary>These values without one.</summary>
    public ParameterValues Without(string number)
    {
        var rest = new Dictionary<string, long>(values, StringComparer.Ordinal);
        rest.Remove(number);
        return new(rest);
    }
}
