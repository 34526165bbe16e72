namespace Runup.Files;

/// <summary>
/// How large and how small a figure of a machine can be at all. Far wider than any machine, so that it refuses only slips of the
/// pen and attacks, and narrow enough that no product or quotient of a few figures leaves the range of a double.
/// </summary>
internal static class Magnitude
{
    private const double Largest = 1e12;
    private const double Smallest = 1e-15;

    internal const string WouldDo = "no machine has such a figure; count its digits and look at its exponent";

    internal static bool Is(double si) => si == 0 || Math.Abs(si) is >= Smallest and <= Largest;
}
