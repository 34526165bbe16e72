namespace Runup.Profiles;

/// <summary>What bounds a parameter, and what it holds from the factory, where that depends on other parameters.</summary>
internal static class Limits
{
    /// <summary>The range that a parameter has while the others hold what surrounds it: the row's or the size's, narrowed.</summary>
    internal static ParameterRange Range(Surroundings at, Parameter parameter, DriveSize size)
    {
        var widest = parameter.Range(size);
        if (parameter is { NotBelow: null, NotAbove: null } || parameter.Form is not ParameterForm.Numeric form)
        {
            return widest;
        }

        var low = parameter.NotBelow is { } below && Value(at, parameter, below, decimal.Ceiling) is { } least ? Math.Clamp(OnStep(least, widest, form, up: true), widest.Low, widest.High) : widest.Low;
        var high = parameter.NotAbove is { } above && Value(at, parameter, above, decimal.Floor) is { } most ? Math.Clamp(OnStep(most, widest, form, up: false), widest.Low, widest.High) : widest.High;

        // Two limits that cross leave one value, not none: a drive always shows something.
        return new(low, Math.Max(low, high));
    }

    /// <summary>What a parameter holds from the factory, or takes up again, while the others hold what surrounds it; null where that is not known.</summary>
    internal static long? Default(Surroundings at, Parameter parameter, DriveSize size) =>
        size.DefaultOf(parameter.Number) is { } own ? own
        : parameter.DefaultFrom is { } from ? Value(at, parameter, from, counts => Math.Round(counts, MidpointRounding.AwayFromZero))
        : parameter.Default;

    private static long? Value(Surroundings at, Parameter parameter, Dependent dependent, Func<decimal, decimal> round) => dependent switch
    {
        Dependent.ByChoice by => at.Values[by.Parameter] is { } chosen && by.Values.TryGetValue(chosen, out var raw) ? raw : null,
        Dependent.Times times => at.Find(times.Parameter) is { } other && at.Values[times.Parameter] is { } held && at.Own(other, held) is { } own
            && at.Counts(parameter, own * (double)times.Factor) is { } counts
                ? (long)round(decimal.Round(counts, 6))
                : null,
        _ => throw new InvalidOperationException("Every kind of dependence is told apart."),
    };

    private static long OnStep(long raw, ParameterRange range, ParameterForm.Numeric form, bool up)
    {
        var over = (raw - range.Low) % form.Step;
        return over == 0 ? raw : up ? raw - over + (over > 0 ? form.Step : 0) : raw - over - (over < 0 ? form.Step : 0);
    }
}
