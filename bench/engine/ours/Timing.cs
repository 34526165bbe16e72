using System.Diagnostics;

namespace Runup.Bench.Engine;

/// <summary>Time of a piece of work: the median of many short runs, after tiering has settled.</summary>
internal static class Timing
{
    /// <summary>Microseconds, as the median of <paramref name="rounds"/>.</summary>
    internal static double MedianUs(Action work, int rounds = 31, double warmS = 4)
    {
        var begin = Stopwatch.GetTimestamp();
        while (Stopwatch.GetElapsedTime(begin).TotalSeconds < warmS)
        {
            work();
        }

        var times = new double[rounds];
        for (var i = 0; i < rounds; i++)
        {
            begin = Stopwatch.GetTimestamp();
            work();
            times[i] = Stopwatch.GetElapsedTime(begin).TotalMicroseconds;
        }

        Array.Sort(times);
        return times[rounds / 2];
    }
}
