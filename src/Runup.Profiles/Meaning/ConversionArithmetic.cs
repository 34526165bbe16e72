using Runup.Quantities;

namespace Runup.Profiles;

/// <summary>The arithmetic of the declared conversions, both ways, in SI; null where another parameter that it needs is not known or zero.</summary>
internal static class ConversionArithmetic
{
    /// <summary>The setting's number.</summary>
    /// <param name="conversion">The conversion.</param>
    /// <param name="own">The parameter's own number.</param>
    /// <param name="at">What surrounds it.</param>
    /// <param name="unit">Dimension of the parameter's unit, by which a slip tells how it is stated.</param>
    internal static double? ToSetting(Conversion conversion, double own, Surroundings at, Dimension? unit) => conversion switch
    {
        Conversion.Direct => own,
        Conversion.CountedOver c => own * at.MaximumFrequency / NotZero(at.Of(c.Frequency)),
        Conversion.PartOf p => own * at.Of(p.Whole),
        Conversion.Absolute a => own / NotZero(at.Of(a.Whole)),
        Conversion.NoSlipSpeed => Frequency(own, at),
        Conversion.BelowSynchronous => Shaft(at.RatedFrequency - SlipFrequency(own, at, unit), at),
        Conversion.OfRatedSlip => SlipFrequency(own, at, unit) / NotZero(at.RatedSlip),
        Conversion.SpeedChange s => at.Of(s.Time) * at.MaximumFrequency / NotZero(Frequency(own, at)),
        Conversion.ChangeTime t => own * at.MaximumFrequency / NotZero(at.Of(t.Speed)),
        _ => throw new InvalidOperationException("Every conversion is told apart."),
    };

    /// <summary>The parameter's own number; parameters as above.</summary>
    internal static double? ToOwn(Conversion conversion, double setting, Surroundings at, Dimension? unit) => conversion switch
    {
        Conversion.Direct => setting,
        Conversion.CountedOver c => setting * at.Of(c.Frequency) / NotZero(at.MaximumFrequency),
        Conversion.PartOf p => setting / NotZero(at.Of(p.Whole)),
        Conversion.Absolute a => setting * at.Of(a.Whole),
        Conversion.NoSlipSpeed => Shaft(setting, at),
        Conversion.BelowSynchronous => Slip(at.RatedFrequency - Frequency(setting, at), at, unit),
        Conversion.OfRatedSlip => Slip(setting * at.RatedSlip, at, unit),
        Conversion.SpeedChange s => Shaft(at.MaximumFrequency, at) * at.Of(s.Time) / NotZero(setting),
        Conversion.ChangeTime t => setting * at.Of(t.Speed) / NotZero(at.MaximumFrequency),
        _ => throw new InvalidOperationException("Every conversion is told apart."),
    };

    /// <summary>Frequency of a field that turns with a shaft: f = p · n.</summary>
    internal static double? Frequency(double? shaft, Surroundings at) => shaft * at.Pairs / (2 * Math.PI);

    /// <summary>The shaft that turns with a field: n = f / p.</summary>
    private static double? Shaft(double? frequency, Surroundings at) => frequency * 2 * Math.PI / NotZero(at.Pairs);

    private static double? SlipFrequency(double own, Surroundings at, Dimension? unit) =>
        unit == Dimension.RotationalSpeed ? Frequency(own, at) : unit == Dimension.Frequency ? own : own * at.RatedFrequency;

    private static double? Slip(double? frequency, Surroundings at, Dimension? unit) =>
        unit == Dimension.RotationalSpeed ? Shaft(frequency, at) : unit == Dimension.Frequency ? frequency : frequency / NotZero(at.RatedFrequency);

    private static double? NotZero(double? value) => value == 0 ? null : value;
}
