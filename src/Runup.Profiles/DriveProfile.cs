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

    /// <inheritdoc/>
    public override string ToString() => Title;
}
