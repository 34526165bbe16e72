using Runup.Settings;

namespace Runup.Profiles;

/// <summary>Everything that a row names must be there.</summary>
internal static class ReferenceLint
{
    internal static IEnumerable<LintFinding> Check(DriveProfile profile)
    {
        foreach (var parameter in profile.Parameters)
        {
            foreach (var number in parameter.After.Where(n => profile.Find(n) is null))
            {
                yield return Unknown(parameter, "after", number);
            }

            if (parameter.Form is ParameterForm.Numeric { Unit: ParameterUnit.ChosenBy chosen })
            {
                foreach (var finding in ChosenUnit(profile, parameter, chosen))
                {
                    yield return finding;
                }
            }

            if (parameter.Meaning is Meaning.Quantity quantity)
            {
                foreach (var finding in OfConversion(profile, parameter, quantity.Conversion))
                {
                    yield return finding;
                }
            }
        }
    }

    private static IEnumerable<LintFinding> OfConversion(DriveProfile profile, Parameter parameter, Conversion conversion)
    {
        var key = ConversionNames.Key(conversion);
        foreach (var number in conversion.Reads.Where(n => profile.Find(n) is null))
        {
            yield return Unknown(parameter, key, number);
        }

        if (Whole(conversion) is Basis.SizeCurrent whole && profile.Sizes.FirstOrDefault(s => s.Rating.Overloads.All(o => !string.Equals(o.Name, whole.Cycle, StringComparison.Ordinal))) is { } without)
        {
            yield return ProfileLint.Error(parameter, key, $"size `{without.Name}` has no overload cycle `{whole.Cycle}`", "the name of a cycle that all sizes have");
        }

        if (conversion is Conversion.BelowSynchronous or Conversion.OfRatedSlip)
        {
            foreach (var needed in Slips(profile, conversion).Where(s => profile.Carrying(s).Count == 0))
            {
                yield return ProfileLint.Error(parameter, key, $"no parameter means `{needed.Name}`, without which a slip says no speed", "add its row");
            }
        }

        if (conversion is Conversion.CountedOver or Conversion.SpeedChange or Conversion.ChangeTime && profile.Carrying(Setting.MaximumFrequency).Count == 0)
        {
            yield return ProfileLint.Error(parameter, key, "no parameter means `maximum-frequency`, to which our ramps count", "add the row of the highest frequency");
        }

        if (conversion is Conversion.NoSlipSpeed or Conversion.SpeedChange or Conversion.ChangeTime && profile.Carrying(Setting.MotorPoleCount).Count == 0)
        {
            yield return ProfileLint.Error(parameter, key, "no parameter means `motor-pole-count`, without which a speed is no frequency", "add the row of the poles or pole pairs");
        }

        if (Partner(profile, parameter, conversion) is { } missing)
        {
            yield return ProfileLint.Error(parameter, key, $"parameter `{missing}` does not name this one in turn", "the speed and the time of a ramp name each other with `speed-change-in` and `change-of`");
        }
    }

    private static Basis? Whole(Conversion conversion) => conversion switch
    {
        Conversion.PartOf p => p.Whole,
        Conversion.Absolute a => a.Whole,
        _ => null,
    };

    private static IEnumerable<Setting> Slips(DriveProfile profile, Conversion conversion)
    {
        yield return Setting.MotorPoleCount;
        if (conversion is Conversion.OfRatedSlip)
        {
            yield return Setting.MotorRatedSpeed;
        }

        if (profile.Carrying(Setting.MotorRatedFrequency).Count == 0)
        {
            yield return Setting.BaseFrequency;
        }
    }

    private static string? Partner(DriveProfile profile, Parameter parameter, Conversion conversion)
    {
        var other = conversion switch { Conversion.SpeedChange s => s.Time, Conversion.ChangeTime t => t.Speed, _ => null };
        if (other is null || profile.Find(other) is not { } partner)
        {
            return null;
        }

        var back = (partner.Meaning as Meaning.Quantity)?.Conversion switch
        {
            Conversion.SpeedChange s when conversion is Conversion.ChangeTime => s.Time,
            Conversion.ChangeTime t when conversion is Conversion.SpeedChange => t.Speed,
            _ => null,
        };
        return string.Equals(back, parameter.Number, StringComparison.Ordinal) ? null : other;
    }

    private static IEnumerable<LintFinding> ChosenUnit(DriveProfile profile, Parameter parameter, ParameterUnit.ChosenBy chosen)
    {
        if (profile.Find(chosen.Parameter) is not { } chooser)
        {
            yield return Unknown(parameter, "unit", chosen.Parameter);
        }
        else if (chooser.Form is not ParameterForm.Choices choices)
        {
            yield return ProfileLint.Error(parameter, "unit", $"parameter `{chosen.Parameter}` has no choices", "a unit is chosen by a parameter with choices");
        }
        else
        {
            foreach (var choice in choices.Values.Where(v => chosen.Units.All(u => u.When != v.Raw)))
            {
                yield return ProfileLint.Error(parameter, "unit", $"no unit for the choice {choice.Raw} (\"{choice.Label}\") of parameter `{chosen.Parameter}`", "give a unit for each of its choices");
            }

            foreach (var unit in chosen.Units.Where(u => choices.Values.All(v => v.Raw != u.When)))
            {
                yield return ProfileLint.Error(parameter, "unit", $"a unit for {unit.When}, which parameter `{chosen.Parameter}` does not offer", "leave it out");
            }
        }
    }

    internal static LintFinding Unknown(Parameter parameter, string? key, string number) =>
        ProfileLint.Error(parameter, key, $"there is no parameter `{number}`", "give the number of a parameter of this profile");
}
