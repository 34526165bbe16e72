namespace Runup.Quantities;

/// <summary>Writes quantities for people, in their units and with as many digits as make sense.</summary>
public static class QuantityWriting
{
    /// <summary>Writes a quantity in the unit in which it reads best; what is written is read back as the same to its digits.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <param name="system">The reader's set of units.</param>
    /// <param name="digits">Significant digits; trailing zeros after the point are left out.</param>
    public static string Write<T>(this T quantity, UnitSystem system, int digits = 4)
        where T : struct, IQuantity<T> => QuantityText.Write(T.Dimension, quantity.Si, system, digits);
}
