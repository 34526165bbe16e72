namespace Runup.Profiles;

/// <summary>States of a drive after IEC 61800-7-201.</summary>
public enum PowerState
{
    /// <summary>Not ready to switch on: starting up.</summary>
    NotReadyToSwitchOn,

    /// <summary>Switch on disabled.</summary>
    SwitchOnDisabled,

    /// <summary>Ready to switch on.</summary>
    ReadyToSwitchOn,

    /// <summary>Switched on: power is there, no torque.</summary>
    SwitchedOn,

    /// <summary>Operation enabled: torque, the reference is followed.</summary>
    OperationEnabled,

    /// <summary>Quick stop active.</summary>
    QuickStopActive,

    /// <summary>Fault reaction active.</summary>
    FaultReactionActive,

    /// <summary>Fault.</summary>
    Fault,
}
