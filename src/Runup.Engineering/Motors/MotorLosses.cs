using Runup.Quantities;

namespace Runup.Engineering.Motors;

/// <summary>Losses of a motor by kind.</summary>
/// <param name="StatorCopper">In the stator winding: 3 I² Rs.</param>
/// <param name="Core">In the core: 3 E² / Rfe.</param>
/// <param name="RotorCopper">In the rotor's bars: s · P_airgap.</param>
/// <param name="Friction">Friction and windage.</param>
/// <param name="Stray">Additional load loss.</param>
public sealed record MotorLosses(
    ElectricalPower StatorCopper,
    ElectricalPower Core,
    ElectricalPower RotorCopper,
    ElectricalPower Friction,
    ElectricalPower Stray)
{
    /// <summary>All of them.</summary>
    public ElectricalPower Total =>
        ElectricalPower.FromWatts(StatorCopper.Watts + Core.Watts + RotorCopper.Watts + Friction.Watts + Stray.Watts);
}
