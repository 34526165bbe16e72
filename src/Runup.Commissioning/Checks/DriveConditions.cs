using Runup.Commissioning.Survey;
using Runup.Engineering;
using Runup.Engineering.Drives;
using Runup.Quantities;

namespace Runup.Commissioning.Checks;

/// <summary>Under which conditions the drive works, and what current it has left there.</summary>
public sealed record DriveConditions
{
    /// <summary>The overload cycle in use.</summary>
    public required OverloadCycle Cycle { get; init; }

    /// <summary>Switching frequency.</summary>
    public required SwitchingFrequency Switching { get; init; }

    /// <summary>Air around the drive.</summary>
    public required Temperature Ambient { get; init; }

    /// <summary>Altitude.</summary>
    public required Length Altitude { get; init; }

    /// <summary>The continuous current, or why the maker does not permit it.</summary>
    public required DeratedCurrent Derated { get; init; }

    /// <summary>The continuous current; where the maker does not permit the conditions, that at the nearest permitted ones.</summary>
    public required LineCurrent Continuous { get; init; }

    /// <summary>The current of the overload cycle for its time: continuous current times the cycle's overload, at most what the job names.</summary>
    public required LineCurrent Overload { get; init; }

    /// <summary>What was taken because the job does not say it.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>The conditions of a job on a size.</summary>
    public static DriveConditions Of(Job job, DriveRating rating)
    {
        var assumptions = new List<Assumption>();
        var cycle = CycleOf(job, rating, assumptions);
        var switching = job.Drive.SwitchingFrequency?.Value ?? Assumed(
            FullCurrentFrequency(rating), "switching frequency", f => $"{Said.Number(f.Hertz / 1000)} kHz", "highest at which the drive has its full current, drive profile", assumptions);
        var ambient = job.Place.Ambient?.Value ?? Assumed(
            rating.AmbientDerating.FullUpTo, "ambient temperature", t => Said.Celsius(t.Celsius), "highest at which the drive has its full current, drive profile", assumptions);
        var altitude = job.Place.Altitude?.Value ?? Assumed(
            rating.AltitudeDerating.FullUpTo, "altitude", h => Said.Metres(h.Metres), "highest at which the drive has its full current, drive profile", assumptions);
        var derated = DeratedCurrent.Of(rating, cycle, switching, ambient, altitude);
        var continuous = derated is DeratedCurrent.Permitted permitted ? permitted.Current : AtNearestPermitted(rating, cycle, switching, ambient, altitude);
        var overload_A = continuous.Amperes * cycle.Overload.Ratio;
        return new DriveConditions
        {
            Cycle = cycle,
            Switching = switching,
            Ambient = ambient,
            Altitude = altitude,
            Derated = derated,
            Continuous = continuous,
            Overload = LineCurrent.FromAmperes(Math.Min(overload_A, job.Drive.CurrentLimit?.Value.Amperes ?? double.PositiveInfinity)),
            Assumptions = assumptions,
        };
    }

    private static OverloadCycle CycleOf(Job job, DriveRating rating, List<Assumption> assumptions)
    {
        if (job.Drive.OverloadCycle?.Value is { } name
            && rating.Overloads.FirstOrDefault(cycle => string.Equals(cycle.Name, name, StringComparison.OrdinalIgnoreCase)) is { } named)
        {
            return named;
        }

        var first = rating.Overloads[0];
        assumptions.Add(new("overload cycle", first.Name, "the drive's normal rating, drive profile", false));
        return first;
    }

    private static SwitchingFrequency FullCurrentFrequency(DriveRating rating) =>
        rating.SwitchingDerating.Where(point => point.Current.Ratio >= 1).Select(point => point.Frequency).DefaultIfEmpty(SwitchingFrequency.FromHertz(4000)).Last();

    private static LineCurrent AtNearestPermitted(DriveRating rating, OverloadCycle cycle, SwitchingFrequency switching, Temperature ambient, Length altitude)
    {
        var nearest = DeratedCurrent.Of(
            rating,
            cycle,
            SwitchingFrequency.FromHertz(Math.Min(switching.Hertz, rating.SwitchingDerating.Count == 0 ? double.PositiveInfinity : rating.SwitchingDerating[^1].Frequency.Hertz)),
            Temperature.FromKelvin(Math.Min(ambient.Kelvin, rating.AmbientDerating.Highest.Kelvin)),
            Length.FromMetres(Math.Min(altitude.Metres, rating.AltitudeDerating.Highest.Metres)));
        return nearest is DeratedCurrent.Permitted permitted ? permitted.Current : cycle.Current;
    }

    private static T Assumed<T>(T value, string what, Func<T, string> text, string source, List<Assumption> assumptions)
    {
        assumptions.Add(new(what, text(value), source, false));
        return value;
    }
}
