namespace Runup.Dynamics.Control;

/// <summary>What the output does.</summary>
internal enum OutputMode
{
    /// <summary>Open.</summary>
    Off,

    /// <summary>Voltage by the curve at the ramp's frequency.</summary>
    Curve,

    /// <summary>Direct current for braking.</summary>
    DirectCurrent,
}
