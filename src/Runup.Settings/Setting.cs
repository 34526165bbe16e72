namespace Runup.Settings;

/// <summary>A make-independent setting: its name, its meaning and the form of its values.</summary>
/// <remarks>The names stay as they are in job files, JSON and drive profiles; more may be added.</remarks>
public sealed partial record Setting
{
    private static readonly Lazy<IReadOnlyDictionary<string, Setting>> ByName = new(() => Registered.ToDictionary(s => s.Name, StringComparer.Ordinal));

    private static List<Setting>? registered;

    private Setting(string name, string meaning, SettingForm form)
    {
        Name = name;
        Meaning = meaning;
        Form = form;
        Registered.Add(this);
    }

    /// <summary>All settings in the vocabulary's order.</summary>
    public static IReadOnlyList<Setting> All => Registered;

    /// <summary>The setting's name, such as <c>motor-rated-power</c>.</summary>
    public string Name { get; }

    /// <summary>What exactly is meant.</summary>
    public string Meaning { get; }

    /// <summary>The form of its values.</summary>
    public SettingForm Form { get; }

    // Static properties of the other part register themselves here while the type initialises, whatever the order of the files.
    private static List<Setting> Registered => registered ??= [];

    /// <summary>The setting of a name, or null.</summary>
    public static Setting? Find(string name) => ByName.Value.GetValueOrDefault(name);

    /// <summary>Two settings are the same when their names are.</summary>
    public bool Equals(Setting? other) => other is not null && string.Equals(Name, other.Name, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Name);

    /// <inheritdoc/>
    public override string ToString() => Name;

    private static Setting Numeric(string name, string meaning, string unit, double siPerUnit) =>
        new(name, meaning, new SettingForm.Numeric(unit, siPerUnit));

    private static Setting OneOf(string name, string meaning, params string[] choices) =>
        new(name, meaning, new SettingForm.OneOf(choices));
}
