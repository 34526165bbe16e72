using System.Runtime.CompilerServices;

namespace Runup.Quantities;

/// <summary>What a quantity's constructor demands of its number.</summary>
internal static class Guard
{
    internal static double Finite(double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(name, value, "The value must be finite.");

    internal static double NotNegative(double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        Finite(value, name) >= 0 ? value : throw new ArgumentOutOfRangeException(name, value, "The value must not be negative.");
}
