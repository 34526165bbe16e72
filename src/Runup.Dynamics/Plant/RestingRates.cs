using System.Numerics;

namespace Runup.Dynamics.Plant;

/// <summary>Rates of the fluxes in a frame at rest, and what belongs to them.</summary>
/// <param name="Stator">Of the stator's flux, where it has a circuit.</param>
/// <param name="First">Of the first cage's.</param>
/// <param name="Second">Of the second cage's.</param>
/// <param name="StatorA">Current of the stator.</param>
/// <param name="Magnetizing">Flux of the magnetizing branch.</param>
/// <param name="TorqueNm">Developed torque.</param>
internal readonly record struct RestingRates(Complex Stator, Complex First, Complex Second, Complex StatorA, Complex Magnetizing, double TorqueNm);
