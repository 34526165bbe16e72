using Runup.Quantities;

namespace Runup.Engineering.Motors;

/// <summary>How the power that crosses the air gap is shared between the rotor's bars and its shaft.</summary>
/// <remarks>
/// P_airgap : P_rotor copper : P_developed = 1 : s : 1 − s; T_developed = P_airgap/ω_s. Powers in W, s slip, ω_s synchronous speed (rad/s).
/// Validity: steady state, any slip. No assumption beside the rotor core's loss being nil.
/// </remarks>
/// <param name="AirGap">Power into the rotor.</param>
/// <param name="Slip">Slip.</param>
[Source("fitzgerald", "section 6.3, power across the air gap")]
public sealed record PowerFlow(ElectricalPower AirGap, Slip Slip)
{
    /// <summary>Loss in the rotor's bars.</summary>
    public ElectricalPower RotorCopper => ElectricalPower.FromWatts(Slip.Ratio * AirGap.Watts);

    /// <summary>Mechanical power before friction and stray loss.</summary>
    public ShaftPower Developed => ShaftPower.FromWatts((1 - Slip.Ratio) * AirGap.Watts);

    /// <summary>Torque at the air gap.</summary>
    public Torque DevelopedTorque(SynchronousSpeed synchronous) => Torque.FromNewtonMetres(AirGap.Watts / synchronous.RadiansPerSecond);

    /// <summary>From the electrical input less what is lost in the stator.</summary>
    public static PowerFlow FromInput(ElectricalPower input, ElectricalPower statorLosses, Slip slip) =>
        new(ElectricalPower.FromWatts(input.Watts - statorLosses.Watts), slip);

    /// <summary>From the mechanical power before friction and stray loss.</summary>
    public static PowerFlow FromDeveloped(ShaftPower developed, Slip slip) =>
        new(ElectricalPower.FromWatts(developed.Watts / (1 - slip.Ratio)), slip);

    /// <summary>From the power into the rotor and what its bars lose.</summary>
    public static PowerFlow FromRotorCopper(ElectricalPower airGap, ElectricalPower rotorCopper) =>
        new(airGap, Slip.FromRatio(rotorCopper.Watts / airGap.Watts));
}
