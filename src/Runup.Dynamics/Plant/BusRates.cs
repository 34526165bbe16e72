using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Plant;

/// <summary>What feeds and what loads the DC bus.</summary>
internal struct BusRates<T>
    where T : struct, ILanes<T>
{
    internal Rectifier Rectifier;
    internal double PerCapacitanceF;

    /// <summary>Conductance of what hangs on the bus: the drive's own supply, and the braking resistor while the chopper is on; 1/Ω.</summary>
    internal T ConductanceS;

    /// <summary>Current for what the inverter loses, in A.</summary>
    internal T InverterLossA;

    /// <summary>Rate with which the bus settles at a voltage, in 1/s.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal readonly T SettlingPerS(T busV) => PerCapacitanceF * (Rectifier.FallPerV(busV) + ConductanceS);

    /// <summary>Rate of the bus voltage while the inverter takes a current, in V/s.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal readonly T At(T busV, T inverterA) =>
        T.MultiplyAdd(T.Of(PerCapacitanceF), Rectifier.CurrentA(busV), T.MultiplySubtractFrom(T.Of(PerCapacitanceF), T.MultiplyAdd(ConductanceS, busV, InverterLossA) + inverterA, default));
}
