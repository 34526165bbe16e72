namespace Runup.Dynamics.Plant;

/// <summary>Currents of the machine, peak values of the phase on two axes, and its magnetizing flux.</summary>
internal struct MachineCurrents
{
    internal double QsA;
    internal double DsA;
    internal double QrA;
    internal double DrA;
    internal double FluxQmWb;
    internal double FluxDmWb;

    /// <summary>Square of the stator current's amplitude, in A².</summary>
    internal readonly double StatorSquareA2 => (QsA * QsA) + (DsA * DsA);

    /// <summary>Stator current as the rms value of a sine of this amplitude, in A.</summary>
    internal readonly double StatorRmsA => Math.Sqrt(0.5 * StatorSquareA2);
}

/// <summary>Flux linkages of the machine, peak values of the phase on two axes.</summary>
internal readonly record struct MachineFluxes(double QsWb, double DsWb, double QrWb, double DrWb);

/// <summary>Complex share by which the leakage-weighted fluxes make the magnetizing flux, in H.</summary>
internal readonly record struct MagnetizingShare(double Real, double Imaginary);
