using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Runup.Bench.Engine;

/// <summary>Time of a piece of work: the median of many short runs, after tiering has settled.</summary>
/// <remarks>Processor time of the whole process, so that what else the machine does is not in it; work on several processors counts on each.</remarks>
internal static partial class Timing
{
    private const int ProcessTime = 2;

    /// <summary>Microseconds, as the median of <paramref name="rounds"/>.</summary>
    internal static double MedianUs(Action work, int rounds = 31, double warmS = 3) => MedianUs(() => 0, _ => work(), rounds, warmS);

    /// <summary>The same with what is made anew for each round, outside the measurement.</summary>
    internal static double MedianUs<T>(Func<T> make, Action<T> work, int rounds = 31, double warmS = 3)
    {
        var begin = Stopwatch.GetTimestamp();
        while (Stopwatch.GetElapsedTime(begin).TotalSeconds < warmS)
        {
            work(make());
        }

        var times = new double[rounds];
        for (var i = 0; i < rounds; i++)
        {
            var made = make();
            var at = NowUs();
            work(made);
            times[i] = NowUs() - at;
        }

        Array.Sort(times);
        return times[rounds / 2];
    }

    private static double NowUs() => Clock(ProcessTime, out var time) == 0 ? (time.Seconds * 1e6) + (time.Nanoseconds * 1e-3) : double.NaN;

    [LibraryImport("libc", EntryPoint = "clock_gettime")]
    private static partial int Clock(int clock, out TimeSpec time);

    [StructLayout(LayoutKind.Sequential)]
    private struct TimeSpec
    {
        internal long Seconds;
        internal long Nanoseconds;
    }
}
