using Runup.Dynamics.Lanes;
using Runup.Engineering.Motors.Ensemble;

namespace Runup.Dynamics.Batch;

/// <summary>Samples of all members at equal times, and the bands over them.</summary>
internal sealed class EnsembleSamples
{
    private const int Columns = 5;

    private readonly int count;
    private readonly int padded;
    private readonly int members;
    private readonly double stepS;
    private readonly double[] values;

    internal EnsembleSamples(int count, int padded, int members, double stepS)
    {
        (this.count, this.padded, this.members, this.stepS) = (count, padded, members, stepS);
        values = new double[Columns * count * padded];
    }

    /// <summary>Keeps one sample of a group, whose first member has a number.</summary>
    internal void Note<T>(DriveGroup<T> group, int first, int sample)
        where T : struct, ILanes<T>
    {
        ref readonly var at = ref group.Reading;
        group.FrequencyHz.Store(Place(0, sample)[first..]);
        (30 / Math.PI * at.SpeedRadPerS).Store(Place(1, sample)[first..]);
        at.CurrentA.Store(Place(2, sample)[first..]);
        at.BusV.Store(Place(3, sample)[first..]);
        at.TorqueNm.Store(Place(4, sample)[first..]);
    }

    internal BandTrace Bands(ParallelOptions options)
    {
        var bands = new Band<double>[Columns][];
        Parallel.For(0, Columns, options, column =>
        {
            var own = new Band<double>[count];
            for (var sample = 0; sample < count; sample++)
            {
                own[sample] = Band.OfEqual(Place(column, sample)[..members]) ?? new Band<double>(double.NaN, double.NaN, double.NaN);
            }

            bands[column] = own;
        });
        return new BandTrace([.. Enumerable.Range(0, count).Select(i => i * stepS)], bands[0], bands[1], bands[2], bands[3], bands[4]);
    }

    private Span<double> Place(int column, int sample) => values.AsSpan(((column * count) + sample) * padded, padded);
}
