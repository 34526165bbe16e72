namespace Runup.Dynamics.Integration;

/// <summary>Rates of a model whose fifth state is the speed of a shaft that friction can hold at zero.</summary>
internal interface IShaftRates : IRates
{
    /// <summary>Lowest driving torque at which the shaft stays held.</summary>
    double HoldLowestNm { get; }

    /// <summary>Highest driving torque at which the shaft stays held.</summary>
    double HoldHighestNm { get; }

    /// <summary>From now on the shaft is held at zero speed.</summary>
    void Hold();

    /// <summary>From now on the shaft moves, or is about to move, in a direction: +1 or −1.</summary>
    void Release(int direction);

    /// <summary>Torque that drives the shaft, at these states.</summary>
    double DrivingTorqueNm(in SixStates states);
}
