namespace Runup.Profiles;

/// <summary>How a parameter's number becomes a setting's number, declared in the profile and not coded for a make.</summary>
public abstract record Conversion
{
    private Conversion()
    {
    }

    /// <summary>Parameters that the conversion reads by their number, beside those that it finds by their meaning.</summary>
    public virtual IReadOnlyList<string> Reads => [];

    /// <summary>The same quantity; units alone differ.</summary>
    public sealed record Direct : Conversion
    {
        /// <summary>The one instance that is needed.</summary>
        public static Direct Instance { get; } = new();
    }

    /// <summary>A ramp time counted from 0 to a frequency of the drive's own, where settings count to maximum frequency: t_own = t · f_own / f_max.</summary>
    /// <param name="Frequency">The frequency that the drive counts to.</param>
    public sealed record CountedOver(Basis Frequency) : Conversion
    {
        /// <inheritdoc/>
        public override IReadOnlyList<string> Reads => Frequency.Reads;
    }

    /// <summary>A part of a whole: x = part · whole.</summary>
    /// <param name="Whole">The whole.</param>
    public sealed record PartOf(Basis Whole) : Conversion
    {
        /// <inheritdoc/>
        public override IReadOnlyList<string> Reads => Whole.Reads;
    }

    /// <summary>An absolute value where the setting is a part of it: part = x / whole.</summary>
    /// <param name="Whole">The whole.</param>
    public sealed record Absolute(Basis Whole) : Conversion
    {
        /// <inheritdoc/>
        public override IReadOnlyList<string> Reads => Whole.Reads;
    }

    /// <summary>A speed of the shaft at no slip where the setting is a frequency: f = p · n, with p pole pairs and n in turns per second.</summary>
    public sealed record NoSlipSpeed : Conversion
    {
        /// <summary>The one instance that is needed.</summary>
        public static NoSlipSpeed Instance { get; } = new();
    }

    /// <summary>
    /// Rated slip where the setting is rated speed: n = (f_N − f_s) / p. In Hz the value is f_s itself, in rpm f_s = p · n_s, in per cent
    /// f_s = s · f_N.
    /// </summary>
    public sealed record BelowSynchronous : Conversion
    {
        /// <summary>The one instance that is needed.</summary>
        public static BelowSynchronous Instance { get; } = new();
    }

    /// <summary>A slip in Hz, rpm or per cent, as above, where the setting is a part of rated slip: part = f_s / (f_N − p · n_N).</summary>
    public sealed record OfRatedSlip : Conversion
    {
        /// <summary>The one instance that is needed.</summary>
        public static OfRatedSlip Instance { get; } = new();
    }

    /// <summary>The change of speed of a ramp stated as speed change over time: t = t_own · f_max / (p · n_own).</summary>
    /// <param name="Time">Number of the parameter with the time of the change.</param>
    public sealed record SpeedChange(string Time) : Conversion
    {
        /// <inheritdoc/>
        public override IReadOnlyList<string> Reads => [Time];
    }

    /// <summary>The time of a ramp stated as speed change over time: t = t_own · f_max / (p · n_own).</summary>
    /// <param name="Speed">Number of the parameter with the change of speed.</param>
    public sealed record ChangeTime(string Speed) : Conversion
    {
        /// <inheritdoc/>
        public override IReadOnlyList<string> Reads => [Speed];
    }
}
