namespace Runup.Dynamics.Control;

/// <summary>What a drive measures, at its sample time: currents, voltage and bus, never the speed.</summary>
/// <param name="CurrentA">Output current, rms of a sine of the present amplitude.</param>
/// <param name="LargestCurrentA">Largest of that since the sample before.</param>
/// <param name="AlongA">Part of the current along the axis of the voltage curve.</param>
/// <param name="AcrossA">Part across it.</param>
/// <param name="OutputV">Output voltage, line to line, rms.</param>
/// <param name="OutputW">Power to the motor; negative flows back.</param>
/// <param name="BusV">DC bus.</param>
/// <param name="LargestBusV">Largest bus voltage since the sample before.</param>
internal readonly record struct Measurement(
    double CurrentA, double LargestCurrentA, double AlongA, double AcrossA, double OutputV, double OutputW, double BusV, double LargestBusV)
{
    /// <summary>Current in phase with the voltage, rms, in A.</summary>
    internal double ActiveA => OutputV < 1 ? 0 : OutputW / (Math.Sqrt(3) * OutputV);
}
