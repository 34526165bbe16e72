namespace Runup.Commissioning.Survey;

/// <summary>Kinds of motor that are told apart.</summary>
public enum MotorKind
{
    /// <summary>Squirrel-cage induction motor.</summary>
    Induction,

    /// <summary>Permanent-magnet synchronous motor.</summary>
    PermanentMagnet,

    /// <summary>Synchronous reluctance motor.</summary>
    SynchronousReluctance,

    /// <summary>Not known.</summary>
    Unknown,
}
