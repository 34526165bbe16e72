using Runup.Settings;

namespace Runup.Profiles;

/// <summary>Some bits of a value that choose a setting of their own.</summary>
/// <param name="First">The lowest of them, from 0.</param>
/// <param name="Last">The highest of them.</param>
/// <param name="Setting">The setting that they choose.</param>
/// <param name="Says">What each of their values stands for; null where it has no counterpart.</param>
public sealed record BitField(int First, int Last, Setting Setting, IReadOnlyDictionary<long, SettingValue?> Says)
{
    /// <summary>The highest value that they hold.</summary>
    public long Most => (1L << (Last - First + 1)) - 1;

    /// <summary>Their bits in the value.</summary>
    public long Mask => Most << First;

    /// <summary>What they hold in a value.</summary>
    public long In(long raw) => (raw & Mask) >> First;

    /// <summary>The value with these bits, all others as they are.</summary>
    public long Into(long raw, long bits) => (raw & ~Mask) | ((bits << First) & Mask);

    /// <inheritdoc/>
    public override string ToString() => First == Last ? $"bit {First}" : $"bits {First}-{Last}";
}
