namespace Runup.Profiles;

/// <summary>The keys by which a profile's file declares conversions.</summary>
public static class ConversionNames
{
    /// <summary>The key of a conversion; null for the direct one, which has none.</summary>
    public static string? Key(Conversion conversion) => conversion switch
    {
        Conversion.Direct => null,
        Conversion.CountedOver => "counted-over",
        Conversion.PartOf => "part-of",
        Conversion.Absolute => "absolute-of",
        Conversion.NoSlipSpeed => "at-no-slip",
        Conversion.BelowSynchronous => "below-synchronous",
        Conversion.OfRatedSlip => "of-rated-slip",
        Conversion.SpeedChange => "speed-change-in",
        Conversion.ChangeTime => "change-of",
        _ => throw new InvalidOperationException("Every conversion is told apart."),
    };
}
