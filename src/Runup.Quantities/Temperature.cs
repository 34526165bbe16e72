namespace Runup.Quantities;

/// <summary>Temperature; kelvin inside.</summary>
public readonly record struct Temperature : IQuantity<Temperature>
{
    private Temperature(double kelvin) => Kelvin = Guard.NotNegative(kelvin);

    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Temperature;

    /// <summary>The value in SI units.</summary>
    public double Kelvin { get; }

    /// <inheritdoc/>
    public double Si => Kelvin;

    /// <summary>The temperature in degrees Celsius.</summary>
    public double Celsius => Kelvin - 273.15;

    /// <summary>Makes the temperature from degrees Celsius.</summary>
    public static Temperature FromCelsius(double celsius) => new(celsius + 273.15);

    /// <summary>Makes the quantity from a value in the SI unit.</summary>
    public static Temperature FromKelvin(double kelvin) => new(kelvin);

    /// <inheritdoc/>
    public static Temperature FromSi(double value) => new(value);

    /// <summary>The value with its unit, for people.</summary>
    public override string ToString() => Dimension.Write(Si);
}
