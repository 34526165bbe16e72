namespace Runup.Quantities;

/// <summary>Active electrical power, or a loss.</summary>
public readonly record struct ElectricalPower : IQuantity<ElectricalPower>
{
    private ElectricalPower(double watts) => Watts = Guard.Finite(watts);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Power;

    /// <summary>The value in SI units.</summary>
    public double Watts { get; }

    /// <inheritdoc/>
    public double Si => Watts;

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static ElectricalPower FromWatts(double watts) => new(watts);

    /// <inheritdoc/>
    public static ElectricalPower FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
