using System.Collections;

namespace Runup.Dynamics;

/// <summary>A quantity of a trace over all its chunks.</summary>
internal sealed class TraceColumn(IReadOnlyList<TraceChunk> chunks, TraceQuantity quantity) : IReadOnlyList<double>
{
    public int Count => chunks.Count == 0 ? 0 : ((chunks.Count - 1) * TraceChunk.Length) + chunks[^1].Count;

    public double this[int index] => chunks[index / TraceChunk.Length][quantity][index % TraceChunk.Length];

    public IEnumerator<double> GetEnumerator()
    {
        for (var index = 0; index < Count; index++)
        {
            yield return this[index];
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
