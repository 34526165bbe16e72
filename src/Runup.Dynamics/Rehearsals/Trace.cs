namespace Runup.Dynamics;

/// <summary>Readings of a run against time, in columns of equal length, kept in chunks.</summary>
public sealed class Trace
{
    private readonly List<TraceChunk> chunks = [];

    internal Trace()
    {
    }

    /// <summary>What it is kept in; all but the last are full.</summary>
    public IReadOnlyList<TraceChunk> Chunks => chunks;

    /// <summary>Number of samples.</summary>
    public int Count => TimeS.Count;

    /// <summary>Time, in s.</summary>
    public IReadOnlyList<double> TimeS => Column(TraceQuantity.TimeS);

    /// <summary>Output frequency, in Hz.</summary>
    public IReadOnlyList<double> FrequencyHz => Column(TraceQuantity.FrequencyHz);

    /// <summary>Speed of the motor's shaft, in rpm.</summary>
    public IReadOnlyList<double> SpeedRpm => Column(TraceQuantity.SpeedRpm);

    /// <summary>Output current, in A.</summary>
    public IReadOnlyList<double> CurrentA => Column(TraceQuantity.CurrentA);

    /// <summary>Output voltage, in V.</summary>
    public IReadOnlyList<double> VoltageV => Column(TraceQuantity.VoltageV);

    /// <summary>DC bus, in V.</summary>
    public IReadOnlyList<double> DcBusV => Column(TraceQuantity.DcBusV);

    /// <summary>Developed torque, in N·m.</summary>
    public IReadOnlyList<double> TorqueNm => Column(TraceQuantity.TorqueNm);

    /// <summary>Thermal state of the motor, in %; 100 trips.</summary>
    public IReadOnlyList<double> MotorThermalPercent => Column(TraceQuantity.MotorThermalPercent);

    internal void Add(in DriveReadings at)
    {
        if (chunks.Count == 0 || chunks[^1].IsFull)
        {
            chunks.Add(new TraceChunk());
        }

        chunks[^1].Add(at);
    }

    private TraceColumn Column(TraceQuantity quantity) => new(chunks, quantity);
}
