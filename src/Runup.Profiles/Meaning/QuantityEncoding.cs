using System.Globalization;
using Runup.Settings;

namespace Runup.Profiles;

/// <summary>Puts a number of a setting into a parameter's counts: converted, rounded to the step, held to the range, and said.</summary>
internal static class QuantityEncoding
{
    internal static Encoding Encode(Surroundings at, Parameter parameter, DriveSize size, Meaning.Quantity meaning, SettingValue wanted)
    {
        foreach (var (raw, says) in meaning.Specials)
        {
            if (says is not null && (says == wanted || (says is SettingValue.Number a && wanted is SettingValue.Number b && Fit.Same(a.Si, b.Si))))
            {
                return new Encoding.Value(raw, Mapping.Direct, Fit.Exact.Instance, null);
            }
        }

        if (wanted is not SettingValue.Number number)
        {
            return new Encoding.Undecided("The drive takes a number here.");
        }

        var form = (ParameterForm.Numeric)parameter.Form;
        var mapping = meaning.Conversion is Conversion.Direct ? Mapping.Direct : Mapping.Converted;
        if (Own(at, parameter, size, form, meaning.Conversion, number.Si) is not { } own || at.Counts(parameter, own) is not { } counts)
        {
            return new Encoding.Undecided($"Cannot be worked out: {Missing(meaning.Conversion)} is not known or zero.");
        }

        var nearest = Nearest(counts, form, Limits.Range(at, parameter, size));
        var fit = Judge(at, parameter, form, meaning, number.Si, nearest, counts);
        return new Encoding.Value(nearest, mapping, fit, Said(How(at, meaning.Conversion, number.Si), FitWords.Of(fit, meaning.Setting)));
    }

    internal static long Nearest(decimal counts, ParameterForm.Numeric form, ParameterRange range)
    {
        if (counts <= range.Low)
        {
            return range.Low;
        }

        var steps = Math.Round((Math.Min(counts, range.High) - range.Low) / form.Step, MidpointRounding.AwayFromZero);
        var raw = range.Low + ((long)steps * form.Step);
        return raw <= range.High ? raw : raw - form.Step;
    }

    private static double? Own(Surroundings at, Parameter parameter, DriveSize size, ParameterForm.Numeric form, Conversion conversion, double si) =>
        conversion is Conversion.ChangeTime change ? SpeedChangeTime.For(at, parameter, size, form, change, si) : ConversionArithmetic.ToOwn(conversion, si, at, at.DimensionOf(parameter));

    private static Fit Judge(Surroundings at, Parameter parameter, ParameterForm.Numeric form, Meaning.Quantity meaning, double wanted, long raw, decimal counts)
    {
        var given = SettingCodec.Decode(at.With(parameter.Number, raw), parameter, raw).Select(d => d.Value).OfType<SettingValue.Number>().FirstOrDefault();

        // The speed of a change is entered after its time; only the two together say the ramp.
        if (given is null || meaning.Conversion is Conversion.ChangeTime || Fit.Same(given.Si, wanted))
        {
            return Fit.Exact.Instance;
        }

        // Half a step beyond an end is rounding, not the range.
        return Math.Abs(counts - raw) > form.Step / 2m ? new Fit.OutOfRange(wanted, given.Si) : new Fit.Rounded(wanted, given.Si);
    }

    private static string? Said(string? how, string? fit) => (how, fit) switch
    {
        (null, _) => fit,
        (_, null) => how,
        _ => $"{how}; {fit}",
    };

    private static string Missing(Conversion conversion) => conversion switch
    {
        Conversion.CountedOver c => $"{c.Frequency} or the highest frequency",
        Conversion.PartOf p => $"{p.Whole}",
        Conversion.Absolute a => $"{a.Whole}",
        Conversion.NoSlipSpeed => "the number of poles",
        Conversion.BelowSynchronous => "the motor's frequency or number of poles",
        Conversion.OfRatedSlip => "the motor's frequency, speed or number of poles",
        Conversion.SpeedChange s => $"parameter {s.Time}, the highest frequency or the number of poles",
        Conversion.ChangeTime c => $"parameter {c.Speed}, the highest frequency or the number of poles",
        _ => "its unit",
    };

    private static string To(Surroundings at, Basis frequency) =>
        frequency is Basis.Always ? $"{frequency}" : string.Create(CultureInfo.InvariantCulture, $"{at.Of(frequency):0.##} Hz of {frequency}");

    private static string? How(Surroundings at, Conversion conversion, double wanted)
    {
        var text = CultureInfo.InvariantCulture;
        return conversion switch
        {
            Conversion.CountedOver c => string.Create(text, $"{wanted:0.###} s to {at.MaximumFrequency:0.##} Hz, counted here to the {To(at, c.Frequency)}"),
            Conversion.PartOf p => string.Create(text, $"as a part of {p.Whole}"),
            Conversion.Absolute a => string.Create(text, $"{100 * wanted:0.##} % of {a.Whole}"),
            Conversion.BelowSynchronous => string.Create(text, $"as rated slip beneath the {at.RatedFrequency:0.##} Hz of the field"),
            Conversion.OfRatedSlip => string.Create(text, $"{100 * wanted:0.##} % of the rated slip of {at.RatedSlip:0.##} Hz"),
            Conversion.NoSlipSpeed => string.Create(text, $"{wanted:0.##} Hz as speed at no slip with {2 * at.Pairs:0} poles"),
            Conversion.SpeedChange s => string.Create(text, $"{wanted:0.###} s to {at.MaximumFrequency:0.##} Hz, as change of speed in the time of parameter {s.Time}"),
            Conversion.ChangeTime c => string.Create(text, $"{wanted:0.###} s to {at.MaximumFrequency:0.##} Hz, as time for the change of speed of parameter {c.Speed}"),
            _ => null,
        };
    }
}
