namespace Runup.Quantities;

/// <summary>Speed along a line, such as that of a wave on a cable.</summary>
public readonly record struct LinearSpeed : IQuantity<LinearSpeed>
{
    private LinearSpeed(double metresPerSecond) => MetresPerSecond = Guard.Finite(metresPerSecond);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.LinearSpeed;

    /// <summary>The value in SI units.</summary>
    public double MetresPerSecond { get; }

    /// <inheritdoc/>
    public double Si => MetresPerSecond;

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static LinearSpeed FromMetresPerSecond(double metresPerSecond) => new(metresPerSecond);

    /// <inheritdoc/>
    public static LinearSpeed FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
