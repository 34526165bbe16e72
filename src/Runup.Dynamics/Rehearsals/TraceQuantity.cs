namespace Runup.Dynamics;

/// <summary>What a trace holds; each name ends in its unit.</summary>
public enum TraceQuantity
{
    /// <summary>Time.</summary>
    TimeS,

    /// <summary>Output frequency.</summary>
    FrequencyHz,

    /// <summary>Speed of the motor's shaft.</summary>
    SpeedRpm,

    /// <summary>Output current.</summary>
    CurrentA,

    /// <summary>Output voltage.</summary>
    VoltageV,

    /// <summary>DC bus.</summary>
    DcBusV,

    /// <summary>Developed torque.</summary>
    TorqueNm,

    /// <summary>Thermal state of the motor; 100 trips.</summary>
    MotorThermalPercent,
}
