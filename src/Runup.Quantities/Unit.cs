namespace Runup.Quantities;

/// <summary>A unit as the trade writes it: SI = value × <see cref="Factor"/> + <see cref="Offset"/>.</summary>
/// <param name="Symbol">The spelling that Runup prints.</param>
/// <param name="Factor">SI units in one of this unit.</param>
/// <param name="Offset">SI value at zero of this unit (temperatures only).</param>
/// <param name="Spellings">Other spellings that are read.</param>
public sealed record Unit(string Symbol, double Factor, double Offset, IReadOnlyList<string> Spellings)
{
    /// <summary>From a value in this unit to SI.</summary>
    public double ToSi(double value) => (value * Factor) + Offset;

    /// <summary>From SI to a value in this unit.</summary>
    public double FromSi(double si) => (si - Offset) / Factor;
}
