namespace Runup.Settings;

/// <summary>Value of a make-independent setting.</summary>
public abstract record SettingValue
{
    private SettingValue()
    {
    }

    /// <summary>A number in SI (a power factor, count or fraction as a pure number; speeds in rad/s).</summary>
    /// <param name="Si">The value.</param>
    public sealed record Number(double Si) : SettingValue;

    /// <summary>One of the setting's choices.</summary>
    /// <param name="Name">The choice.</param>
    public sealed record Choice(string Name) : SettingValue;
}
