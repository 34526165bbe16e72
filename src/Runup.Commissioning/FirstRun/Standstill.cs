using Runup.Commissioning.Entry;

namespace Runup.Commissioning.FirstRun;

/// <summary>When a motor is taken to stand.</summary>
internal static class Standstill
{
    private const double StillHz = 0.005;
    private const double StillRpm = 0.5;

    private static readonly TimeSpan Pace = TimeSpan.FromMilliseconds(250);

    /// <summary>No output and, where the drive tells it, no speed.</summary>
    public static bool Is(DriveStatus status) =>
        !status.Running && (status.OutputFrequencyHz ?? 0) < StillHz && Math.Abs(status.SpeedRpm ?? 0) < StillRpm;

    /// <summary>Reads until two readings in a row say standstill; false where they do not in time, or where there is no reading.</summary>
    public static async Task<bool> Seen(IDriveLink link, TimeSpan patience, TimeProvider time, CancellationToken cancellation)
    {
        var from = time.GetTimestamp();
        var still = 0;
        while (still < 2)
        {
            if (time.GetElapsedTime(from) > patience || await link.Status(cancellation) is not LinkReply<DriveStatus>.Answered { Value: var status })
            {
                return false;
            }

            still = Is(status) ? still + 1 : 0;
            await Task.Delay(Pace, time, cancellation);
        }

        return true;
    }
}
