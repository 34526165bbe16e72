using Runup.Commissioning.FirstRun;
using Runup.Profiles;

namespace Runup.Commissioning.Tests.FirstRun;

/// <summary>What the drive on the bench shows, within a tenth.</summary>
internal sealed class BenchPredictions : IFirstRunPredictions
{
    /// <summary>A prediction that is wrong by this factor, for tests of readings outside.</summary>
    internal double CurrentFactor { get; set; } = 1;

    public Expected Steady(ReadingKind kind, double frequencyHz, Coupling coupling) => kind switch
    {
        ReadingKind.OutputFrequency => Band(frequencyHz),
        ReadingKind.OutputCurrent => Band(5 * CurrentFactor),
        ReadingKind.DcBusVoltage => Band(561),
        ReadingKind.OutputVoltage => Band(8 * frequencyHz),
        ReadingKind.Speed => Band(30 * frequencyHz),
        ReadingKind.Torque => Band(frequencyHz),
        _ => Expected.Nothing,
    };

    public RampPrediction? Ramp(double frequencyHz, Coupling coupling) => new()
    {
        Columns = ["time_s", "output_frequency_Hz"],
        Rows = [[0, 0], [8, frequencyHz]],
        PeakCurrent = Band(5),
        PeakDcBus = Band(561),
        TimeToSpeed = new(8, 7.5, 8.5),
        TimeToStop = new(12, 11.5, 12.5),
    };

    private static Expected Band(double value) => new(value, value * 0.9, value * 1.1);
}
