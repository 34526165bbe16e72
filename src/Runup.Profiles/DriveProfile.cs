using Runup.Settings;

namespace Runup.Profiles;

/// <summary>A family of drives: its sizes, its parameters and what they mean in make-independent settings.</summary>
public sealed class DriveProfile
{
    private readonly Dictionary<string, Parameter> byNumber;
    private readonly Dictionary<Setting, List<Parameter>> bySetting = [];

    /// <summary>Makes a profile.</summary>
    /// <exception cref="ArgumentException">Two parameters have one number.</exception>
    public DriveProfile(IReadOnlyList<Parameter> parameters)
    {
        Parameters = parameters;
        byNumber = parameters.ToDictionary(p => p.Number, StringComparer.Ordinal);
        foreach (var parameter in parameters)
        {
            foreach (var setting in parameter.Meaning?.Settings ?? [])
            {
                (bySetting.TryGetValue(setting, out var list) ? list : bySetting[setting] = []).Add(parameter);
            }
        }
    }

    /// <summary>The family's name in job files, such as <c>tern</c>.</summary>
    public required string Family { get; init; }

    /// <summary>The family's name for people.</summary>
    public required string Title { get; init; }

    /// <summary>Version of the file format that it was read from.</summary>
    public int Format { get; init; } = 1;

    /// <summary>Who the drive says it is; null where the profile does not tell.</summary>
    public DriveIdentity? Identity { get; init; }

    /// <summary>Its sizes, small to large.</summary>
    public required IReadOnlyList<DriveSize> Sizes { get; init; }

    /// <summary>The regions with factory values of their own, the usual one first; none where all drives are alike.</summary>
    public IReadOnlyList<Region> Regions { get; init; } = [];

    /// <summary>Its parameters in the make's own menu order.</summary>
    public IReadOnlyList<Parameter> Parameters { get; }

    /// <summary>Command word, reference and status word; null where the profile does not tell.</summary>
    public CommandInterface? Command { get; init; }

    /// <summary>What can be read while it runs.</summary>
    public IReadOnlyList<DriveReading> Readings { get; init; } = [];

    /// <summary>Trip codes with their causes.</summary>
    public TripCodes Trips { get; init; } = TripCodes.None;

    /// <summary>How it is told to keep its parameters; null where it keeps each at once.</summary>
    public StoreProcedure? Store { get; init; }

    /// <summary>The parameter of a number, or null.</summary>
    public Parameter? Find(string number) => byNumber.GetValueOrDefault(number);

    /// <summary>The parameters that carry a setting; none where the drive does not offer it.</summary>
    public IReadOnlyList<Parameter> Carrying(Setting setting) => bySetting.TryGetValue(setting, out var list) ? list : [];

    /// <summary>The size of a name, or null.</summary>
    public DriveSize? FindSize(string name) => Sizes.FirstOrDefault(s => string.Equals(s.Name, name, StringComparison.Ordinal));

    /// <summary>The family as it is sold in a region; null where there is no such region.</summary>
    public DriveProfile? In(string region) => Regions.FirstOrDefault(r => string.Equals(r.Name, region, StringComparison.Ordinal)) is not { } there ? null : new(Parameters)
    {
        Family = Family,
        Title = Title,
        Format = Format,
        Identity = Identity,
        Sizes = [.. Sizes.Select(s => s with { Region = there })],
        Regions = Regions,
        Command = Command,
        Readings = Readings,
        Trips = Trips,
        Store = Store,
    };

    /// <summary>The range of a parameter while the drive holds these values, in counts.</summary>
    public ParameterRange Range(Parameter parameter, DriveSize size, ParameterValues values) =>
        Limits.Range(new Surroundings(this, size, values), parameter, size);

    /// <summary>Whether the drive takes this value while it holds these.</summary>
    public bool Accepts(Parameter parameter, long raw, DriveSize size, ParameterValues values)
    {
        ArgumentNullException.ThrowIfNull(parameter);
        return parameter.Accepts(raw, size) && (parameter.Form is not ParameterForm.Numeric form || form.Accepts(raw, Range(parameter, size, values)));
    }

    /// <summary>What a parameter has from the factory on a drive of this size, the parameters that decide it holding these values.</summary>
    public long Default(Parameter parameter, DriveSize size, ParameterValues values)
    {
        ArgumentNullException.ThrowIfNull(parameter);
        return Limits.Default(new Surroundings(this, size, values), parameter, size) ?? parameter.Default;
    }

    /// <summary>What the drive holds once a value is written: where the parameter resets others, these too have their factory values.</summary>
    public ParameterValues Written(Parameter parameter, long raw, DriveSize size, ParameterValues values)
    {
        ArgumentNullException.ThrowIfNull(parameter);
        ArgumentNullException.ThrowIfNull(values);
        var after = values.With(parameter.Number, raw);
        return !parameter.Resets || values[parameter.Number] == raw
            ? after
            : SetBy(parameter).Aggregate(after, (held, dependent) => held.With(dependent.Number, Default(dependent, size, held)));
    }

    /// <summary>The parameters that a new value of this one sets to their factory values again; none unless it resets.</summary>
    public IEnumerable<Parameter> SetBy(Parameter parameter) => parameter is { Resets: true }
        ? Parameters.Where(p => p.IsKept && p.DefaultFrom is { } from && string.Equals(from.Parameter, parameter.Number, StringComparison.Ordinal))
        : [];

    /// <inheritdoc/>
    public override string ToString() => Title;
}
