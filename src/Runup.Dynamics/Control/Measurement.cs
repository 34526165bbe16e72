using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;
using Runup.Dynamics.Plant;

namespace Runup.Dynamics.Control;

/// <summary>What a drive measures, at its sample time: currents, voltage and bus; the speed only where an encoder is.</summary>
/// <remarks>It looks at the plant's reading where that stands: a copy would cost as much as the whole current limit. So it holds for one sample only.</remarks>
internal readonly ref struct Measurement<T>
    where T : struct, ILanes<T>
{
    private readonly ref readonly PlantReading<T> at;

    internal Measurement(ref readonly PlantReading<T> at, T windingC = default, T heatSinkC = default)
    {
        this.at = ref at;
        WindingC = windingC;
        HeatSinkC = heatSinkC;
    }

    /// <summary>Output current, rms of a sine of the present amplitude.</summary>
    internal T CurrentA => at.CurrentA;

    /// <summary>Largest of that since the sample before.</summary>
    internal T LargestCurrentA => at.LargestCurrentA;

    /// <summary>Part of the current along the axis of the voltage curve.</summary>
    internal T AlongA => at.AlongA;

    /// <summary>Part across it.</summary>
    internal T AcrossA => at.AcrossA;

    /// <summary>Output voltage, line to line, rms.</summary>
    internal T OutputV => at.OutputV;

    /// <summary>Power to the motor; negative flows back.</summary>
    internal T OutputW => at.OutputW;

    /// <summary>DC bus.</summary>
    internal T BusV => at.BusV;

    /// <summary>Largest bus voltage since the sample before.</summary>
    internal T LargestBusV => at.LargestBusV;

    /// <summary>Ripple of the bus, peak to peak.</summary>
    internal T RippleV => at.RippleV;

    /// <summary>Set where the chopper was on since the sample before.</summary>
    internal T ChopperOn => at.ChopperOn;

    /// <summary>For which part of that time.</summary>
    internal T ChopperShare => at.ChopperShare;

    /// <summary>Speed of the motor's shaft; nothing but an encoder may look at it.</summary>
    internal T SpeedRadPerS => at.SpeedRadPerS;

    /// <summary>Temperature at the sensor in the winding.</summary>
    internal T WindingC { get; }

    /// <summary>Temperature of the drive's heat sink.</summary>
    internal T HeatSinkC { get; }

    /// <summary>Current in phase with the voltage, rms, in A.</summary>
    internal T ActiveA
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => T.Choose(T.Less(OutputV, T.Of(1)), default, OutputW / (Math.Sqrt(3) * T.Max(OutputV, T.Of(1))));
    }
}
