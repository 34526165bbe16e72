using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Integration;

/// <summary>A method of integration: takes the states over a length of time, however it divides it.</summary>
internal interface IStepper<T>
    where T : struct, ILanes<T>
{
    /// <summary>Advances the states by <paramref name="lengthS"/>.</summary>
    void Step<TRates>(ref TRates rates, ref SixStates<T> states, T lengthS)
        where TRates : struct, IRates<T>;
}
