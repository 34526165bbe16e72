namespace Runup.Dynamics.Integration;

/// <summary>Right-hand side of six ordinary differential equations that do not name time.</summary>
/// <remarks>Implemented by structs, so that a method of integration is compiled for each model with the model's equations inside.</remarks>
internal interface IRates
{
    void At(
        double x1, double x2, double x3, double x4, double x5, double x6,
        out double d1, out double d2, out double d3, out double d4, out double d5, out double d6);
}
