using System.Runtime.InteropServices;
using Runup.Quantities;

namespace Runup.Engineering.Motors;

/// <summary>A rotor cage (or the part of deep bars that carries the current at high slip) as one branch: R + jsX at slip s, referred to the stator.</summary>
/// <param name="Resistance">Resistance.</param>
/// <param name="Leakage">Leakage reactance at rated frequency.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct RotorCage(Resistance Resistance, Reactance Leakage);
