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
    internal static LeakageChoice For(Nameplate plate, CircuitFamily family, RatedPoint point)
    {
        var data = Data(plate, point);
        var fits = data.Select(datum => (datum, Stator_ohm: family.Where(datum.Falling, datum.Printed))).ToList();
        var followed = fits.FindIndex(fit => Error(fit.datum, family, fit.Stator_ohm) < FollowedWithin);
        if (fits.Count == 0)
        {
            return Typical(family, point);
        }

        var chosen = fits[Math.Max(0, followed)].Stator_ohm;
        var gaveUp = from fit in fits
                     let tolerance = followed >= 0 && fit == fits[followed] ? FollowedWithin : AgreesWithin
                     where Error(fit.datum, family, chosen) > tolerance
                     select new GivenUp(
                         fit.datum.Kind,
                         fit.datum.Printed,
                         fit.datum.Falling(family.Member(chosen)),
                         "a single cage with this rated point cannot follow it beside the rest");
        var assumptions = fits.Where(fit => fit.datum.Assumption is not null).Select(fit => fit.datum.Assumption!);
        return new LeakageChoice(chosen, assumptions.ToList(), gaveUp.ToList());
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

    private static List<Datum> Data(Nameplate plate, RatedPoint point)
    {
        var data = new List<Datum>();
        if (Usable(plate.BreakdownTorqueRatio) is { } breakdown)
        {
            data.Add(new Datum(PlateDatum.BreakdownTorque, breakdown, circuit => BreakdownRatio(circuit, point), null));
        }

        if (Usable(plate.LockedRotorCurrentRatio) is { } lockedRotor)
        {
            data.Add(new Datum(PlateDatum.LockedRotorCurrent, lockedRotor, circuit => LockedRotorRatio(circuit, point), null));
        }
        else if (Usable(FitResidual.CodeLetterRatio(plate)) is { } fromLetter)
        {
            data.Add(new Datum(PlateDatum.CodeLetter, fromLetter, circuit => LockedRotorRatio(circuit, point), new Assumption(
                $"locked-rotor current over rated current (middle of code letter {plate.CodeLetter})",
                string.Create(CultureInfo.InvariantCulture, $"{fromLetter:F2}"),
                "NEC Table 430.7(B)",
                false)));
        }

        return data;
    }

    private static double? Usable(double? ratio) => ratio is > 1 and < 100 ? ratio : null;

    private static double Error(Datum datum, CircuitFamily family, double stator_ohm) =>
        Math.Abs((datum.Falling(family.Member(stator_ohm)) / datum.Printed) - 1);

    private static double BreakdownRatio(EquivalentCircuit circuit, RatedPoint point) =>
        Breakdown.Largest(new PhaseCircuit(circuit, point.Frequency_Hz), point.Phase_V, 1).Torque_Nm / point.Torque_Nm;

    private static double LockedRotorRatio(EquivalentCircuit circuit, RatedPoint point) =>
        new PhaseCircuit(circuit, point.Frequency_Hz).At(point.Phase_V, 1).Current_A / point.Current_A;

    private sealed record Datum(PlateDatum Kind, double Printed, Func<EquivalentCircuit, double> Falling, Assumption? Assumption);
}
