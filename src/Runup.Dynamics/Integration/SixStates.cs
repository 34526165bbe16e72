namespace Runup.Dynamics.Integration;

/// <summary>Six states of a system of ordinary differential equations; what each means is the model's affair.</summary>
internal struct SixStates
{
    internal double X1;
    internal double X2;
    internal double X3;
    internal double X4;
    internal double X5;
    internal double X6;

    internal readonly bool IsFinite => double.IsFinite(X1 + X2 + X3 + X4 + X5 + X6);
}
