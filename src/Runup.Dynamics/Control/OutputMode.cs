namespace Runup.Dynamics.Control;

/// <summary>What the output does.</summary>
internal enum OutputMode
{
    /// <summary>Open.</summary>
    Off,

    /// <summary>Voltage by the curve at the ramp's frequency.</summary>
    Curve,

    /// <summary>A low voltage that looks for a motor which already turns.</summary>
    Search,

    /// <summary>Direct current for braking.</summary>
    DirectCurrent,
}
