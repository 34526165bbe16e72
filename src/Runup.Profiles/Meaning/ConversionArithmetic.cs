namespace Runup.Profiles;

/// <summary>The arithmetic of the declared conversions, both ways, in SI; null where another parameter that it needs is not known or zero.</summary>
internal static class ConversionArithmetic
{
    internal static double? ToSetting(Conversion conversion, double own, Surroundings at) => conversion switch
    {
        Conversion.Direct => own,
        Conversion.CountedOver c => own * at.MaximumFrequency / NotZero(at.Of(c.Frequency)),
        Conversion.PartOf p => own * at.Of(p.Whole),
        Conversion.Absolute a => own / NotZero(at.Of(a.Whole)),
        Conversion.NoSlipSpeed => Frequency(own, at),
        Conversion.SpeedChange s => at.Of(s.Time) * at.MaximumFrequency / NotZero(Frequency(own, at)),
        Conversion.ChangeTime t => own * at.MaximumFrequency / NotZero(at.Of(t.Speed)),
        _ => throw new InvalidOperationException("Every conversion is told apart."),
    };

    internal static double? ToOwn(Conversion conversion, double setting, Surroundings at) => conversion switch
    {
        Conversion.Direct => setting,
        Conversion.CountedOver c => setting * at.Of(c.Frequency) / NotZero(at.MaximumFrequency),
        Conversion.PartOf p => setting / NotZero(at.Of(p.Whole)),
        Conversion.Absolute a => setting * at.Of(a.Whole),
        Conversion.NoSlipSpeed => setting * 2 * Math.PI / NotZero(at.Pairs),
        Conversion.SpeedChange s => at.MaximumFrequency * 2 * Math.PI / NotZero(at.Pairs) * at.Of(s.Time) / NotZero(setting),
        Conversion.ChangeTime t => setting * at.Of(t.Speed) / NotZero(at.MaximumFrequency),
        _ => throw new InvalidOperationException("Every conversion is told apart."),
    };

    private static double? Frequency(double shaft, Surroundings at) => shaft * at.Pairs / (2 * Math.PI);

    private static double? NotZero(double? value) => value == 0 ? null : value;
}
