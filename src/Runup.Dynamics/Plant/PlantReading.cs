namespace Runup.Dynamics.Plant;

/// <summary>What can be measured at the plant at the end of a tick, and its extremes within it.</summary>
internal struct PlantReading
{
    /// <summary>Output current as the rms value of a sine of its amplitude, in A.</summary>
    internal double CurrentA;

    /// <summary>Largest of that within the tick, in A.</summary>
    internal double LargestCurrentA;

    /// <summary>Part of the output current along the axis of the voltage curve, rms, in A.</summary>
    internal double AlongA;

    /// <summary>Part across that axis, rms, in A.</summary>
    internal double AcrossA;

    /// <summary>Output voltage, line to line rms, in V.</summary>
    internal double OutputV;

    /// <summary>Power from inverter to motor, in W; negative flows back.</summary>
    internal double OutputW;

    /// <summary>DC bus, in V.</summary>
    internal double BusV;

    /// <summary>Largest DC bus voltage within the tick, in V.</summary>
    internal double LargestBusV;

    /// <summary>Developed torque, in N·m.</summary>
    internal double TorqueNm;

    /// <summary>Speed of the motor's shaft, in rad/s.</summary>
    internal double SpeedRadPerS;

    /// <summary>The chopper was on at some time within the tick.</summary>
    internal bool ChopperOn;
}
