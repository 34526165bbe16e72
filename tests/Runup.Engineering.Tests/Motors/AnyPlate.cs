using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Engineering.Tests.Motors;

/// <summary>Plates at random.</summary>
internal static class AnyPlate
{
    /// <summary>A plate that somebody typed: mostly near a motor's, now and then a value wildly off, missing or in the wrong field.</summary>
    internal static Nameplate From(Random random)
    {
        double Slipped(double value) => random.Next(25) switch
        {
            0 => 0,
            1 => value * 1000,
            2 => value / 1000,
            3 => value * Math.Pow(10, random.Next(-300, 300)),
            4 => value * 100,
            _ => value * (0.9 + (0.2 * random.NextDouble())),
        };
        double? Perhaps(double value) => random.Next(3) == 0 ? null : Slipped(value);
        double? PerhapsAny(double value) => random.Next(12) == 0 ? random.Next(3) switch { 0 => double.NaN, 1 => double.PositiveInfinity, _ => -1 } : Perhaps(value);
        static double Finite(double value) => double.IsFinite(value) ? value : 1;
        var watts = 100 * Math.Pow(10, 3.5 * random.NextDouble());
        var volts = 200 + (500 * random.NextDouble());
        var poles = 2 * random.Next(1, 6);
        var hertz = random.Next(2) == 0 ? 50.0 : 60.0;
        return new Nameplate
        {
            Output = ShaftPower.FromWatts(Finite(Slipped(watts)) * (random.Next(40) == 0 ? -1 : 1)),
            Voltage = LineVoltage.FromVolts(Finite(Slipped(volts))),
            Current = LineCurrent.FromAmperes(Finite(Slipped(watts / (Math.Sqrt(3) * volts * 0.85 * 0.85)))),
            Frequency = ElectricalFrequency.FromHertz(random.Next(20) == 0 ? Finite(Slipped(hertz)) : hertz),
            Speed = ShaftSpeed.FromRpm(Finite(random.Next(10) == 0 ? Slipped(1450) : 120 * hertz / poles * (1 - (0.08 * random.NextDouble())))),
            PrintedPoles = random.Next(3) switch { 0 => null, 1 => random.Next(30) == 0 ? default(PoleCount) : PoleCount.FromPoles(2 * random.Next(1, 20)), _ => PoleCount.FromPoles(poles) },
            PowerFactor = Perhaps(0.85) is { } powerFactor ? PowerFactor.FromRatio(Finite(powerFactor)) : null,
            Efficiency = Perhaps(0.85) is { } efficiency ? Efficiency.FromRatio(Finite(efficiency)) : null,
            EfficiencyClass = random.Next(4) switch { 0 => null, 1 => "IE3", 2 => "ie 9", _ => "" },
            LockedRotorCurrentRatio = PerhapsAny(6),
            CodeLetter = random.Next(2) == 0 ? null : (char)random.Next(32, 127),
            DesignLetter = random.Next(4) switch { 0 => null, 1 => "B", 2 => "", _ => "HE" },
            LockedRotorTorqueRatio = PerhapsAny(2),
            BreakdownTorqueRatio = PerhapsAny(2.8),
            Rounding = random.Next(2) == 0 ? new PlateRounding() : new PlateRounding { OutputWatts = 50, PowerFactor = 0.005, Efficiency = double.NaN },
        };
    }
}
