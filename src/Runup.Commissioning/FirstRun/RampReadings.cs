namespace Runup.Commissioning.FirstRun;

/// <summary>The readings of a run-up and stop: name, unit, and what is expected of each.</summary>
internal static class RampReadings
{
    public static IReadOnlyList<(RampReading Reading, string Name, string Unit, Func<RampPrediction?, Expected> Expected)> All { get; } =
    [
        (RampReading.PeakCurrent, "highest output current", "A", p => p?.PeakCurrent ?? Expected.Nothing),
        (RampReading.PeakDcBus, "highest DC bus voltage", "V", p => p?.PeakDcBus ?? Expected.Nothing),
        (RampReading.TimeToSpeed, "time to speed", "s", p => p?.TimeToSpeed ?? Expected.Nothing),
        (RampReading.TimeToStop, "time to stop", "s", p => p?.TimeToStop ?? Expected.Nothing),
    ];
}

/// <summary>A reading of a run-up and stop.</summary>
internal enum RampReading
{
    /// <summary>Highest output current.</summary>
    PeakCurrent,

    /// <summary>Highest voltage of the DC bus.</summary>
    PeakDcBus,

    /// <summary>From the run command to the frequency asked for.</summary>
    TimeToSpeed,

    /// <summary>From the stop command to standstill.</summary>
    TimeToStop,
}
