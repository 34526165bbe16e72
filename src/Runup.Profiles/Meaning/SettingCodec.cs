using Runup.Settings;

namespace Runup.Profiles;

/// <summary>A parameter's value to settings and back.</summary>
internal static class SettingCodec
{
    /// <summary>The settings that a value says; none where it has no counterpart.</summary>
    internal static IEnumerable<(Setting Setting, SettingValue Value)> Decode(Surroundings at, Parameter parameter, long raw)
    {
        switch (parameter.Meaning)
        {
            case Meaning.Choice choice when choice.Counterparts.TryGetValue(raw, out var values) && values is not null:
                for (var i = 0; i < values.Count; i++)
                {
                    yield return (choice.Chosen[i], values[i]);
                }

                break;

            case Meaning.Bits bits:
                foreach (var field in bits.Fields)
                {
                    if (field.Says.TryGetValue(field.In(raw), out var says) && says is not null)
                    {
                        yield return (field.Setting, says);
                    }
                }

                break;

            case Meaning.Quantity quantity when quantity.Specials.TryGetValue(raw, out var special):
                if (special is not null)
                {
                    yield return (quantity.Setting, special);
                }

                break;

            case Meaning.Quantity quantity:
                if (at.Own(parameter, raw) is { } own && ConversionArithmetic.ToSetting(quantity.Conversion, own, at, at.DimensionOf(parameter)) is { } si && double.IsFinite(si))
                {
                    yield return (quantity.Setting, new SettingValue.Number(si));
                }

                break;
        }
    }

    /// <summary>The value that says what the plan wants, while the other parameters hold what surrounds it.</summary>
    internal static Encoding Encode(Surroundings at, Parameter parameter, DriveSize size, SettingSet plan) => parameter.Meaning switch
    {
        Meaning.Choice choice => ChoiceEncoding.Encode(at, parameter, choice, plan),
        Meaning.Bits bits => BitsEncoding.Encode(at, parameter, bits, plan),
        Meaning.Quantity quantity when plan[quantity.Setting] is { } wanted => QuantityEncoding.Encode(at, parameter, size, quantity, wanted),
        _ => throw new ArgumentException($"The plan says nothing about parameter {parameter.Number}.", nameof(plan)),
    };
}

/// <summary>What became of a setting when it was put into a parameter.</summary>
internal abstract record Encoding
{
    private Encoding()
    {
    }

    /// <summary>A value, and how well it fits.</summary>
    internal sealed record Value(long Raw, Mapping Mapping, Fit Fit, string? Note) : Encoding;

    /// <summary>No value without a person's decision.</summary>
    internal sealed record Undecided(string Why) : Encoding;
}
