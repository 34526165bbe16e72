using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Control;

/// <summary>Voltage that the control asks for, line to line, rms, along the axis of its voltage curve and across it.</summary>
/// <param name="AlongV">Along, in V.</param>
/// <param name="AcrossV">Across, in V.</param>
internal readonly record struct OutputVoltage<T>(T AlongV, T AcrossV)
    where T : struct, ILanes<T>;
