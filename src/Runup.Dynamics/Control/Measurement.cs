using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;
using Runup.Dynamics.Plant;

namespace Runup.Dynamics.Control;

/// <summary>What a drive measures, at its sample time: currents, voltage and bus; the speed only where an encoder is.</summary>
/// <param name="CurrentA">Output current, rms of a sine of the present amplitude.</param>
/// <param name="LargestCurrentA">Largest of that since the sample before.</param>
/// <param name="AlongA">Part of the current along the axis of the voltage curve.</param>
/// <param name="AcrossA">Part across it.</param>
/// <param name="OutputV">Output voltage, line to line, rms.</param>
/// <param name="OutputW">Power to the motor; negative flows back.</param>
/// <param name="BusV">DC bus.</param>
/// <param name="LargestBusV">Largest bus voltage since the sample before.</param>
/// <param name="RippleV">Ripple of the bus, peak to peak.</param>
/// <param name="ChopperOn">Set where the chopper was on since the sample before.</param>
/// <param name="ChopperShare">For which part of that time.</param>
/// <param name="SpeedRadPerS">Speed of the motor's shaft; nothing but an encoder may look at it.</param>
/// <param name="WindingC">Temperature at the sensor in the winding.</param>
/// <param name="HeatSinkC">Temperature of the drive's heat sink.</param>
internal readonly record struct Measurement<T>(
    T CurrentA, T LargestCurrentA, T AlongA, T AcrossA, T OutputV, T OutputW, T BusV, T LargestBusV,
    T RippleV, T ChopperOn, T ChopperShare, T SpeedRadPerS, T WindingC = default, T HeatSinkC = default)
    where T : struct, ILanes<T>
{
    /// <summary>What can be measured of the plant.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Measurement<T> Of(in PlantReading<T> at) =>
        new(at.CurrentA, at.LargestCurrentA, at.AlongA, at.AcrossA, at.OutputV, at.OutputW, at.BusV, at.LargestBusV, at.RippleV, at.ChopperOn, at.ChopperShare, at.SpeedRadPerS);

    /// <summary>Current in phase with the voltage, rms, in A.</summary>
    internal T ActiveA => T.Choose(T.Less(OutputV, T.Of(1)), default, OutputW / (Math.Sqrt(3) * T.Max(OutputV, T.Of(1))));
}
