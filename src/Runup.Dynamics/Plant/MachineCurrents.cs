using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Plant;

/// <summary>Currents of the machine, peak values of the phase on two axes, and its magnetizing flux.</summary>
internal struct MachineCurrents<T>
    where T : struct, ILanes<T>
{
    internal T QsA;
    internal T DsA;
    internal T QrA;
    internal T DrA;
    internal T FluxQmWb;
    internal T FluxDmWb;

    /// <summary>Square of the stator current's amplitude, in A².</summary>
    internal readonly T StatorSquareA2
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => (QsA * QsA) + (DsA * DsA);
    }

    /// <summary>Stator current as the rms value of a sine of this amplitude, in A.</summary>
    internal readonly T StatorRmsA
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => T.Sqrt(0.5 * StatorSquareA2);
    }
}

/// <summary>Complex share by which the leakage-weighted fluxes make the magnetizing flux, in H.</summary>
internal readonly record struct MagnetizingShare<T>(T Real, T Imaginary)
    where T : struct, ILanes<T>;
