namespace Runup.Dynamics;

/// <summary>Readings of a run against time, in columns of equal length.</summary>
public sealed class Trace
{
    private readonly List<double> timeS = [];
    private readonly List<double> frequencyHz = [];
    private readonly List<double> speedRpm = [];
    private readonly List<double> currentA = [];
    private readonly List<double> voltageV = [];
    private readonly List<double> dcBusV = [];
    private readonly List<double> torqueNm = [];
    private readonly List<double> motorThermalPercent = [];

    internal Trace()
    {
    }

    /// <summary>Number of samples.</summary>
    public int Count => timeS.Count;

    /// <summary>Time, in s.</summary>
    public IReadOnlyList<double> TimeS => timeS;

    /// <summary>Output frequency, in Hz.</summary>
    public IReadOnlyList<double> FrequencyHz => frequencyHz;

    /// <summary>Speed of the motor's shaft, in rpm.</summary>
    public IReadOnlyList<double> SpeedRpm => speedRpm;

    /// <summary>Output current, in A.</summary>
    public IReadOnlyList<double> CurrentA => currentA;

    /// <summary>Output voltage, in V.</summary>
    public IReadOnlyList<double> VoltageV => voltageV;

    /// <summary>DC bus, in V.</summary>
    public IReadOnlyList<double> DcBusV => dcBusV;

    /// <summary>Developed torque, in N·m.</summary>
    public IReadOnlyList<double> TorqueNm => torqueNm;

    /// <summary>Thermal state of the motor, in %; 100 trips.</summary>
    public IReadOnlyList<double> MotorThermalPercent => motorThermalPercent;

    internal void Add(in DriveReadings at)
    {
        timeS.Add(at.TimeS);
        frequencyHz.Add(at.OutputFrequencyHz);
        speedRpm.Add(at.SpeedRpm);
        currentA.Add(at.OutputCurrentA);
        voltageV.Add(at.OutputVoltageV);
        dcBusV.Add(at.DcBusV);
        torqueNm.Add(at.TorqueNm);
        motorThermalPercent.Add(at.MotorThermalPercent);
    }
}
