namespace Runup.Profiles;

/// <summary>What one count of a register is worth on the display, and how many decimals the display shows.</summary>
public readonly record struct DisplayScale
{
    /// <summary>Makes a scale.</summary>
    /// <param name="perCount">Display value of one count; more than zero.</param>
    /// <param name="decimals">Decimals on the display.</param>
    /// <exception cref="ArgumentOutOfRangeException">The scale is not positive, or the decimals are not 0 to 9.</exception>
    public DisplayScale(decimal perCount, int decimals)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(perCount);
        ArgumentOutOfRangeException.ThrowIfNegative(decimals);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(decimals, 9);
        PerCount = perCount;
        Decimals = decimals;
    }

    /// <summary>Display value of one count. <c>default</c> is no scale and has zero here.</summary>
    public decimal PerCount { get; }

    /// <summary>Decimals on the display.</summary>
    public int Decimals { get; }

    /// <summary>The scale whose display shows as many decimals as one count has: 0.01 shows two.</summary>
    public static DisplayScale Of(decimal perCount)
    {
        var decimals = 0;
        while (decimals < 9 && decimal.Round(perCount, decimals) != perCount)
        {
            decimals++;
        }

        return new(perCount, decimals);
    }

    /// <summary>The display's value of a number of counts.</summary>
    public decimal Value(long raw) => raw * PerCount;

    /// <summary>The counts nearest to a display value, halves away from zero; null beyond 64 bits.</summary>
    public long? Nearest(decimal value)
    {
        try
        {
            var counts = Math.Round(value / PerCount, MidpointRounding.AwayFromZero);
            return counts is >= long.MinValue and <= long.MaxValue ? (long)counts : null;
        }
        catch (OverflowException)
        {
            return null;
        }
    }
}
