namespace Runup.Quantities;

/// <summary>Energy.</summary>
public readonly record struct Energy : IQuantity<Energy>
{
    private Energy(double joules) => Joules = Guard.Finite(joules);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Energy;

    /// <summary>The value in SI units.</summary>
    public double Joules { get; }

    /// <inheritdoc/>
    public double Si => Joules;

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static Energy FromJoules(double joules) => new(joules);

    /// <inheritdoc/>
    public static Energy FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
