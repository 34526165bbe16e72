namespace Runup.Dynamics;

/// <summary>The largest mean over so many samples on end.</summary>
internal sealed class SlidingMean(int length)
{
    private readonly double[] last = new double[length];
    private int count;
    private double sum;

    /// <summary>The largest so far; zero while there are fewer samples.</summary>
    internal double Largest { get; private set; }

    internal void Add(double value)
    {
        var place = count % length;
        sum += value - last[place];
        last[place] = value;
        count++;
        if (count >= length)
        {
            Largest = Math.Max(Largest, sum / length);
        }
    }
}
