using System.Numerics;

namespace Runup.Dynamics.Plant;

/// <summary>Rates of the motor's fluxes, and what it does meanwhile to shaft and bus.</summary>
/// <param name="Stator">Of the stator's flux, in V.</param>
/// <param name="First">Of the first cage's.</param>
/// <param name="Second">Of the second cage's.</param>
/// <param name="DrivingNm">Torque on the shaft, less what stray losses brake.</param>
/// <param name="InverterA">Current that the inverter takes from the bus.</param>
internal readonly record struct FieldRates(Complex Stator, Complex First, Complex Second, double DrivingNm, double InverterA);
