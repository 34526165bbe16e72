namespace Runup.Profiles;

/// <summary>Tries every value of every parameter through display and registers and back.</summary>
public static class RoundTrip
{
    // Beyond so many values of one parameter the ends, the default and evenly spread values are tried.
    private const int AllUpTo = 10_000;

    /// <summary>As <see cref="Check(DriveProfile, DriveSize)"/> on the first size, and on each other where its range or default is its own.</summary>
    public static IReadOnlyList<LintFinding> Check(DriveProfile profile) =>
    [
        .. RangeLint.Everywhere(profile).SelectMany((size, i) =>
        {
            var values = ParameterValues.Defaults(profile, size);
            return profile.Parameters.Where(p => i == 0 || size.Ranges.ContainsKey(p.Number) || size.DefaultOf(p.Number) is not null || p.DefaultFrom is not null)
                .Select(p => FirstLost(p, size, values)).OfType<LintFinding>();
        }),
    ];

    /// <summary>The parameters with a value that does not come back, each with the first such value; none in a sound profile.</summary>
    public static IReadOnlyList<LintFinding> Check(DriveProfile profile, DriveSize size)
    {
        var values = ParameterValues.Defaults(profile, size);
        return [.. profile.Parameters.Select(p => FirstLost(p, size, values)).OfType<LintFinding>()];
    }

    private static LintFinding? FirstLost(Parameter parameter, DriveSize size, ParameterValues values)
    {
        foreach (var raw in Tried(parameter, size, values[parameter.Number]!.Value))
        {
            if (!RegisterImage.Fits(parameter, raw) || RegisterImage.Raw(parameter, RegisterImage.Words(parameter, raw)) != raw)
            {
                return ProfileLint.Error(parameter, null, $"{raw} counts do not come back from the registers", "check `width` and `signed`");
            }

            var shown = DisplayText.Of(parameter, raw, values);
            if (DisplayText.Read(parameter, shown, values) is not DisplayReading.Value read || read.Raw != raw)
            {
                return ProfileLint.Error(parameter, null, $"{raw} counts, shown as \"{shown}\", do not come back from the display", "check `scale`, `decimals` and the labels");
            }
        }

        return null;
    }

    private static IEnumerable<long> Tried(Parameter parameter, DriveSize size, long factory)
    {
        if (parameter.Form is not ParameterForm.Numeric form)
        {
            return ((ParameterForm.Choices)parameter.Form).Values.Select(v => v.Raw);
        }

        var range = parameter.Range(size);
        var count = ((range.High - range.Low) / form.Step) + 1;
        var stride = Math.Max(1, count / AllUpTo);
        return Spread(range, form.Step * stride).Append(range.High).Append(factory).Concat(form.Specials.Select(s => s.Raw));
    }

    private static IEnumerable<long> Spread(ParameterRange range, long stride)
    {
        for (var raw = range.Low; raw <= range.High; raw += stride)
        {
            yield return raw;
        }
    }
}
