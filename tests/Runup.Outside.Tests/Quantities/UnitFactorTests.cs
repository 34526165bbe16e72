using Runup.Quantities;
using UnitsNet.Units;

namespace Runup.Outside.Tests.Quantities;

/// <summary>Every unit of ours against UnitsNet 5.75, a general-purpose unit library that knows nothing of this project.</summary>
public sealed class UnitFactorTests
{
    private const double Relative = 1e-9;

    // The unit there for each unit here, with the SI unit in which both are compared.
    private static readonly Dictionary<(string Dimension, string Symbol), (Enum Unit, Enum Si)> Counterparts = new()
    {
        [("voltage", "V")] = (ElectricPotentialUnit.Volt, ElectricPotentialUnit.Volt),
        [("voltage", "kV")] = (ElectricPotentialUnit.Kilovolt, ElectricPotentialUnit.Volt),
        [("voltage", "mV")] = (ElectricPotentialUnit.Millivolt, ElectricPotentialUnit.Volt),
        [("current", "A")] = (ElectricCurrentUnit.Ampere, ElectricCurrentUnit.Ampere),
        [("current", "mA")] = (ElectricCurrentUnit.Milliampere, ElectricCurrentUnit.Ampere),
        [("current", "kA")] = (ElectricCurrentUnit.Kiloampere, ElectricCurrentUnit.Ampere),
        [("frequency", "Hz")] = (FrequencyUnit.Hertz, FrequencyUnit.Hertz),
        [("frequency", "kHz")] = (FrequencyUnit.Kilohertz, FrequencyUnit.Hertz),
        [("frequency", "MHz")] = (FrequencyUnit.Megahertz, FrequencyUnit.Hertz),
        [("speed", "rpm")] = (RotationalSpeedUnit.RevolutionPerMinute, RotationalSpeedUnit.RadianPerSecond),
        [("speed", "rad/s")] = (RotationalSpeedUnit.RadianPerSecond, RotationalSpeedUnit.RadianPerSecond),
        [("speed", "1/s")] = (RotationalSpeedUnit.RevolutionPerSecond, RotationalSpeedUnit.RadianPerSecond),
        [("power", "W")] = (PowerUnit.Watt, PowerUnit.Watt),
        [("power", "kW")] = (PowerUnit.Kilowatt, PowerUnit.Watt),
        [("power", "MW")] = (PowerUnit.Megawatt, PowerUnit.Watt),
        [("power", "PS")] = (PowerUnit.MetricHorsepower, PowerUnit.Watt),
        [("apparent power", "VA")] = (ApparentPowerUnit.Voltampere, ApparentPowerUnit.Voltampere),
        [("apparent power", "kVA")] = (ApparentPowerUnit.Kilovoltampere, ApparentPowerUnit.Voltampere),
        [("apparent power", "MVA")] = (ApparentPowerUnit.Megavoltampere, ApparentPowerUnit.Voltampere),
        [("torque", "N·m")] = (TorqueUnit.NewtonMeter, TorqueUnit.NewtonMeter),
        [("torque", "kN·m")] = (TorqueUnit.KilonewtonMeter, TorqueUnit.NewtonMeter),
        [("torque", "lb·ft")] = (TorqueUnit.PoundForceFoot, TorqueUnit.NewtonMeter),
        [("torque", "lb·in")] = (TorqueUnit.PoundForceInch, TorqueUnit.NewtonMeter),
        [("torque", "kgf·m")] = (TorqueUnit.KilogramForceMeter, TorqueUnit.NewtonMeter),
        [("inertia", "kg·m²")] = (MassMomentOfInertiaUnit.KilogramSquareMeter, MassMomentOfInertiaUnit.KilogramSquareMeter),
        [("inertia", "lb·ft²")] = (MassMomentOfInertiaUnit.PoundSquareFoot, MassMomentOfInertiaUnit.KilogramSquareMeter),
        [("inertia", "kg·cm²")] = (MassMomentOfInertiaUnit.KilogramSquareCentimeter, MassMomentOfInertiaUnit.KilogramSquareMeter),
        [("inertia", "g·m²")] = (MassMomentOfInertiaUnit.GramSquareMeter, MassMomentOfInertiaUnit.KilogramSquareMeter),
        [("resistance", "Ω")] = (ElectricResistanceUnit.Ohm, ElectricResistanceUnit.Ohm),
        [("resistance", "mΩ")] = (ElectricResistanceUnit.Milliohm, ElectricResistanceUnit.Ohm),
        [("resistance", "kΩ")] = (ElectricResistanceUnit.Kiloohm, ElectricResistanceUnit.Ohm),
        [("resistance", "MΩ")] = (ElectricResistanceUnit.Megaohm, ElectricResistanceUnit.Ohm),
        [("inductance", "H")] = (ElectricInductanceUnit.Henry, ElectricInductanceUnit.Henry),
        [("inductance", "mH")] = (ElectricInductanceUnit.Millihenry, ElectricInductanceUnit.Henry),
        [("inductance", "µH")] = (ElectricInductanceUnit.Microhenry, ElectricInductanceUnit.Henry),
        [("capacitance", "F")] = (CapacitanceUnit.Farad, CapacitanceUnit.Farad),
        [("capacitance", "mF")] = (CapacitanceUnit.Millifarad, CapacitanceUnit.Farad),
        [("capacitance", "µF")] = (CapacitanceUnit.Microfarad, CapacitanceUnit.Farad),
        [("capacitance", "nF")] = (CapacitanceUnit.Nanofarad, CapacitanceUnit.Farad),
        [("capacitance", "pF")] = (CapacitanceUnit.Picofarad, CapacitanceUnit.Farad),
        [("time", "s")] = (DurationUnit.Second, DurationUnit.Second),
        [("time", "ms")] = (DurationUnit.Millisecond, DurationUnit.Second),
        [("time", "µs")] = (DurationUnit.Microsecond, DurationUnit.Second),
        [("time", "ns")] = (DurationUnit.Nanosecond, DurationUnit.Second),
        [("time", "min")] = (DurationUnit.Minute, DurationUnit.Second),
        [("time", "h")] = (DurationUnit.Hour, DurationUnit.Second),
        [("temperature", "°C")] = (TemperatureUnit.DegreeCelsius, TemperatureUnit.Kelvin),
        [("temperature", "°F")] = (TemperatureUnit.DegreeFahrenheit, TemperatureUnit.Kelvin),
        [("temperature", "K")] = (TemperatureUnit.Kelvin, TemperatureUnit.Kelvin),
        [("fraction", "%")] = (RatioUnit.Percent, RatioUnit.DecimalFraction),
        [("fraction", "‰")] = (RatioUnit.PartPerThousand, RatioUnit.DecimalFraction),
        [("number", "")] = (RatioUnit.DecimalFraction, RatioUnit.DecimalFraction),
        [("length", "m")] = (LengthUnit.Meter, LengthUnit.Meter),
        [("length", "mm")] = (LengthUnit.Millimeter, LengthUnit.Meter),
        [("length", "cm")] = (LengthUnit.Centimeter, LengthUnit.Meter),
        [("length", "km")] = (LengthUnit.Kilometer, LengthUnit.Meter),
        [("length", "ft")] = (LengthUnit.Foot, LengthUnit.Meter),
        [("length", "in")] = (LengthUnit.Inch, LengthUnit.Meter),
        [("cross-section", "m²")] = (AreaUnit.SquareMeter, AreaUnit.SquareMeter),
        [("cross-section", "cm²")] = (AreaUnit.SquareCentimeter, AreaUnit.SquareMeter),
        [("cross-section", "mm²")] = (AreaUnit.SquareMillimeter, AreaUnit.SquareMeter),
        [("mass", "kg")] = (MassUnit.Kilogram, MassUnit.Kilogram),
        [("mass", "g")] = (MassUnit.Gram, MassUnit.Kilogram),
        [("mass", "t")] = (MassUnit.Tonne, MassUnit.Kilogram),
        [("mass", "lb")] = (MassUnit.Pound, MassUnit.Kilogram),
        [("energy", "J")] = (EnergyUnit.Joule, EnergyUnit.Joule),
        [("energy", "kJ")] = (EnergyUnit.Kilojoule, EnergyUnit.Joule),
        [("energy", "MJ")] = (EnergyUnit.Megajoule, EnergyUnit.Joule),
        [("energy", "Wh")] = (EnergyUnit.WattHour, EnergyUnit.Joule),
        [("energy", "kWh")] = (EnergyUnit.KilowattHour, EnergyUnit.Joule),
        [("speed along a line", "m/s")] = (SpeedUnit.MeterPerSecond, SpeedUnit.MeterPerSecond),
        [("speed along a line", "m/min")] = (SpeedUnit.MeterPerMinute, SpeedUnit.MeterPerSecond),
        [("speed along a line", "ft/min")] = (SpeedUnit.FootPerMinute, SpeedUnit.MeterPerSecond),
        [("speed along a line", "ft/s")] = (SpeedUnit.FootPerSecond, SpeedUnit.MeterPerSecond),
        [("speed along a line", "km/h")] = (SpeedUnit.KilometerPerHour, SpeedUnit.MeterPerSecond),
    };

