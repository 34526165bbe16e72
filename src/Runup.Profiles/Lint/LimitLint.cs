using Runup.Quantities;

namespace Runup.Profiles;

/// <summary>Limits and factory values that depend on another parameter must find it, and have a value for all that it can hold.</summary>
internal static class LimitLint
{
    internal static IEnumerable<LintFinding> Check(DriveProfile profile)
    {
        foreach (var parameter in profile.Parameters)
        {
            foreach (var finding in Dependents(parameter).SelectMany(d => Of(profile, parameter, d.Key, d.Dependent)))
            {
                yield return finding;
            }

            if (parameter.Resets && !profile.SetBy(parameter).Any())
            {
                yield return ProfileLint.Caution(parameter.Number, "resets", "no factory value depends on it, so that it resets nothing", $"give what it resets a `default` that depends on `{parameter.Number}`, or leave `resets` out");
            }
        }

        foreach (var parameter in profile.Parameters.Where(p => InCircle(profile, p)))
        {
            yield return ProfileLint.Error(parameter, "default", $"its factory value depends on `{parameter.DefaultFrom!.Parameter}`, and that in the end on it", "a factory value that is given somewhere");
        }
    }

    internal static IEnumerable<(string Key, Dependent Dependent)> Dependents(Parameter parameter)
    {
        foreach (var (key, dependent) in ((string, Dependent?)[])[("not-below", parameter.NotBelow), ("not-above", parameter.NotAbove), ("default", parameter.DefaultFrom)])
        {
            if (dependent is not null)
            {
                yield return (key, dependent);
            }
        }
    }

    private static IEnumerable<LintFinding> Of(DriveProfile profile, Parameter parameter, string key, Dependent dependent)
    {
        if (profile.Find(dependent.Parameter) is not { } other)
        {
            return [ReferenceLint.Unknown(parameter, key, dependent.Parameter)];
        }

        return dependent switch
        {
            _ when other == parameter => [ProfileLint.Error(parameter, key, "it depends on itself", "give the number of another parameter")],
            Dependent.Times => OfTimes(parameter, key, other),
            Dependent.ByChoice by => OfChoices(parameter, key, by, other),
            _ => throw new InvalidOperationException("Every kind of dependence is told apart."),
        };
    }

    private static IEnumerable<LintFinding> OfTimes(Parameter parameter, string key, Parameter other)
    {
        if (Dimensions(parameter) is not { } own || Dimensions(other) is not { } there)
        {
            yield return ProfileLint.Error(parameter, key, $"this and parameter `{other.Number}` must both be numbers in units that are known", "say it for each choice with `chosen-by`, or check the units");
        }
        else if (!own.SetEquals(there))
        {
            yield return ProfileLint.Error(parameter, key, $"it is {string.Join(", ", own.Select(d => d.Name))}, parameter `{other.Number}` {string.Join(", ", there.Select(d => d.Name))}", "a parameter of the same kind");
        }
    }

    private static IEnumerable<LintFinding> OfChoices(Parameter parameter, string key, Dependent.ByChoice by, Parameter other)
    {
        if (other.Form is not ParameterForm.Choices choices)
        {
            yield return ProfileLint.Error(parameter, key, $"parameter `{other.Number}` has no choices", "`{of: ..., times: ...}` for a number that another number decides");
            yield break;
        }

        foreach (var choice in choices.Values.Where(c => !by.Values.ContainsKey(c.Raw)))
        {
            yield return ProfileLint.Error(parameter, key, $"no value for the choice {choice.Raw} (\"{choice.Label}\") of parameter `{other.Number}`", "give a value for each of its choices");
        }

        foreach (var (when, raw) in by.Values)
        {
            if (choices.Values.All(c => c.Raw != when))
            {
                yield return ProfileLint.Error(parameter, key, $"a value for {when}, which parameter `{other.Number}` does not offer", "leave it out");
            }
            else if (key is "default" ? !parameter.Form.Accepts(raw) : parameter.Form is ParameterForm.Numeric form && (raw < form.Low || raw > form.High))
            {
                yield return ProfileLint.Error(parameter, key, $"the value {RangeLint.Shown(parameter, raw)} for {when} is not one of its values", "a value within `low` and `high`, on a step, or one of the choices");
            }
        }
    }

    private static HashSet<Dimension>? Dimensions(Parameter parameter)
    {
        if (parameter.Form is not ParameterForm.Numeric form)
        {
            return null;
        }

        var found = UnitLint.Symbols(form).Select(ProfileUnit.Find).ToList();
        return found.Exists(f => f is null) ? null : [.. found.Select(f => f!.Value.Dimension)];
    }

    private static bool InCircle(DriveProfile profile, Parameter start)
    {
        var at = start;
        for (var i = 0; i < profile.Parameters.Count && at?.DefaultFrom is { } from; i++)
        {
            at = profile.Find(from.Parameter);
            if (at == start)
            {
                // That it depends on itself alone is said above.
                return i > 0;
            }
        }

        return false;
    }
}
