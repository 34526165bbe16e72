using System.Globalization;

namespace Runup.Engineering.Motors;

/// <summary>How much leakage a fitted circuit has, and which datum says so.</summary>
internal sealed record LeakageChoice(double Stator_ohm, IReadOnlyList<Assumption> Assumptions, IReadOnlyList<GivenUp> GaveUp)
{
    private const double TypicalLeakage = 0.16;
    private const double LargestShareOfReactivePower = 0.5;
    private const double FollowedWithin = 0.01;

    // Beyond this the second datum speaks of a rotor whose bars change between standstill and rated speed, not of rounding.
    private const double AgreesWithin = 0.15;

    /// <summary>
    /// The breakdown torque is followed before the locked-rotor current: it is reached at a slip where the bars still are what they are at rated load.
    /// </summary>
    internal static LeakageChoice For(CircuitFamily family, RatedPoint point, IReadOnlyList<StartingDatum> all)
    {
        var data = all.Where(datum => datum.Kind != PlateDatum.LockedRotorTorque).ToList();
        var fits = data.Select(datum => (datum, Stator_ohm: family.Where(datum.Of, datum.Printed))).ToList();
        var followed = fits.FindIndex(fit => fit.datum.Error(family.Member(fit.Stator_ohm)) < FollowedWithin);
        var typical = fits.Count == 0 ? Typical(family, point) : null;
        var chosen = typical?.Stator_ohm ?? fits[Math.Max(0, followed)].Stator_ohm;
        var gaveUp = from datum in all
                     let tolerance = followed >= 0 && datum == fits[followed].datum ? FollowedWithin : AgreesWithin
                     where datum.Error(family.Member(chosen)) > tolerance
                     select new GivenUp(
                         datum.Kind,
                         datum.Printed,
                         datum.Of(family.Member(chosen)),
                         "no rotor with this rated point can follow it beside the rest");
        var assumptions = fits.Where(fit => fit.datum.Assumption is not null).Select(fit => fit.datum.Assumption!);
        return new LeakageChoice(chosen, [.. typical?.Assumptions ?? [], .. assumptions], gaveUp.ToList());
    }

    private static LeakageChoice Typical(CircuitFamily family, RatedPoint point)
    {
        var sin = Math.Sqrt(1 - (point.PowerFactor * point.PowerFactor));
        var wanted = Math.Min(TypicalLeakage, LargestShareOfReactivePower * sin);
        var stator = Math.Clamp(wanted / family.TotalLeakage(1), family.Lowest_ohm, family.Highest_ohm);
        var assumption = new Assumption(
            "leakage reactance of stator and rotor together, of U/(√3 I) (neither breakdown torque nor locked-rotor current known)",
            string.Create(CultureInfo.InvariantCulture, $"{family.TotalLeakage(stator) * 100:F1} %"),
            Assumption.CommonPractice,
            false);
        return new LeakageChoice(stator, [assumption], []);
    }
}
