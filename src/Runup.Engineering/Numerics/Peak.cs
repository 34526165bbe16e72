namespace Runup.Engineering.Numerics;

/// <summary>The largest value of a function with one maximum.</summary>
internal static class Peak
{
    private const double Golden = 0.618033988749894848;
    private const double SmallestInterval = 1e-9;

    /// <summary>Where a function with one maximum between two ends is largest: golden-section search.</summary>
    internal static double Between(double low, double high, Func<double, double> function)
    {
        var smallest = SmallestInterval * (high - low);
        var left = high - (Golden * (high - low));
        var right = low + (Golden * (high - low));
        var (atLeft, atRight) = (function(left), function(right));
        while (high - low > smallest)
        {
            if (atLeft >= atRight)
            {
                (high, right, atRight) = (right, left, atLeft);
                left = high - (Golden * (high - low));
                atLeft = function(left);
            }
            else
            {
                (low, left, atLeft) = (left, right, atRight);
                right = low + (Golden * (high - low));
                atRight = function(right);
            }
        }

        return (low + high) / 2;
    }
}
