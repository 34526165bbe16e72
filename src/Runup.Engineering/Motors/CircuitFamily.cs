using Runup.Engineering.Numerics;

namespace Runup.Engineering.Motors;

/// <summary>
/// All circuits that reproduce a rated point exactly, with given losses and a given split of the leakage: one for each stator leakage reactance.
/// </summary>
/// <remarks>Closed forms (<see cref="RatedPointCircuit"/>): nothing iterates, so nothing can fail to converge.</remarks>
internal sealed class CircuitFamily
{
    // Below this share of the base impedance, no leakage; above, the scan has long met the end of the family.
    private const double SmallestLeakage = 0.002;
    private const double LargestLeakage = 1.0;
    private const int ScanSteps = 250;
    private const double SmallestMagnetizingShare = 0.02;
    private const double SmallestBreakdownSlip = 1.5;

    private readonly RatedPoint point;
    private readonly LossShares losses;
    private readonly double split;

    private CircuitFamily(RatedPoint point, LossShares losses, double split, double lowest_ohm)
    {
        (this.point, this.losses, this.split) = (point, losses, split);
        Lowest_ohm = lowest_ohm;
    }

    internal LossShares Losses => losses;

    internal double BaseImpedance_ohm => point.Phase_V / point.Current_A;

    /// <summary>Smallest stator leakage in the family.</summary>
    internal double Lowest_ohm { get; }

    /// <summary>Largest stator leakage in the family.</summary>
    internal double Highest_ohm { get; private set; }

    /// <summary>The family of a rated point; null where no circuit has that rated point on its stable side.</summary>
    internal static CircuitFamily? Of(RatedPoint point, double split)
    {
        var shares = LossShares.At(point);
        var scale = point.Phase_V / point.Current_A / (1 + (1 / split));
        var family = new CircuitFamily(point, shares, split, SmallestLeakage * scale);
        if (!(shares.StatorCopper_W > 0) || !family.Holds(family.Lowest_ohm))
        {
            return null;
        }

        var (inside, step) = (family.Lowest_ohm, (LargestLeakage - SmallestLeakage) * scale / ScanSteps);
        while (family.Holds(inside + step) && inside < LargestLeakage * scale)
        {
            inside += step;
        }

        family.Highest_ohm = family.LastInside(inside, inside + step);
        return family;
    }

    /// <summary>Share of the leakage in the base impedance for a stator leakage: (Xls + Xlr) I / V.</summary>
    internal double TotalLeakage(double stator_ohm) => stator_ohm * (1 + (1 / split)) / BaseImpedance_ohm;

    /// <summary>The stator leakage for which a falling function of the circuit takes a value; the nearer end where it never does.</summary>
    internal double Where(Func<EquivalentCircuit, double> falling, double wanted) =>
        Root.Between(Lowest_ohm, Highest_ohm, leakage => falling(Member(leakage)) - wanted);

    /// <summary>The circuit with a stator leakage, which is brought inside the family.</summary>
    internal EquivalentCircuit Member(double statorLeakage_ohm) =>
        At(Math.Clamp(statorLeakage_ohm, Lowest_ohm, Highest_ohm)) ?? At(Lowest_ohm) ?? throw new System.Diagnostics.UnreachableException();

    /// <summary>The circuit with a stator leakage, which is brought inside the family, and deep bars.</summary>
    internal EquivalentCircuit WithBars(double statorLeakage_ohm, double slip, double rise, double corner)
    {
        var stator_ohm = Math.Clamp(statorLeakage_ohm, Lowest_ohm, Highest_ohm);
        return RatedPointCircuit.TrySolve(point, losses, stator_ohm, stator_ohm / split, out var plain)
            ? DeepBars.Of(plain, slip, rise, corner).Circuit(point.Phase_V, point.Current_A)
            : Member(stator_ohm);
    }

    // Null outside the family.
    private EquivalentCircuit? At(double statorLeakage_ohm) =>
        RatedPointCircuit.TrySolve(point, losses, statorLeakage_ohm, statorLeakage_ohm / split, out var solved)
        && SmallestMagnetizingShare * point.Current_A * solved.Magnetizing_ohm < solved.Iron.ReferenceEmf_V
        && double.IsFinite(1 / solved.CoreLoss_siemens)
            ? solved.Circuit(point.Phase_V, point.Current_A)
            : null;

    // A member is of use only if its rated point is well on the stable side, stray and friction included.
    private bool Holds(double leakage) =>
        At(leakage) is { } circuit
        && Breakdown.Largest(new PhaseCircuit(circuit, point.Frequency_Hz), point.Phase_V, 1).Slip > SmallestBreakdownSlip * point.Slip;

    private double LastInside(double inside, double outside)
    {
        for (var step = 0; step < 60; step++)
        {
            var middle = (inside + outside) / 2;
            (inside, outside) = Holds(middle) ? (middle, outside) : (inside, middle);
        }

        return inside;
    }
}
