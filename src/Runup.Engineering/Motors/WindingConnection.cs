namespace Runup.Engineering.Motors;

/// <summary>How the three phases of a stator winding are joined.</summary>
public enum WindingConnection
{
    /// <summary>Star (wye, Y).</summary>
    Star,

    /// <summary>Delta (mesh, Δ).</summary>
    Delta,
}
