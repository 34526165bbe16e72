using System.Globalization;

namespace Runup.Profiles;

/// <summary>Ranges, defaults, steps and choices of a row must agree with one another and fit the register, on every size.</summary>
internal static class RangeLint
{
    private static readonly string[] Limits = ["low", "high"];

    internal static IEnumerable<LintFinding> Check(DriveProfile profile)
    {
        // Of what depends on nothing that is there the values are not known; that is said elsewhere.
        var unknown = LimitLint.Check(profile).Where(f => f.Severity is LintSeverity.Error).Select(f => f.Parameter).ToHashSet(StringComparer.Ordinal);
        var factories = Everywhere(profile).Select(size => (Size: size, Values: ParameterValues.Defaults(profile, size))).ToList();
        return OfRows(profile).Concat(profile.Parameters.Where(p => !unknown.Contains(p.Number)).SelectMany(p => Defaults(profile, p, factories)));
    }

    private static IEnumerable<LintFinding> OfRows(DriveProfile profile) =>
        profile.Parameters.SelectMany(p => p.Form is ParameterForm.Numeric n ? OfNumber(profile, p, n) : OfChoices(p, (ParameterForm.Choices)p.Form));

    private static IEnumerable<LintFinding> OfNumber(DriveProfile profile, Parameter parameter, ParameterForm.Numeric form)
    {
        if (form.Low > form.High)
        {
            yield return ProfileLint.Error(parameter, "low", $"the lowest value {Shown(form, form.Low)} lies above the highest {Shown(form, form.High)}", "exchange `low` and `high`");
            yield break;
        }

        foreach (var key in Limits)
        {
            var raw = key is "low" ? form.Low : form.High;
            if (!RegisterImage.Fits(parameter, raw))
            {
                yield return ProfileLint.Error(parameter, key, $"{Shown(form, raw)} is {raw} counts, which {parameter.Width} bits{(parameter.Signed ? " with sign" : "")} do not hold", "check `scale`, `width` and `signed`");
            }
        }

        if ((form.High - form.Low) % form.Step != 0)
        {
            yield return ProfileLint.Error(parameter, "step", $"the steps from {Shown(form, form.Low)} do not come out at {Shown(form, form.High)}", "check `step`, `low` and `high`");
        }

        if (decimal.Round(form.Scale.PerCount * form.Step, form.Scale.Decimals) != form.Scale.PerCount * form.Step)
        {
            yield return ProfileLint.Error(parameter, "decimals", "neighbouring values look the same on the display", "more `decimals`, or a `step` that the display can show");
        }

        foreach (var finding in form.Specials.Where(s => !RegisterImage.Fits(parameter, s.Raw)).Select(s => ProfileLint.Error(parameter, "special", $"the register does not hold {s.Raw}", "check `width` and `signed`")))
        {
            yield return finding;
        }

        foreach (var finding in OfSizes(profile, parameter, form))
        {
            yield return finding;
        }
    }

    private static IEnumerable<LintFinding> OfSizes(DriveProfile profile, Parameter parameter, ParameterForm.Numeric form)
    {
        foreach (var size in profile.Sizes)
        {
            if (!size.Ranges.TryGetValue(parameter.Number, out var range))
            {
                continue;
            }

            if (range.Low < form.Low || range.High > form.High)
            {
                yield return ProfileLint.Error(parameter, null, $"the range {Shown(form, range.Low)} to {Shown(form, range.High)} of size `{size.Name}` goes beyond its own, {Shown(form, form.Low)} to {Shown(form, form.High)}", "a size may narrow a range; widen the row's");
            }
        }
    }

    private static IEnumerable<LintFinding> OfChoices(Parameter parameter, ParameterForm.Choices form)
    {
        if (form.Values.Count == 0)
        {
            yield return ProfileLint.Error(parameter, "choices", "no choices", "give at least one");
            yield break;
        }

        foreach (var choice in form.Values.Where(v => !RegisterImage.Fits(parameter, v.Raw)))
        {
            yield return ProfileLint.Error(parameter, "choices", $"the register does not hold {choice.Raw}", "check `width` and `signed`");
        }

        foreach (var twice in form.Values.GroupBy(v => v.Label, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1))
        {
            yield return ProfileLint.Error(parameter, "choices", $"two choices show \"{twice.Key}\"", "choices that a person can tell apart on the display");
        }
    }

    // Once for all sizes, and once more wherever size, region or other parameters make a difference.
    private static IEnumerable<LintFinding> Defaults(DriveProfile profile, Parameter parameter, IReadOnlyList<(DriveSize Size, ParameterValues Values)> factories)
    {
        var seen = new HashSet<(long, ParameterRange)>();
        if (parameter.Form is ParameterForm.Numeric n ? n.Low > n.High : parameter.Form is ParameterForm.Choices { Values.Count: 0 })
        {
            yield break;
        }

        foreach (var (size, factory) in factories)
        {
            var raw = factory[parameter.Number]!.Value;
            if (seen.Add((raw, profile.Range(parameter, size, factory))) && !profile.Accepts(parameter, raw, size, factory))
            {
                var where = size.Region is null ? $"size `{size.Name}`" : $"size `{size.Name}`, region `{size.Region}`";
                yield return ProfileLint.Error(parameter, "default", $"the default {Shown(parameter, raw)} is not one of its values ({where})", "a default within the range, on a step, or one of the choices");
            }
        }
    }

    /// <summary>Every size in every region.</summary>
    internal static IEnumerable<DriveSize> Everywhere(DriveProfile profile) =>
        profile.Regions.Count == 0 ? profile.Sizes : profile.Regions.SelectMany(r => profile.Sizes.Select(s => s with { Region = r }));

    internal static string Shown(Parameter parameter, long raw) =>
        parameter.Form is ParameterForm.Numeric n ? Shown(n, raw) : raw.ToString(CultureInfo.InvariantCulture);

    private static string Shown(ParameterForm.Numeric form, long raw) => form.Scale.Value(raw).ToString(CultureInfo.InvariantCulture);
}
