namespace Runup.Quantities;

/// <summary>A length of time.</summary>
public readonly record struct Duration : IQuantity<Duration>
{
    private Duration(double seconds) => Seconds = Guard.NotNegative(seconds);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Time;

    /// <summary>The value in SI units.</summary>
    public double Seconds { get; }

    /// <inheritdoc/>
    public double Si => Seconds;

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static Duration FromSeconds(double seconds) => new(seconds);

    /// <inheritdoc/>
    public static Duration FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
