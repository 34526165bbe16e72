using System.Runtime.InteropServices;
using Runup.Quantities;

namespace Runup.Engineering.Motors;

/// <summary>How a motor's own friction and windage go with speed: the one law of steady state and time domain.</summary>
/// <remarks>
/// T(ω) = P_f/ω_N · (1/2 · sign ω + 1/2 · ω|ω|/ω_N²): half of the loss P_f (W) at rated speed ω_N (rad/s) in bearings and seals, whose torque is the same at every speed, half in the
/// fan and windage, whose torque goes with the square of speed. About rated speed the loss then goes with the square of speed. Validity: any speed. Assumption: the halves; common practice, no source.
/// At standstill the bearings hold, and make no torque of their own.
/// </remarks>
[Source("common-practice", "friction loss half in bearings, half in windage")]
[StructLayout(LayoutKind.Auto)]
public readonly struct FrictionLaw
{
    private readonly double bearings_Nm;
    private readonly double windagePerSquare;

    private FrictionLaw(double loss_W, double speed_radPerS)
    {
        bearings_Nm = 0.5 * loss_W / speed_radPerS;
        windagePerSquare = bearings_Nm / (speed_radPerS * speed_radPerS);
    }

    /// <summary>Torque of the bearings and seals, at every speed.</summary>
    public Torque Bearings => Torque.FromNewtonMetres(bearings_Nm);

    /// <summary>The law of a motor; its friction loss holds at its rated speed, or at synchronous speed where it has none.</summary>
    public static FrictionLaw Of(EquivalentCircuit motor) => new(
        motor.FrictionLoss.Watts,
        motor.RatedSpeed?.RadiansPerSecond ?? motor.RatedFrequency.SynchronousSpeed(motor.Poles).RadiansPerSecond);

    /// <summary>The law of a loss in W at a speed in rad/s.</summary>
    internal static FrictionLaw At(double loss_W, double speed_radPerS) => new(loss_W, speed_radPerS);

    /// <summary>Torque of fan and windage at a speed, against the motion.</summary>
    public Torque Windage(ShaftSpeed speed) => Torque.FromNewtonMetres(windagePerSquare * speed.RadiansPerSecond * Math.Abs(speed.RadiansPerSecond));

    internal double Torque_Nm(double speed_radPerS) =>
        (bearings_Nm * Math.Sign(speed_radPerS)) + (windagePerSquare * speed_radPerS * Math.Abs(speed_radPerS));
}
