using Runup.Commissioning.Entry;

namespace Runup.Commissioning.FirstRun;

/// <summary>When a motor is taken to stand.</summary>
internal static class Standstill
{
    private const double StillHz = 0.05;
    private const double StillRpm = 5;

    /// <summary>No output and, where the drive tells it, no speed.</summary>
    public static bool Is(DriveStatus status) =>
        !status.Running && (status.OutputFrequencyHz ?? 0) < StillHz && Math.Abs(status.SpeedRpm ?? 0) < StillRpm;
}
