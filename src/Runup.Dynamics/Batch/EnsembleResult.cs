using Runup.Engineering.Motors.Ensemble;
using Runup.Settings;

namespace Runup.Dynamics;

/// <summary>What was seen in the rehearsal of an ensemble.</summary>
/// <param name="Members">Every member, in the order in which the motors were given.</param>
/// <param name="Trace">Bands against time.</param>
public sealed record EnsembleResult(IReadOnlyList<MemberResult> Members, BandTrace Trace)
{
    /// <summary>Band of a figure over the members that have it; null where none has.</summary>
    public Band<double>? BandOf(Func<MemberResult, double?> figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        return Band.OfEqual([.. Members.Select(m => figure(m) ?? double.NaN)]);
    }
}

/// <summary>What was seen of one member.</summary>
/// <param name="PeakCurrentA">Largest output current, rms of a sine of that amplitude, in A.</param>
/// <param name="PeakDcBusV">Largest DC bus voltage, in V.</param>
/// <param name="TimeToSpeedS">From the last start until it ran at the frequency asked for, in s; null if it never did.</param>
/// <param name="TimeToStopS">From the last stop until the shaft stood, in s; null if it never did.</param>
/// <param name="Tripped">Why it tripped; null if it did not.</param>
/// <param name="RanAway">Its numbers ran away: its last readings stand for the rest of the run.</param>
public readonly record struct MemberResult(double PeakCurrentA, double PeakDcBusV, double? TimeToSpeedS, double? TimeToStopS, TripCause? Tripped, bool RanAway);

/// <summary>Bands of readings against time, in columns of equal length.</summary>
/// <param name="TimeS">Time, in s.</param>
/// <param name="FrequencyHz">Output frequency, in Hz.</param>
/// <param name="SpeedRpm">Speed of the motor's shaft, in rpm.</param>
/// <param name="CurrentA">Output current, in A.</param>
/// <param name="DcBusV">DC bus, in V.</param>
/// <param name="TorqueNm">Torque that the motor develops, in N·m.</param>
public sealed record BandTrace(
    IReadOnlyList<double> TimeS,
    IReadOnlyList<Band<double>> FrequencyHz,
    IReadOnlyList<Band<double>> SpeedRpm,
    IReadOnlyList<Band<double>> CurrentA,
    IReadOnlyList<Band<double>> DcBusV,
    IReadOnlyList<Band<double>> TorqueNm);
