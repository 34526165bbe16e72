using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Control;

/// <summary>Where the rotor's flux points, how large it is, and how fast the rotor turns: what control of flux and torque goes by.</summary>
internal interface IFluxModel<T>
    where T : struct, ILanes<T>
{
    /// <summary>Electrical speed of the rotor, in rad/s.</summary>
    T RotorRadPerS { get; }

    /// <summary>Speed of the frame that turns with the flux, in rad/s.</summary>
    T FrameRadPerS { get; }

    /// <summary>Flux of the rotor along its axis, in Wb.</summary>
    T FluxWb { get; }

    /// <summary>Forgets what it knew of the flux.</summary>
    void Reset(T where);

    /// <summary>Takes over a motor that turns at a frequency with a flux.</summary>
    void Take(T where, T hz, double fluxWb);

    /// <summary>One sample, after a millisecond under a voltage; currents and voltages as peaks of the phase.</summary>
    void Sample(in FluxSample<T> at);
}

/// <summary>What a model of the flux may go by.</summary>
/// <param name="VoltQ">Voltage of the last millisecond along the q axis.</param>
/// <param name="VoltD">The same along the d axis.</param>
/// <param name="CurrentQ">Current now along the q axis.</param>
/// <param name="CurrentD">The same along the d axis.</param>
/// <param name="WantedFluxWb">The flux asked for.</param>
/// <param name="ShaftRadPerS">Speed of the shaft, of use only where an encoder tells it.</param>
internal readonly record struct FluxSample<T>(T VoltQ, T VoltD, T CurrentQ, T CurrentD, T WantedFluxWb, T ShaftRadPerS)
    where T : struct, ILanes<T>;
