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
            if (parameter.Form is not ParameterForm.Numeric form)
            {
                if (parameter.Meaning is Meaning.Quantity)
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
                else if (meaning is not null && Wanted(profile, meaning) is { } wanted && !Goes(unit.Dimension, wanted))
                {
                    yield return ProfileLint.Error(parameter, "unit", $"`{symbol}` is a unit of {unit.Dimension.Name}, but `{meaning.Setting.Name}` needs {wanted.Name} here", "check `unit` and `means`, or declare the conversion");
                }
            }
        }
    }

    // A pure number may be printed in per cent or per mille: cos phi 0.80 as 800 per mille.
    private static bool Goes(Dimension unit, Dimension wanted) => unit == wanted || (IsPure(unit) && IsPure(wanted));

    private static bool IsPure(Dimension dimension) => dimension == Dimension.PureNumber || dimension == Dimension.Fraction;

    private static IEnumerable<string> Symbols(ParameterForm.Numeric form) => form.Unit switch
    {
        ParameterUnit.Fixed f => [f.Symbol],
        ParameterUnit.ChosenBy c => c.Units.Select(u => u.Symbol),
        _ => throw new InvalidOperationException("Every kind of unit is told apart."),
    };

    // The dimension that the parameter's own unit must have, so that the conversion arrives at the setting's.
    private static Dimension? Wanted(DriveProfile profile, Meaning.Quantity meaning)
    {
        var setting = meaning.Setting.Form is SettingForm.Numeric n ? ProfileUnit.Find(n.Unit)?.Dimension : null;
        return meaning.Conversion switch
        {
            Conversion.Direct or Conversion.CountedOver or Conversion.ChangeTime => setting,
            Conversion.PartOf => Dimension.Fraction,
            Conversion.NoSlipSpeed or Conversion.SpeedChange => Dimension.RotationalSpeed,
            Conversion.Absolute a => profile.Find(a.Whole) is { Form: ParameterForm.Numeric { Unit: ParameterUnit.Fixed f } } ? ProfileUnit.Find(f.Symbol)?.Dimension : null,
            _ => throw new InvalidOperationException("Every conversion is told apart."),
        };
    }
}