    // Units that the library lacks or rounds: each is built from units that it has.
    private static readonly Dictionary<(string Dimension, string Symbol), double> Built = new()
    {
        // One horsepower is 550 ft·lbf/s; the library's own MechanicalHorsepower is rounded to 745.69 W, 1.3e-5 too small.
        [("power", "hp")] = 550 * Convert(TorqueUnit.PoundForceFoot, TorqueUnit.NewtonMeter),
        // The library's own PoundSquareInch is rounded, 1.2e-8 too small.
        [("inertia", "lb·in²")] = Convert(MassUnit.Pound, MassUnit.Kilogram) * Math.Pow(Convert(LengthUnit.Inch, LengthUnit.Meter), 2),
        // A circle of one mil (0.001 in) across, a thousand times.
        [("cross-section", "kcmil")] = 1000 * Math.PI / 4 * Math.Pow(Convert(LengthUnit.Mil, LengthUnit.Meter), 2),
        [("speed along a line", "m/µs")] = 1 / Convert(DurationUnit.Microsecond, DurationUnit.Second),
    };

    public static TheoryData<string, string> EveryUnit() =>
        [.. Dimension.All.SelectMany(d => d.Units.Select(u => new TheoryDataRow<string, string>(d.Name, u.Symbol)))];

    [Theory]
    [MemberData(nameof(EveryUnit))]
    public void A_unit_is_as_large_as_in_a_general_library(string dimension, string symbol)
    {
        var unit = Dimension.All.Single(d => d.Name == dimension).Units.Single(u => u.Symbol == symbol);
        if (Built.TryGetValue((dimension, symbol), out var built))
        {
            (unit.Factor / built).ShouldBe(1, Relative);
            return;
        }

        var (there, si) = Counterparts[(dimension, symbol)];
        foreach (var value in new[] { 1.0, 12.5, 4711 })
        {
            (unit.ToSi(value) / UnitsNet.UnitConverter.Convert(value, there, si)).ShouldBe(1, Relative);
        }
    }

    [Fact]
    public void The_horsepower_that_the_library_rounds_is_ours_to_its_digits() =>
        Convert(PowerUnit.MechanicalHorsepower, PowerUnit.Watt).ShouldBe(Dimension.Power.Units.Single(u => u.Symbol == "hp").Factor, 0.01);

    private static double Convert(Enum from, Enum to) => UnitsNet.UnitConverter.Convert(1, from, to);
}
