using Runup.Quantities;
using Runup.Settings;

namespace Runup.Profiles;

/// <summary>A parameter's unit must be one that is known, and of the dimension of what it means.</summary>
internal static class UnitLint
{
    internal static IEnumerable<LintFinding> Check(DriveProfile profile)
    {
        foreach (var parameter in profile.Parameters)
        {
            foreach (var finding in OfBasis(profile, parameter))
            {
                yield return finding;
            }

            if (parameter.Form is not ParameterForm.Numeric form)
            {
                if (parameter.Meaning is Meaning.Quantity or Meaning.Bits)
                {
                    yield return ProfileLint.Error(parameter, "means", "choices say a number as if they counted", "say with `is` what each choice stands for");
                }

                continue;
            }

            var meaning = parameter.Meaning as Meaning.Quantity;
            foreach (var symbol in Symbols(form))
            {
                if (ProfileUnit.Find(symbol) is not { } unit)
                {
                    yield return meaning is null
                        ? ProfileLint.Caution(parameter.Number, "unit", $"the unit `{symbol}` is not known", "it is shown as it stands, and can't be converted")
                        : ProfileLint.Error(parameter, "unit", $"the unit `{symbol}` is not known", "a unit of the trade, such as A, mA, Hz, rpm, %, kW or hp");
                }
                else if (meaning is not null && Wanted(profile, meaning) is { Length: > 0 } wanted && !wanted.Any(w => Goes(unit.Dimension, w)))
                {
                    yield return ProfileLint.Error(parameter, "unit", $"`{symbol}` is a unit of {unit.Dimension.Name}, but `{meaning.Setting.Name}` needs {string.Join(" or ", wanted.Select(w => w.Name))} here", "check `unit` and `means`, or declare the conversion");
                }
            }
        }
    }

    // What a part is taken of must be what the setting is: no current is a part of a voltage.
    private static IEnumerable<LintFinding> OfBasis(DriveProfile profile, Parameter parameter)
    {
        var (basis, wanted) = parameter.Meaning is Meaning.Quantity { Setting.Form: SettingForm.Numeric form } quantity
            ? quantity.Conversion switch
            {
                Conversion.PartOf p => (p.Whole, ProfileUnit.Find(form.Unit)?.Dimension),
                Conversion.CountedOver c => (c.Frequency, Dimension.Frequency),
                _ => (null, null),
            }
            : (null, null);
        if (basis is not null && wanted is not null && Of(profile, basis) is { } of && !Goes(of, wanted) && !(wanted == Dimension.Frequency && of == Dimension.RotationalSpeed))
        {
            yield return ProfileLint.Error(parameter, ConversionNames.Key(((Meaning.Quantity)parameter.Meaning!).Conversion), $"{basis} is {of.Name}, but `{((Meaning.Quantity)parameter.Meaning).Setting.Name}` needs {wanted.Name} here", "another parameter, or another conversion");
        }
    }

    // A pure number may be printed in per cent or per mille: cos phi 0.80 as 800 per mille.
    private static bool Goes(Dimension unit, Dimension wanted) => unit == wanted || (IsPure(unit) && IsPure(wanted));

    private static bool IsPure(Dimension dimension) => dimension == Dimension.PureNumber || dimension == Dimension.Fraction;

    internal static IEnumerable<string> Symbols(ParameterForm.Numeric form) => form.Unit switch
    {
        ParameterUnit.Fixed f => [f.Symbol],
        ParameterUnit.ChosenBy c => c.Units.Select(u => u.Symbol),
        _ => throw new InvalidOperationException("Every kind of unit is told apart."),
    };

    // The dimensions of which the parameter's own unit must be, so that the conversion arrives at the setting's; none where any will do.
    private static Dimension[] Wanted(DriveProfile profile, Meaning.Quantity meaning)
    {
        var setting = meaning.Setting.Form is SettingForm.Numeric n ? ProfileUnit.Find(n.Unit)?.Dimension : null;
        var wanted = meaning.Conversion switch
        {
            Conversion.Direct or Conversion.CountedOver or Conversion.ChangeTime => setting,
            Conversion.PartOf => Dimension.Fraction,
            Conversion.NoSlipSpeed or Conversion.SpeedChange => Dimension.RotationalSpeed,
            Conversion.Absolute a => Of(profile, a.Whole),
            Conversion.BelowSynchronous or Conversion.OfRatedSlip => null,
            _ => throw new InvalidOperationException("Every conversion is told apart."),
        };
        return meaning.Conversion is Conversion.BelowSynchronous or Conversion.OfRatedSlip ? [Dimension.Frequency, Dimension.RotationalSpeed, Dimension.Fraction] : wanted is null ? [] : [wanted];
    }

    private static Dimension? Of(DriveProfile profile, Basis basis) => basis switch
    {
        Basis.Always always => always.Dimension,
        Basis.SizeCurrent => Dimension.Current,
        Basis.Of of => profile.Find(of.Parameter) is { Form: ParameterForm.Numeric { Unit: ParameterUnit.Fixed f } } ? ProfileUnit.Find(f.Symbol)?.Dimension : null,
        _ => throw new InvalidOperationException("Every basis is told apart."),
    };
}
