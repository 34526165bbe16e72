using System.Globalization;

namespace Runup.Bench.Engine;

/// <summary>Two hundred drives at 1 kHz, one after the other on one processor: processor time for a second of each.</summary>
internal static class ManyDrives
{
    private const int Drives = 200;
    private const int TicksInSecond = 1000;

    internal static IEnumerable<string> Seconds()
    {
        var us = Timing.MedianUs(
            () => Enumerable.Range(0, Drives).Select(_ => DriveCase.B.NewDrive()).ToArray(),
            drives =>
            {
                for (var tick = 0; tick < TicksInSecond; tick++)
                {
                    foreach (var drive in drives)
                    {
                        drive.Tick();
                        _ = drive.Readings;
                    }
                }
            },
            rounds: 9);
        yield return string.Create(CultureInfo.InvariantCulture, $"{us * 1e-6:f4}");
    }
}
