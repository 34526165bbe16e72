using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Plant;

/// <summary>The shaft of the detailed plant: one mass as in the plain model, or two with a shaft between them that twists.</summary>
/// <remarks>
/// J_m·dω_m/dt = T − T_fr − τ, J_l·dω_l/dt = τ·η − T_l, τ = K·θ + D·(ω_m − ω_l), dθ/dt = ω_m − ω_l; friction of the motor and a closed brake on the motor's side, stiction on the
/// machine's. Rest and breakaway are taken at the end of the step in which they happen.
/// </remarks>
internal sealed class DetailedShaft
{
    private const double AboutRest = 0.05;

    private readonly ShaftLoad load;
    private readonly ShaftCoupling? coupling;
    private readonly double loadInertia;
    private Shaft<One> single;

    internal DetailedShaft(ShaftLoad load, ShaftCoupling? coupling)
    {
        this.load = load;

        // Without inertia beyond the coupling there is nothing to swing against.
        this.coupling = load.InertiaBehindGear > 0 && load.MotorInertia > 0 ? coupling : null;
        loadInertia = load.InertiaBehindGear;
        single = new Shaft<One>([load]);
    }

    /// <summary>Direction of the machine; 0 where friction holds it.</summary>
    internal int Direction { get; private set; }

    internal double BrakeNm
    {
        get => single.BrakeNm;
        set => single.BrakeNm = value;
    }

    /// <summary>Rate at which the two masses swing against each other, or zero.</summary>
    internal double SwingRate => coupling is { } c ? Math.Sqrt(c.Stiffness_NmPerRad * ((1 / load.MotorInertia) + (1 / loadInertia))) : 0;

    internal double DampingRate => coupling is { } c ? c.Damping_NmsPerRad * ((1 / load.MotorInertia) + (1 / loadInertia)) : 0;

    internal double ShaftNm(in DetailedStates x) => coupling is { } c ? (c.Stiffness_NmPerRad * x.TwistRad) + (c.Damping_NmsPerRad * (x.MotorRadPerS - x.LoadRadPerS)) : 0;

    internal (double Motor, double Load, double Twist) Rates(in DetailedStates x, double torqueNm)
    {
        if (coupling is null)
        {
            single.FollowTables(x.MotorRadPerS);
            double rate = single.AccelerationRadPerS2(torqueNm, x.MotorRadPerS);
            return (rate, rate, 0);
        }

        var shaftNm = ShaftNm(x);
        var ownNm = load.BearingsNm + BrakeNm + (load.WindagePerSquare * x.MotorRadPerS * x.MotorRadPerS);
        var motor = (torqueNm - Opposing(ownNm, x.MotorRadPerS) - shaftNm) / load.MotorInertia;
        var share = shaftNm * x.LoadRadPerS >= 0 ? 1 / load.MotorDrives : 1 / load.MachineDrives;
        var against = Direction switch { > 0 => load.Forward.At(x.LoadRadPerS), < 0 => load.Backward.At(x.LoadRadPerS), _ => shaftNm * share };
        return (motor, ((shaftNm * share) - against) / loadInertia, x.MotorRadPerS - x.LoadRadPerS);
    }

    /// <summary>The machine moves as it did.</summary>
    internal bool GoesOn(in DetailedStates x) => Direction != 0 && Direction * (coupling is null ? x.MotorRadPerS : x.LoadRadPerS) > 0;

    /// <summary>Rest, breakaway and turning round at the end of a step.</summary>
    internal DetailedStates Settled(in DetailedStates x, double torqueNm)
    {
        var driving = coupling is null ? torqueNm : ShaftNm(x);
        var (lowest, highest) = coupling is null
            ? ((double)single.HoldLowestNm, (double)single.HoldHighestNm)
            : (load.HoldLowestNm + load.BearingsNm, load.HoldHighestNm - load.BearingsNm);
        if (GoesOn(x))
        {
            return x;
        }

        var holds = driving >= lowest && driving <= highest;
        Move(holds ? 0 : driving > highest ? 1 : -1);
        return coupling is null ? x with { MotorRadPerS = 0, LoadRadPerS = 0 } : x with { LoadRadPerS = 0 };
    }

    /// <summary>From now on it moves in a direction, or is held with 0.</summary>
    internal void Move(int to)
    {
        Direction = to;
        single.Move(0, to);
    }

    // Friction against the motion; about rest it rises evenly with the speed, over half a turn a minute each way.
    private static double Opposing(double frictionNm, double speedRadPerS) => Math.Clamp(speedRadPerS / AboutRest, -1, 1) * frictionNm;
}
