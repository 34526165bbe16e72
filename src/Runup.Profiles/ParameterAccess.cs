namespace Runup.Profiles;

/// <summary>When a parameter may be written, and what writing it does.</summary>
public enum ParameterAccess
{
    /// <summary>May be written while the motor runs.</summary>
    AnyTime,

    /// <summary>May be written at standstill only.</summary>
    StoppedOnly,

    /// <summary>A reading; never written.</summary>
    ReadOnly,

    /// <summary>Writing it makes the drive do something once, such as storing; it has no value of its own.</summary>
    Action,

    /// <summary>Commands the motor: command word or reference; never part of a record, a sheet or a restore.</summary>
    Command,
}
