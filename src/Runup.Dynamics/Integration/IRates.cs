using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Integration;

/// <summary>Right-hand side of six ordinary differential equations that do not name time, for as many members as there are lanes.</summary>
/// <remarks>Implemented by structs, so that a method of integration is compiled for each model with the model's equations inside.</remarks>
internal interface IRates<T>
    where T : struct, ILanes<T>
{
    void At(
        T x1, T x2, T x3, T x4, T x5, T x6,
        out T d1, out T d2, out T d3, out T d4, out T d5, out T d6);
}
