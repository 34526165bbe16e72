using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Integration;

/// <summary>Rates of a model whose fifth state is the speed of a shaft that friction can hold at zero.</summary>
internal interface IShaftRates<T> : IRates<T>
    where T : struct, ILanes<T>
{
    /// <summary>+1 and −1: the shaft moves, or is about to move, that way; 0: friction holds it.</summary>
    T Direction { get; }

    /// <summary>Lowest driving torque at which the shaft stays held.</summary>
    T HoldLowestNm { get; }

    /// <summary>Highest driving torque at which the shaft stays held.</summary>
    T HoldHighestNm { get; }

    /// <summary>From now on one member's shaft moves in a direction, or is held with 0.</summary>
    void Move(int lane, int direction);

    /// <summary>Torque that drives the shaft, at these states.</summary>
    T DrivingTorqueNm(in SixStates<T> states);
}
