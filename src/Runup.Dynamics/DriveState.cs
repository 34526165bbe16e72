namespace Runup.Dynamics;

/// <summary>What the drive is doing.</summary>
public enum DriveState
{
    /// <summary>Ready, output off; the shaft may still coast.</summary>
    Stopped,

    /// <summary>Output on, following the frequency asked for.</summary>
    Running,

    /// <summary>Coming to a stop by ramp or DC braking.</summary>
    Stopping,

    /// <summary>Coming to a stop on the quick-stop ramp.</summary>
    QuickStopping,

    /// <summary>Output off after a trip, until it is reset.</summary>
    Tripped,

    /// <summary>No supply, or the DC bus is still being charged.</summary>
    Unpowered,
}
