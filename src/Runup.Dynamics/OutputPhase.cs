namespace Runup.Dynamics;

/// <summary>A phase between drive and motor, by the motor's terminal as IEC 60445 names it.</summary>
public enum OutputPhase
{
    /// <summary>First.</summary>
    U,

    /// <summary>Second, a third of a period later in forward motion.</summary>
    V,

    /// <summary>Third.</summary>
    W,
}
