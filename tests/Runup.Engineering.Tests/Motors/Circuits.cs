using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Motors;

/// <summary>Circuits for tests: one of a small pump motor, and any.</summary>
internal static class Circuits
{
    internal static EquivalentCircuit Make(
        double volts,
        double hertz,
        int poles,
        double rs,
        double xls,
        double xm,
        double xlr,
        double rr,
        double? coreOhm = null,
        double frictionW = 0,
        double strayW = 0,
        double ratedAmperes = 0,
        double? ratedRpm = null) => new()
        {
            RatedVoltage = LineVoltage.FromVolts(volts),
            RatedFrequency = ElectricalFrequency.FromHertz(hertz),
            Poles = PoleCount.FromPoles(poles),
            StatorResistance = Resistance.FromOhms(rs),
            StatorLeakage = Reactance.FromOhms(xls),
            Magnetizing = Reactance.FromOhms(xm),
            RotorLeakage = Reactance.FromOhms(xlr),
            RotorResistance = Resistance.FromOhms(rr),
            CoreLoss = coreOhm is { } core ? Resistance.FromOhms(core) : null,
            FrictionLoss = ElectricalPower.FromWatts(frictionW),
            StrayLoss = ElectricalPower.FromWatts(strayW),
            RatedCurrent = ratedAmperes > 0 ? LineCurrent.FromAmperes(ratedAmperes) : null,
            RatedSpeed = ratedRpm is { } rpm ? ShaftSpeed.FromRpm(rpm) : null,
        };

    internal static EquivalentCircuit Pump { get; } =
        Make(400, 50, 4, 0.72, 1.05, 33, 1.55, 0.47, coreOhm: 650, frictionW: 60, strayW: 90, ratedAmperes: 14.4, ratedRpm: 1460);

    /// <summary>A circuit from five numbers between 0 and 1, over the whole range that motors have.</summary>
    internal static EquivalentCircuit Any(double a, double b, double c, double d, double e)
    {
        var baseOhm = Math.Pow(10, -2 + (4 * a));
        return Make(
            100 + (600 * b), 50 + (10 * Math.Round(c)), 2 * (1 + (int)(4 * d)),
            baseOhm * (0.005 + (0.1 * c)), baseOhm * (0.03 + (0.12 * d)), baseOhm * (1 + (4 * e)), baseOhm * (0.03 + (0.12 * b)), baseOhm * (0.005 + (0.08 * e)),
            coreOhm: d > 0.3 ? baseOhm * (20 + (100 * a)) : null, frictionW: 20 / baseOhm, strayW: 10 / baseOhm, ratedAmperes: 200 / baseOhm);
    }
}
