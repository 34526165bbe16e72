namespace Runup.Quantities;

/// <summary>A physical quantity of one meaning, SI inside. <c>default</c> of every quantity is zero.</summary>
/// <typeparam name="TSelf">The quantity's own type.</typeparam>
public interface IQuantity<TSelf>
    where TSelf : struct, IQuantity<TSelf>
{
    /// <summary>The value in the SI unit of its dimension.</summary>
    double Si { get; }

    /// <summary>The dimension, which knows the trade's unit spellings.</summary>
    static abstract Dimension Dimension { get; }

    /// <summary>Makes the quantity from a value in the SI unit of its dimension.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite, or the meaning forbids it.</exception>
    static abstract TSelf FromSi(double value);
}
