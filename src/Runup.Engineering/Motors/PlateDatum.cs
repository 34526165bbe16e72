namespace Runup.Engineering.Motors;

/// <summary>A value on the plate, as an answer names it.</summary>
public enum PlateDatum
{
    /// <summary>Rated output.</summary>
    Output,

    /// <summary>Rated voltage.</summary>
    Voltage,

    /// <summary>Rated current.</summary>
    Current,

    /// <summary>Rated frequency.</summary>
    Frequency,

    /// <summary>Full-load speed.</summary>
    Speed,

    /// <summary>Number of poles.</summary>
    Poles,

    /// <summary>Power factor.</summary>
    PowerFactor,

    /// <summary>Efficiency.</summary>
    Efficiency,

    /// <summary>Locked-rotor current over rated current.</summary>
    LockedRotorCurrent,

    /// <summary>Code letter.</summary>
    CodeLetter,

    /// <summary>Locked-rotor torque over rated torque.</summary>
    LockedRotorTorque,

    /// <summary>Breakdown torque over rated torque.</summary>
    BreakdownTorque,
}
