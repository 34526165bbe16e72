using System.Runtime.CompilerServices;

namespace Runup.Dynamics.Plant;

/// <summary>What feeds and what loads the DC bus.</summary>
internal struct BusRates
{
    internal Rectifier Rectifier;
    internal double PerCapacitanceF;

    /// <summary>Conductance of what hangs on the bus: the drive's own supply, and the braking resistor while the chopper is on; 1/Ω.</summary>
    internal double ConductanceS;

    /// <summary>Power that the inverter loses, in W.</summary>
    internal double InverterLossW;

    /// <summary>Rate of the bus voltage while the inverter takes a current, in V/s.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal readonly double At(double busV, double inverterA) =>
        PerCapacitanceF * (Rectifier.CurrentA(busV) - inverterA - (ConductanceS * busV) - (InverterLossW / Math.Max(busV, 1)));
}
