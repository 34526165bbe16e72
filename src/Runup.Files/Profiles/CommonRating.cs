using Runup.Engineering.Drives;
using Runup.Quantities;

namespace Runup.Files.Profiles;

/// <summary>What sizes of one voltage class have in common; a size adds its currents and its bus.</summary>
internal sealed record CommonRating
{
    internal required (LineVoltage Low, LineVoltage High) Supply { get; init; }

    internal required int Phases { get; init; }

    internal required IReadOnlyList<CommonCycle> Cycles { get; init; }

    internal required CommonCycle Peak { get; init; }

    internal required CommonCycle Overcurrent { get; init; }

    internal required DcVoltage OvervoltageTrip { get; init; }

    internal required DcVoltage OvervoltageControl { get; init; }

    internal required DcVoltage Chopper { get; init; }

    internal required DcVoltage UndervoltageTrip { get; init; }

    internal required IReadOnlyList<(SwitchingFrequency Frequency, Fraction Current)> Switching { get; init; }

    internal required LinearDerating<Temperature> Ambient { get; init; }

    internal required LinearDerating<Length> Altitude { get; init; }

    internal required Duration? RiseTime { get; init; }

    internal required LineCurrent? ShortCircuit { get; init; }

    /// <summary>The rating of a size with its continuous currents in the order of the cycles.</summary>
    internal DriveRating Of(ShaftPower power, Capacitance bus, Resistance? lowest, Fraction choke, LineCurrent[] currents) => new()
    {
        NominalPower = power,
        SupplyVoltage = Supply,
        SupplyPhases = Phases,
        Overloads = [.. Cycles.Select((c, i) => new OverloadCycle(c.Name, currents[i], c.Overload, c.For, c.Every))],
        PeakCurrent = Times(Peak, currents),
        PeakTime = Peak.For,
        OvercurrentTrip = Times(Overcurrent, currents),
        BusCapacitance = bus,
        DcChoke = choke,
        LowestBrakingResistance = lowest,
        OvervoltageTrip = OvervoltageTrip,
        OvervoltageControl = OvervoltageControl,
        ChopperLevel = Chopper,
        UndervoltageTrip = UndervoltageTrip,
        OutputRiseTime = RiseTime,
        ShortCircuitRating = ShortCircuit,
        SwitchingDerating = Switching,
        AmbientDerating = Ambient,
        AltitudeDerating = Altitude,
    };

    private LineCurrent Times(CommonCycle overload, LineCurrent[] currents)
    {
        for (var i = 0; i < currents.Length; i++)
        {
            if (string.Equals(Cycles[i].Name, overload.Name, StringComparison.Ordinal))
            {
                return LineCurrent.FromAmperes(currents[i].Amperes * overload.Overload.Ratio);
            }
        }

        throw new InvalidOperationException("The reader refuses an overload cycle that is not there.");
    }
}

/// <summary>So much of the continuous current of a named cycle, for so long, once in so long; zero where that is not said.</summary>
internal sealed record CommonCycle(string Name, Fraction Overload, Duration For, Duration Every);
