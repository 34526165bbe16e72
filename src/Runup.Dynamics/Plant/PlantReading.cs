using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Plant;

/// <summary>What can be measured at the plant at the end of a tick, and its extremes within it.</summary>
internal struct PlantReading<T>
    where T : struct, ILanes<T>
{
    /// <summary>Output current as the rms value of a sine of its amplitude, in A.</summary>
    internal T CurrentA;

    /// <summary>Largest of that within the tick, in A.</summary>
    internal T LargestCurrentA;

    /// <summary>Part of the output current along the axis of the voltage curve, rms, in A.</summary>
    internal T AlongA;

    /// <summary>Part across that axis, rms, in A.</summary>
    internal T AcrossA;

    /// <summary>Output voltage, line to line rms, in V.</summary>
    internal T OutputV;

    /// <summary>Power from inverter to motor, in W; negative flows back.</summary>
    internal T OutputW;

    /// <summary>DC bus, in V.</summary>
    internal T BusV;

    /// <summary>Largest DC bus voltage within the tick, in V.</summary>
    internal T LargestBusV;

    /// <summary>Developed torque, in N·m.</summary>
    internal T TorqueNm;

    /// <summary>Speed of the motor's shaft, in rad/s.</summary>
    internal T SpeedRadPerS;

    /// <summary>Set where the chopper was on at some time within the tick.</summary>
    internal T ChopperOn;

    /// <summary>For which part of the tick the chopper was on.</summary>
    internal T ChopperShare;

    /// <summary>Ripple of the DC bus, peak to peak, in V, as the mean current lets expect it.</summary>
    internal T RippleV;

    /// <summary>Energy that the braking resistor took within the tick, in J.</summary>
    internal T ResistorJ;
}
