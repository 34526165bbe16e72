using Runup.Quantities;

namespace Runup.Commissioning.FirstRun;

/// <summary>That the drive was seen to begin its stop reaction by itself, within the time allowed, when renewals ceased.</summary>
public sealed class BusLossProof
{
    private BusLossProof(TimeSpan seenAfter, TimeSpan beganAfter)
    {
        SeenAfter = seenAfter;
        BeganAfter = beganAfter;
    }

    /// <summary>
    /// The longest time from the last renewal to the beginning of the stop reaction. With the bus time-out of at most 0.4 s,
    /// 0.3 s of hold and 0.2 s of reads it leaves 0.1 s.
    /// </summary>
    public static TimeSpan Allowed { get; } = TimeSpan.FromSeconds(1);

    /// <summary>From the last renewal to the reply that showed the reaction: no later than this it had begun.</summary>
    public TimeSpan SeenAfter { get; }

    /// <summary>From the last renewal to the beginning of the reaction, worked out from the ramp that was read; the same as <see cref="SeenAfter"/> where there is no ramp to read.</summary>
    public TimeSpan BeganAfter { get; }

    /// <summary>The proof; null where it was seen too late.</summary>
    /// <param name="first">Time from the last renewal to the reply that showed the reaction first.</param>
    /// <param name="began">Time to the beginning as worked out, or null.</param>
    internal static BusLossProof? Judge(TimeSpan first, TimeSpan? began) =>
        first > Allowed ? null : new(first, began is { } b && b > TimeSpan.Zero && b < first ? b : first);

    /// <summary>When a ramp began, from two readings on it: t₀ = t₁ − (f₀ − f₁)·(t₂ − t₁)/(f₁ − f₂).</summary>
    /// <param name="steadyHz">f₀, before.</param>
    /// <param name="first">t₁ and f₁.</param>
    /// <param name="second">t₂ and f₂.</param>
    internal static TimeSpan? RampBegan(ElectricalFrequency steadyHz, (TimeSpan At, ElectricalFrequency F) first, (TimeSpan At, ElectricalFrequency F) second)
    {
        var fall = first.F.Hertz - second.F.Hertz;
        return fall > 0 && second.At > first.At ? first.At - ((second.At - first.At) * ((steadyHz.Hertz - first.F.Hertz) / fall)) : null;
    }
}
