namespace Runup.Dynamics;

/// <summary>A simulation that stopped by itself because its numbers ran away.</summary>
/// <param name="AtS">When, in s.</param>
/// <param name="Why">Why, in a sentence.</param>
public sealed record SimulationBreakdown(double AtS, string Why)
{
    /// <summary>Both in one sentence.</summary>
    public override string ToString() => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"at {AtS:0.000} s: {Why}");
}
