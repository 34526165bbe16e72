using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Plant;

/// <summary>The turning mass at the motor's shaft: the one equation of motion, whether the inverter feeds the motor or not.</summary>
/// <remarks>
/// With T the driving torque less the motor's friction and L = T_load/i the load at the gear's other side: x = L + J_machine/i² · α; T = J_motor α + x/η while the motor drives the gear
/// (x with the motion), T = J_motor α + x η_back while the machine does. Which of them it is shows in the sign of T · J_machine/i² + L · J_motor; α is the same on both sides of the change.
/// A closed brake acts on the motor's side, as friction.
/// </remarks>
internal struct Shaft<T>
    where T : struct, ILanes<T>
{
    private readonly IReadOnlyList<ShaftLoad> loads;
    private readonly T motorInertia;
    private readonly T behindGear;
    private readonly T motorDrives;
    private readonly T machineDrives;
    private readonly T bearingsNm;
    private readonly T holdLowestNm;
    private readonly T holdHighestNm;
    private readonly LoadBranch?[] tables;
    private T perInertiaMotorDrives;
    private T perInertiaMachineDrives;
    private T constantNm;
    private T perSpeed;
    private T perSquare;
    private T ownNm;
    private T windage;
    private readonly bool lossless;

    /// <summary>Shafts at rest, one load for each lane.</summary>
    internal Shaft(IReadOnlyList<ShaftLoad> loads)
    {
        this.loads = loads;
        motorInertia = LaneSet.From<T, ShaftLoad>(loads, l => l.MotorInertia);
        behindGear = LaneSet.From<T, ShaftLoad>(loads, l => l.InertiaBehindGear);
        motorDrives = LaneSet.From<T, ShaftLoad>(loads, l => l.MotorDrives);
        machineDrives = LaneSet.From<T, ShaftLoad>(loads, l => l.MachineDrives);
        bearingsNm = LaneSet.From<T, ShaftLoad>(loads, l => l.BearingsNm);
        holdLowestNm = LaneSet.From<T, ShaftLoad>(loads, l => l.HoldLowestNm);
        holdHighestNm = LaneSet.From<T, ShaftLoad>(loads, l => l.HoldHighestNm);
        lossless = loads.All(l => l.MotorDrives == 1 && l.MachineDrives == 1);
        tables = new LoadBranch?[T.Count];
    }

    /// <summary>+1 forward, −1 backward, 0 held.</summary>
    internal T Direction { get; private set; }

    /// <summary>Torque of the mechanical brake while it is closed; zero while it is open.</summary>
    internal T BrakeNm
    {
        readonly get;
        set
        {
            field = value;
            ownNm = Direction * (bearingsNm + value);
        }
    }

    /// <summary>Some load is no polynomial, so that <see cref="FollowTables"/> is needed before each step.</summary>
    internal bool HasTables { get; private set; }

    internal readonly T HoldLowestNm => holdLowestNm - BrakeNm;

    internal readonly T HoldHighestNm => holdHighestNm + BrakeNm;

    /// <summary>From now on one shaft moves in a direction, +1 or −1, or is held at zero speed with 0.</summary>
    internal void Move(int lane, int direction)
    {
        Direction = Direction.With(lane, direction);
        ownNm = Direction * (bearingsNm + BrakeNm);
        var put = loads[Math.Min(lane, loads.Count - 1)];
        windage = windage.With(lane, direction * put.WindagePerSquare);
        var inertia = put.MotorInertia + (put.InertiaBehindGear * put.MotorDrives);
        perInertiaMotorDrives = perInertiaMotorDrives.With(lane, direction == 0 ? 0 : 1 / inertia);
        inertia = put.MotorInertia + (put.InertiaBehindGear * put.MachineDrives);
        perInertiaMachineDrives = perInertiaMachineDrives.With(lane, direction == 0 ? 0 : 1 / inertia);
        var branch = direction < 0 ? put.Backward : put.Forward;
        constantNm = constantNm.With(lane, branch.ConstantNm);
        perSpeed = perSpeed.With(lane, branch.PerSpeed);
        perSquare = perSquare.With(lane, branch.PerSquare);
        tables[lane] = branch.IsTable ? branch : null;
        HasTables = Array.Exists(tables, t => t is not null);
        Follow(lane, 0);
    }

    /// <summary>Takes up the straight piece of each table, where there are any, on which the speeds lie; it stands for the next step.</summary>
    /// <remarks>A call within the equations would drive every state out of its register; speed passes only a part of a piece within a step.</remarks>
    internal void FollowTables(T speedRadPerS)
    {
        if (HasTables)
        {
            FollowEach(speedRadPerS);
        }
    }

    private void FollowEach(T speedRadPerS)
    {
        for (var lane = 0; lane < T.Count; lane++)
        {
            Follow(lane, speedRadPerS[lane]);
        }
    }

    private void Follow(int lane, double speedRadPerS)
    {
        if (tables[lane] is { } table)
        {
            var (constant, slope) = table.PieceAt(speedRadPerS);
            constantNm = constantNm.With(lane, constant);
            perSpeed = perSpeed.With(lane, slope);
        }
    }

    /// <summary>Acceleration under a driving torque, in rad/s².</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal readonly T AccelerationRadPerS2(T drivingNm, T speedRadPerS)
    {
        var torqueNm = T.MultiplySubtractFrom(windage * speedRadPerS, speedRadPerS, drivingNm - ownNm);
        var loadNm = LoadBranch.Polynomial(constantNm, perSpeed, perSquare, speedRadPerS);
        if (lossless)
        {
            return perInertiaMotorDrives * (torqueNm - loadNm);
        }

        var gearCarries = Direction * ((torqueNm * behindGear) + (loadNm * motorInertia));
        return T.Choose(
            T.Less(default, gearCarries),
            perInertiaMotorDrives * (torqueNm - (loadNm * motorDrives)),
            perInertiaMachineDrives * (torqueNm - (loadNm * machineDrives)));
    }
}
