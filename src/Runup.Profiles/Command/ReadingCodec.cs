using Runup.Quantities;

namespace Runup.Profiles;

/// <summary>Readings to registers and back, as the profile declares it.</summary>
public static class ReadingCodec
{
    /// <summary>Decodes a round of readings.</summary>
    /// <param name="profile">The drive's profile.</param>
    /// <param name="values">What its parameters hold, of which some readings are a part.</param>
    /// <param name="raw">The value read for a parameter, or null where it was not read.</param>
    public static DriveReadings Decode(DriveProfile profile, ParameterValues values, Func<Parameter, long?> raw)
    {
        var at = new Surroundings(profile, null, values);
        var round = new DriveReadings();
        foreach (var reading in profile.Readings)
        {
            if (raw(reading.Parameter) is { } counts)
            {
                round = With(round, profile, reading, counts, Si(at, reading, counts));
            }
        }

        return round;
    }

    /// <summary>The parameters that must be known before every reading can be told: those that a reading is a part of, and what these stand on.</summary>
    public static IReadOnlyList<Parameter> StandOn(DriveProfile profile)
    {
        ArgumentNullException.ThrowIfNull(profile);
        var found = new List<Parameter>();
        var waiting = new Queue<string>(profile.Readings.SelectMany(r => EntryOrder.Before(profile, r.Parameter, r.Conversion)));
        while (waiting.TryDequeue(out var number))
        {
            if (profile.Find(number) is { } parameter && !found.Contains(parameter))
            {
                found.Add(parameter);
                foreach (var deeper in EntryOrder.Before(profile, parameter))
                {
                    waiting.Enqueue(deeper);
                }
            }
        }

        return found;
    }

    /// <summary>Encodes a round of readings; a value beyond a register's reach stands at its end, as a drive shows it.</summary>
    public static IEnumerable<(Parameter Parameter, long Raw)> Encode(DriveProfile profile, ParameterValues values, DriveReadings round)
    {
        var at = new Surroundings(profile, null, values);
        foreach (var reading in profile.Readings)
        {
            if (Raw(at, profile, reading, round) is { } raw)
            {
                yield return (reading.Parameter, raw);
            }
        }
    }

    private static double? Si(Surroundings at, DriveReading reading, long raw) =>
        at.Own(reading.Parameter, raw) is { } own ? ConversionArithmetic.ToSetting(reading.Conversion, own, at, at.DimensionOf(reading.Parameter)) : null;

    private static DriveReadings With(DriveReadings round, DriveProfile profile, DriveReading reading, long raw, double? si) => reading.Kind switch
    {
        ReadingKind.State => round with { State = new StatusWord((ushort)raw).State },
        ReadingKind.LastTrip => round with { LastTrip = profile.Trips.CauseOf(raw), LastTripCode = raw },
        _ when si is null => round,
        ReadingKind.OutputFrequency => round with { OutputFrequency = ElectricalFrequency.FromHertz(Math.Abs(si.Value)) },
        ReadingKind.OutputCurrent => round with { OutputCurrent = LineCurrent.FromAmperes(Math.Abs(si.Value)) },
        ReadingKind.DcBusVoltage => round with { DcBus = DcVoltage.FromVolts(Math.Abs(si.Value)) },
        ReadingKind.OutputVoltage => round with { OutputVoltage = LineVoltage.FromVolts(Math.Abs(si.Value)) },
        ReadingKind.Torque => round with { Torque = Fraction.FromRatio(si.Value) },
        ReadingKind.Speed => round with { Speed = ShaftSpeed.FromRadiansPerSecond(si.Value) },
        _ => throw new InvalidOperationException("Every reading is told apart."),
    };

    private static long? Raw(Surroundings at, DriveProfile profile, DriveReading reading, DriveReadings round)
    {
        double? si = reading.Kind switch
        {
            ReadingKind.State => round.State is { } state ? StatusWord.Of(state).Bits : null,
            ReadingKind.LastTrip => round.LastTrip is { } cause ? profile.Trips.CodeOf(cause) : null,
            ReadingKind.OutputFrequency => round.OutputFrequency?.Hertz,
            ReadingKind.OutputCurrent => round.OutputCurrent?.Amperes,
            ReadingKind.DcBusVoltage => round.DcBus?.Volts,
            ReadingKind.OutputVoltage => round.OutputVoltage?.Volts,
            ReadingKind.Torque => round.Torque?.Ratio,
            ReadingKind.Speed => round.Speed?.RadiansPerSecond,
            _ => throw new InvalidOperationException("Every reading is told apart."),
        };
        if (si is not { } value)
        {
            return null;
        }

        if (reading.Kind is ReadingKind.State or ReadingKind.LastTrip)
        {
            return (long)value;
        }

        return ConversionArithmetic.ToOwn(reading.Conversion, value, at, at.DimensionOf(reading.Parameter)) is { } own && at.Counts(reading.Parameter, own) is { } counts
            ? (long)Math.Clamp(Math.Round(counts, MidpointRounding.AwayFromZero), Least(reading.Parameter), Most(reading.Parameter))
            : null;
    }

    private static decimal Least(Parameter p) => (p.Width, p.Signed) switch { (_, false) => 0, (16, _) => short.MinValue, _ => int.MinValue };

    private static decimal Most(Parameter p) => (p.Width, p.Signed) switch { (16, false) => ushort.MaxValue, (16, true) => short.MaxValue, (_, false) => uint.MaxValue, _ => int.MaxValue };
}
