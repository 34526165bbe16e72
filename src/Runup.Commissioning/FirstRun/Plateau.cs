using Runup.Commissioning.Entry;

namespace Runup.Commissioning.FirstRun;

/// <summary>Steady running at one frequency: reached, settled, and then read for a while.</summary>
internal sealed class Plateau(double frequencyHz)
{
    private const double ReachedHz = 0.1;
    private static readonly TimeSpan Settling = TimeSpan.FromSeconds(2);
    private static readonly TimeSpan Reading = TimeSpan.FromSeconds(1);

    private readonly List<DriveStatus> read = [];

    /// <summary>When the frequency was reached, from the first run command; null before.</summary>
    public TimeSpan? Reached { get; private set; }

    /// <summary>Whether this sample was the last that was needed. A drive that does not tell its output frequency is read from its first sample on.</summary>
    public bool Enough(RunSample sample)
    {
        if (Math.Abs((sample.Status.OutputFrequencyHz ?? frequencyHz) - frequencyHz) > ReachedHz)
        {
            Reached = null;
            read.Clear();
            return false;
        }

        Reached ??= sample.At;
        var since = sample.At - Reached.Value;
        if (since >= Settling)
        {
            read.Add(sample.Status);
        }

        return since >= Settling + Reading;
    }

    /// <summary>The mean of a reading once settled; null where the drive does not offer it.</summary>
    public double? Mean(Func<DriveStatus, double?> reading)
    {
        var values = read.Select(reading).OfType<double>().ToList();
        return values.Count == 0 ? null : values.Average();
    }
}
