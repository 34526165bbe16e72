using System.Collections.Immutable;

namespace Runup.Profiles;

/// <summary>What the parameters of a drive hold, in counts, by parameter number; immutable.</summary>
public sealed class ParameterValues
{
    private readonly ImmutableDictionary<string, long> values;

    private ParameterValues(ImmutableDictionary<string, long> values) => this.values = values;

    /// <summary>Nothing is known.</summary>
    public static ParameterValues Empty { get; } = new(ImmutableDictionary.Create<string, long>(StringComparer.Ordinal));

    /// <summary>The numbers of the parameters that have a value, in ordinal order.</summary>
    public IEnumerable<string> Numbers => values.Keys.Order(StringComparer.Ordinal);

    /// <summary>How many parameters have a value.</summary>
    public int Count => values.Count;

    /// <summary>The value of a parameter, or null where it is not known.</summary>
    public long? this[string number] => values.TryGetValue(number, out var raw) ? raw : null;

    /// <summary>Factory values of every parameter on a size of the drive.</summary>
    public static ParameterValues Defaults(DriveProfile profile, DriveSize size) =>
        From(profile.Parameters.Select(p => KeyValuePair.Create(p.Number, p.DefaultRaw(size))));

    /// <summary>Values from pairs; a later one of the same number wins.</summary>
    public static ParameterValues From(IEnumerable<KeyValuePair<string, long>> pairs)
    {
        var builder = Empty.values.ToBuilder();
        foreach (var (number, raw) in pairs)
        {
            builder[number] = raw;
        }

        return new(builder.ToImmutable());
    }

    /// <summary>These values with one more or changed.</summary>
    public ParameterValues With(string number, long raw) => new(values.SetItem(number, raw));

    /// <summary>These values overlaid by others, which win.</summary>
    public ParameterValues With(ParameterValues others) => new(values.SetItems(others.values));

    /// <summary>These values without one.</summary>
    public ParameterValues Without(string number) => new(values.Remove(number));
}
