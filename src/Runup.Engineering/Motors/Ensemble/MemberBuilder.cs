using Runup.Engineering.Numerics;

namespace Runup.Engineering.Motors.Ensemble;

/// <summary>Makes a motor out of places between 0 and 1; the same places make the same motor.</summary>
internal sealed class MemberBuilder(PlateBeliefs beliefs, MotorPrior prior)
{
    private const double SmallestBreakdown = 1.6;
    private const double BreakdownSoftness = 0.1;
    private const double LeastRestShare = 0.02;

    internal bool TryBuild(ReadOnlySpan<double> places, out MotorMember member, out double logPrior)
    {
        (member, logPrior) = (default, double.NegativeInfinity);
        if (!beliefs.TryPoint(places, out var point))
        {
            return false;
        }

        var losses = Losses(places, point);
        if (!(losses.StatorCopper_W >= LeastRestShare * (point.Input_W - point.Output_W)))
        {
            return false;
        }

        var leakage = prior.Leakage * Math.Exp(Gaussian.Quantile(places[Place.Leakage]) * prior.LeakageSpread);
        var split = prior.Split * Math.Exp(Gaussian.Quantile(places[Place.LeakageSplit]) * prior.SplitSpread);
        var total_ohm = leakage * point.Phase_V / point.Current_A;
        if (!RatedPointCircuit.TrySolve(point, losses, total_ohm * split / (1 + split), total_ohm / (1 + split), out var values))
        {
            return false;
        }

        var plainRotor_ohm = values.Rotor_ohm;
        values = Bars(places, values, point.Slip) with { Iron = values.Iron with { IronShare = prior.IronShare * places[Place.Iron] } };
        member = new MotorMember
        {
            Values = values,
            Phase_V = point.Phase_V,
            Output_W = point.Output_W,
            Current_A = point.Current_A,
            PowerFactor = point.PowerFactor,
            Efficiency = point.Efficiency,
            Slip = point.Slip,
            Leakage = leakage,
            LeakageLeft = 1 - (prior.LeakageSaturation * places[Place.LeakageSaturation]),
            Warm_C = 75 + (15 * Gaussian.Quantile(places[Place.Warmth])),
        };
        logPrior = LogPrior(member) + Gaussian.LogDensity(Math.Log(values.Stator_ohm / plainRotor_ohm / prior.Resistances) / prior.ResistancesSpread);
        return double.IsFinite(logPrior);
    }

    /// <summary>What speaks for or against a member beside its places: the magnetizing current of its like, and a breakdown torque that standards ask for.</summary>
    private double LogPrior(in MotorMember member)
    {
        var magnetizing = member.Values.Iron.ReferenceEmf_V / member.Values.Magnetizing_ohm / member.Current_A;
        var lacking = Math.Max(0, SmallestBreakdown - member.BreakdownTorque) / BreakdownSoftness;
        return Gaussian.LogDensity(Math.Log(magnetizing / prior.Magnetizing) / prior.MagnetizingSpread) + Gaussian.LogDensity(lacking);
    }

    private LossShares Losses(ReadOnlySpan<double> places, in RatedPoint point)
    {
        var rest = point.Input_W - (point.Output_W / (1 - point.Slip));
        var among = places[Place.CopperShare] - prior.CopperOnly;
        if (among < 0)
        {
            return new LossShares(0, 0, 0, rest, point.Output_W / (1 - point.Slip));
        }

        // From a tenth to nine tenths in the stator copper; of the others two fifths to four fifths in the core, of the rest up to two thirds stray.
        var copper = 0.1 + (0.8 * among / (1 - prior.CopperOnly));
        var core = (1 - copper) * (prior.CopperOnly > 0 ? places[Place.CoreShare] : 0.4 + (0.4 * places[Place.CoreShare]));
        var mechanical = (1 - copper - core) * rest * (1 - point.Slip);
        var stray = mechanical * 0.65 * places[Place.StrayShare];
        return new LossShares(mechanical - stray, stray, core * rest, copper * rest, (point.Output_W + mechanical) / (1 - point.Slip));
    }

    private CircuitValues Bars(ReadOnlySpan<double> places, in CircuitValues plain, double slip)
    {
        var among = places[Place.BarDepth] - prior.PlainCage;
        if (among <= 0)
        {
            return plain;
        }

        var rise = prior.BarRise * Math.Exp(Gaussian.Quantile(among / (1 - prior.PlainCage)) * prior.BarRiseSpread);
        var corner = 1.2 * Math.Exp(Gaussian.Quantile(places[Place.BarCorner]) * 0.35);
        return DeepBars.Of(plain, slip, rise, corner);
    }
}
