namespace Runup.Profiles;

/// <summary>Chooses the time of a ramp that is stated as speed change over time: it is free, so that the speed may come out even.</summary>
internal static class SpeedChangeTime
{
    // Steps of the time that are tried until the speed comes out even.
    private const int TriedTimes = 40;

    /// <summary>The shortest time from the ramp on for which the speed, too, is one that the drive can hold; the nearest where none is.</summary>
    internal static double? For(Surroundings at, Parameter parameter, DriveSize size, ParameterForm.Numeric form, Conversion.ChangeTime change, double ramp)
    {
        var range = Limits.Range(at, parameter, size);
        if (at.Find(change.Speed) is not { } speed || at.Counts(parameter, ramp) is not { } counts || at.Own(parameter, range.Low) is null)
        {
            return null;
        }

        var first = Math.Clamp(range.Low + ((long)Math.Ceiling((Math.Clamp(counts, range.Low, range.High) - range.Low) / form.Step) * form.Step), range.Low, range.High);
        var best = first;
        var leastError = double.PositiveInfinity;
        for (var raw = first; raw <= range.High && raw < first + (TriedTimes * form.Step); raw += form.Step)
        {
            if (at.Own(parameter, raw) is not { } time || Error(at, speed, size, time, ramp) is not { } error)
            {
                return null;
            }

            if (error < leastError)
            {
                (best, leastError) = (raw, error);
            }

            if (error < 1e-9)
            {
                break;
            }
        }

        return at.Own(parameter, best);
    }

    private static double? Error(Surroundings at, Parameter speed, DriveSize size, double time, double ramp)
    {
        if (at.MaximumFrequency * 2 * Math.PI / at.Pairs * time / ramp is not { } own || at.Counts(speed, own) is not { } counts)
        {
            return null;
        }

        var nearest = QuantityEncoding.Nearest(counts, (ParameterForm.Numeric)speed.Form, Limits.Range(at, speed, size));
        return (double)Math.Abs((nearest - counts) / Math.Max(1, counts));
    }
}
