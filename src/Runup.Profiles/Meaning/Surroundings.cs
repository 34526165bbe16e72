using Runup.Quantities;
using Runup.Settings;

namespace Runup.Profiles;

/// <summary>The other parameters of a drive that a conversion reads, as quantities in SI.</summary>
/// <param name="profile">The drive's profile.</param>
/// <param name="size">Its size; null where nobody knows it, and then nothing can be a part of what the size carries.</param>
/// <param name="values">What its parameters hold.</param>
internal sealed class Surroundings(DriveProfile profile, DriveSize? size, ParameterValues values)
{
    // A conversion may read a parameter that is itself converted; deeper than this is a circle, which the lint names.
    private const int Deepest = 8;
    private int depth;

    internal ParameterValues Values => values;

    /// <summary>These surroundings with one value changed.</summary>
    internal Surroundings With(string number, long raw) => new(profile, size, values.With(number, raw));

    /// <summary>The parameter of a number, or null.</summary>
    internal Parameter? Find(string number) => profile.Find(number);

    /// <summary>The parameter's own quantity in SI of its own unit: what stands on the display times its unit.</summary>
    internal double? Own(Parameter parameter, long raw)
    {
        if (parameter.Form is not ParameterForm.Numeric form)
        {
            return null;
        }

        var (symbol, scale) = DisplayText.UnitOf(form, values);
        return ProfileUnit.Find(symbol) is { } found ? found.Unit.ToSi((double)scale.Value(raw)) : null;
    }

    /// <summary>The counts nearest to an own quantity, before range and step; null where there is no such number.</summary>
    internal decimal? Counts(Parameter parameter, double own)
    {
        if (parameter.Form is not ParameterForm.Numeric form || !double.IsFinite(own))
        {
            return null;
        }

        var (symbol, scale) = DisplayText.UnitOf(form, values);
        if (ProfileUnit.Find(symbol) is not { } found)
        {
            return null;
        }

        // The conversion to decimal keeps 15 digits, which takes off the noise of binary fractions before rounding; no register reaches the ends.
        return (decimal)Math.Clamp(found.Unit.FromSi(own), -1e12, 1e12) / scale.PerCount;
    }

    /// <summary>The quantity of another parameter as its drive holds it, in SI; a speed at no slip as its frequency.</summary>
    internal double? Of(string number)
    {
        if (profile.Find(number) is not { } parameter || values[number] is not { } raw)
        {
            return null;
        }

        return (parameter.Meaning as Meaning.Quantity)?.Conversion switch
        {
            null or Conversion.Direct => Own(parameter, raw),
            Conversion.NoSlipSpeed or Conversion.SpeedChange => Own(parameter, raw) * Pairs / (2 * Math.PI),
            Conversion.ChangeTime => Own(parameter, raw),
            _ => Setting(parameter, raw),
        };
    }

    /// <summary>What a part is a part of, in SI; null where it is not known.</summary>
    internal double? Of(Basis basis) => basis switch
    {
        Basis.Of of => Of(of.Parameter),
        Basis.Always always => always.Si,
        Basis.SizeCurrent current => size?.Rating.Overloads.FirstOrDefault(o => string.Equals(o.Name, current.Cycle, StringComparison.Ordinal))?.Current.Amperes,
        _ => throw new InvalidOperationException("Every basis is told apart."),
    };

    /// <summary>Dimension of the unit that a parameter stands in; null where it has none that is known.</summary>
    internal Dimension? DimensionOf(Parameter parameter) =>
        parameter.Form is ParameterForm.Numeric form ? ProfileUnit.Find(DisplayText.UnitOf(form, values).Symbol)?.Dimension : null;

    /// <summary>Frequency on the motor's plate as the drive holds it; where it has no such row, the base frequency.</summary>
    internal double? RatedFrequency => ByMeaning(profile.Carrying(Runup.Settings.Setting.MotorRatedFrequency).Count > 0 ? Runup.Settings.Setting.MotorRatedFrequency : Runup.Settings.Setting.BaseFrequency);

    /// <summary>Slip on the motor's plate as a frequency: f_N − p · n_N.</summary>
    internal double? RatedSlip => RatedFrequency - ConversionArithmetic.Frequency(ByMeaning(Runup.Settings.Setting.MotorRatedSpeed), this);

    /// <summary>Highest output frequency as the drive holds it.</summary>
    internal double? MaximumFrequency => ByMeaning(Runup.Settings.Setting.MaximumFrequency);

    /// <summary>Pole pairs as the drive holds them.</summary>
    internal double? Pairs => ByMeaning(Runup.Settings.Setting.MotorPoleCount) / 2;

    private double? ByMeaning(Setting setting)
    {
        foreach (var parameter in profile.Carrying(setting))
        {
            if (values[parameter.Number] is { } raw && Setting(parameter, raw, setting) is { } number)
            {
                return number;
            }
        }

        return null;
    }

    private double? Setting(Parameter parameter, long raw) =>
        parameter.Meaning is Meaning.Quantity q ? Setting(parameter, raw, q.Setting) : null;

    private double? Setting(Parameter parameter, long raw, Setting setting)
    {
        if (depth >= Deepest)
        {
            return null;
        }

        depth++;
        try
        {
            foreach (var (decoded, value) in SettingCodec.Decode(this, parameter, raw))
            {
                if (decoded == setting && value is SettingValue.Number number)
                {
                    return number.Si;
                }
            }

            return null;
        }
        finally
        {
            depth--;
        }
    }
}
