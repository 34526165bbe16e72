namespace Runup.Dynamics;

/// <summary>A piece of a trace: up to <see cref="Length"/> samples in a row, each quantity by itself; what is kept of a run is kept in these, never a row a sample.</summary>
public sealed class TraceChunk
{
    /// <summary>Samples in a chunk that is full: some ten seconds of a rehearsal.</summary>
    public const int Length = 1024;

    private static readonly int Quantities = Enum.GetValues<TraceQuantity>().Length;

    private readonly double[] values = new double[Quantities * Length];

    internal TraceChunk()
    {
    }

    /// <summary>Number of samples.</summary>
    public int Count { get; private set; }

    /// <summary>The samples of a quantity, in its unit.</summary>
    public ReadOnlySpan<double> this[TraceQuantity quantity] => values.AsSpan((int)quantity * Length, Count);

    internal bool IsFull => Count == Length;

    internal void Add(in DriveReadings at)
    {
        Put(TraceQuantity.TimeS, at.TimeS);
        Put(TraceQuantity.FrequencyHz, at.OutputFrequencyHz);
        Put(TraceQuantity.SpeedRpm, at.SpeedRpm);
        Put(TraceQuantity.CurrentA, at.OutputCurrentA);
        Put(TraceQuantity.VoltageV, at.OutputVoltageV);
        Put(TraceQuantity.DcBusV, at.DcBusV);
        Put(TraceQuantity.TorqueNm, at.TorqueNm);
        Put(TraceQuantity.MotorThermalPercent, at.MotorThermalPercent);
        Count++;
    }

    private void Put(TraceQuantity quantity, double value) => values[((int)quantity * Length) + Count] = value;
}
