using Runup.Settings;

namespace Runup.Profiles;

/// <summary>What a parameter says in make-independent settings.</summary>
public abstract record Meaning
{
    private Meaning()
    {
    }

    /// <summary>The settings that it carries: one, or several chosen together.</summary>
    public abstract IReadOnlyList<Setting> Settings { get; }

    /// <summary>A number is a number of one setting.</summary>
    /// <param name="Setting">The setting.</param>
    /// <param name="Conversion">How the one becomes the other.</param>
    /// <param name="Specials">What the parameter's special values say; null where the setting has no such value.</param>
    public sealed record Quantity(Setting Setting, Conversion Conversion, IReadOnlyDictionary<long, SettingValue?> Specials) : Meaning
    {
        /// <inheritdoc/>
        public override IReadOnlyList<Setting> Settings { get; } = [Setting];
    }

    /// <summary>Each named value stands for a value of each of the settings.</summary>
    /// <param name="Chosen">The settings; several where one parameter chooses them together.</param>
    /// <param name="Counterparts">For each value in counts the settings' values in the order of <paramref name="Chosen"/>; null where it has no counterpart.</param>
    public sealed record Choice(IReadOnlyList<Setting> Chosen, IReadOnlyDictionary<long, IReadOnlyList<SettingValue>?> Counterparts) : Meaning
    {
        /// <inheritdoc/>
        public override IReadOnlyList<Setting> Settings => Chosen;
    }

    /// <summary>Bits of one value stand each for a setting of their own; the other bits mean none.</summary>
    /// <param name="Fields">The bits, each with its setting.</param>
    public sealed record Bits(IReadOnlyList<BitField> Fields) : Meaning
    {
        /// <inheritdoc/>
        public override IReadOnlyList<Setting> Settings { get; } = [.. Fields.Select(f => f.Setting)];
    }
}
