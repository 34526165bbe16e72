using System.Collections;

namespace Runup.Settings;

/// <summary>Values of some settings; immutable.</summary>
public sealed class SettingSet : IEnumerable<KeyValuePair<Setting, SettingValue>>
{
    // Never changed once the set is made. Copied for each change: sets are small, and an immutable map costs more at start than all copies.
    private readonly Dictionary<Setting, SettingValue> values;

    private SettingSet(Dictionary<Setting, SettingValue> values) => this.values = values;

    /// <summary>No settings.</summary>
    public static SettingSet Empty { get; } = new([]);

    /// <summary>How many settings have a value.</summary>
    public int Count => values.Count;

    /// <summary>The value of a setting, or null where it has none.</summary>
    public SettingValue? this[Setting setting] => values.GetValueOrDefault(setting);

    /// <summary>This set with one value more or changed.</summary>
    /// <exception cref="ArgumentException">The value is not of the setting's form.</exception>
    public SettingSet With(Setting setting, SettingValue value)
    {
        var fits = (setting.Form, value) switch
        {
            (SettingForm.Numeric, SettingValue.Number n) => double.IsFinite(n.Si),
            (SettingForm.OneOf choices, SettingValue.Choice c) => choices.Choices.Contains(c.Name, StringComparer.Ordinal),
            _ => false,
        };
        return fits ? new(new Dictionary<Setting, SettingValue>(values) { [setting] = value }) : throw new ArgumentException($"{setting.Name} does not take {value}.", nameof(value));
    }

    /// <summary>This set with a number, in SI.</summary>
    public SettingSet With(Setting setting, double si) => With(setting, new SettingValue.Number(si));

    /// <summary>This set with a choice.</summary>
    public SettingSet With(Setting setting, string choice) => With(setting, new SettingValue.Choice(choice));

    /// <summary>This set overlaid by another, whose values win.</summary>
    public SettingSet With(SettingSet other)
    {
        var both = new Dictionary<Setting, SettingValue>(values);
        foreach (var (setting, value) in other.values)
        {
            both[setting] = value;
        }

        return new(both);
    }

    /// <summary>The number of a setting in SI, or null where it has none.</summary>
    public double? Number(Setting setting) => this[setting] is SettingValue.Number n ? n.Si : null;

    /// <summary>The choice of a setting, or null where it has none.</summary>
    public string? Choice(Setting setting) => this[setting] is SettingValue.Choice c ? c.Name : null;

    /// <inheritdoc/>
    public IEnumerator<KeyValuePair<Setting, SettingValue>> GetEnumerator()
    {
        foreach (var setting in values.Keys.OrderBy(s => s.Name, StringComparer.Ordinal))
        {
            yield return KeyValuePair.Create(setting, values[setting]);
        }
    }

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
