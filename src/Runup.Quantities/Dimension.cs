using System.Globalization;

namespace Runup.Quantities;

/// <summary>A dimension of the trade with its units; the first unit is the one that Runup prints.</summary>
/// <remarks>
/// Factors are exact by definition (international foot and pound, standard gravity 9.80665 m/s²),
/// except AWG, which is a formula and belongs to the reader. Source: NIST SP 811, appendix B.
/// </remarks>
public sealed class Dimension
{
    private const double Foot = 0.3048;
    private const double Inch = 0.0254;
    private const double Pound = 0.45359237;
    private const double Gravity = 9.80665;
    private const double PoundForce = Pound * Gravity;

    private Dimension(string name, params Unit[] units)
    {
        Name = name;
        Units = units;
    }

    /// <summary>Voltage; SI unit V.</summary>
    public static Dimension Voltage { get; } = new("voltage", U("V", 1, "volt", "volts", "VAC", "VDC", "Vac", "Vdc"), U("kV", 1e3), U("mV", 1e-3));

    /// <summary>Current; SI unit A.</summary>
    public static Dimension Current { get; } = new("current", U("A", 1, "amp", "amps", "ampere", "amperes"), U("mA", 1e-3), U("kA", 1e3));

    /// <summary>Frequency; SI unit Hz.</summary>
    public static Dimension Frequency { get; } = new("frequency", U("Hz", 1, "hz", "HZ", "cps"), U("kHz", 1e3, "khz", "KHz"), U("MHz", 1e6));

    /// <summary>Rotational speed; SI unit rad/s.</summary>
    public static Dimension RotationalSpeed { get; } = new("speed", U("rpm", Math.PI / 30, "1/min", "r/min", "min-1", "min⁻¹", "min^-1", "rev/min", "RPM", "U/min", "/min"), U("rad/s", 1), U("1/s", 2 * Math.PI, "r/s", "rev/s", "s-1"));

    /// <summary>Power; SI unit W.</summary>
    public static Dimension Power { get; } = new("power", U("kW", 1e3, "KW", "kw"), U("W", 1), U("MW", 1e6), U("hp", 550 * Foot * PoundForce, "HP", "Hp"), U("PS", 75 * Gravity, "ps", "CV", "cv", "ch", "pk"));

    /// <summary>Apparent power; SI unit VA.</summary>
    public static Dimension ApparentPower { get; } = new("apparent power", U("kVA", 1e3, "KVA"), U("VA", 1), U("MVA", 1e6));

    /// <summary>Torque; SI unit N·m.</summary>
    public static Dimension Torque { get; } = new("torque", U("N·m", 1, "Nm", "N.m", "N*m", "N m"), U("kN·m", 1e3, "kNm", "kN.m"), U("lb·ft", PoundForce * Foot, "lb.ft", "lb-ft", "lbft", "lb ft", "lbf·ft", "lbf.ft", "lbf-ft", "ft·lb", "ft.lb", "ft-lb", "ftlb", "ft lb", "ft·lbf", "ft-lbf"), U("lb·in", PoundForce * Inch, "lb.in", "lb-in", "lbin", "lbf·in", "in·lb", "in.lb", "in-lb", "inlb"), U("kgf·m", Gravity, "kgf.m", "kgfm", "kgf-m", "kp·m"));

    /// <summary>Moment of inertia; SI unit kg·m².</summary>
    public static Dimension Inertia { get; } = new("inertia", U("kg·m²", 1, "kg·m2", "kg.m²", "kg.m2", "kgm²", "kgm2", "kg*m2", "kg m²", "kg m2", "kg·m^2", "kg m^2"), U("lb·ft²", Pound * Foot * Foot, "lb·ft2", "lb.ft²", "lb.ft2", "lbft²", "lbft2", "lb-ft²", "lb-ft2", "lb ft²", "lb ft2", "lb·ft^2", "lbm·ft²", "lbm·ft2"), U("lb·in²", Pound * Inch * Inch, "lb·in2", "lb.in²", "lb.in2", "lbin2", "lb-in2", "lb-in²"), U("kg·cm²", 1e-4, "kg·cm2", "kg.cm2", "kgcm2", "kgcm²"), U("g·m²", 1e-3, "g·m2", "g.m2"));

    /// <summary>Resistance and reactance; SI unit Ω.</summary>
    public static Dimension Resistance { get; } = new("resistance", U("Ω", 1, "ohm", "ohms", "Ohm", "Ω"), U("mΩ", 1e-3, "mohm", "milliohm", "mΩ"), U("kΩ", 1e3, "kohm", "kΩ"), U("MΩ", 1e6, "Mohm", "megohm", "MΩ"));

    /// <summary>Inductance; SI unit H.</summary>
    public static Dimension Inductance { get; } = new("inductance", U("mH", 1e-3), U("H", 1), U("µH", 1e-6, "uH", "μH"));

    /// <summary>Capacitance; SI unit F.</summary>
    public static Dimension Capacitance { get; } = new("capacitance", U("µF", 1e-6, "uF", "μF"), U("mF", 1e-3), U("F", 1), U("nF", 1e-9), U("pF", 1e-12));

    /// <summary>Time; SI unit s.</summary>
    public static Dimension Time { get; } = new("time", U("s", 1, "sec", "second", "seconds"), U("ms", 1e-3), U("µs", 1e-6, "us", "μs"), U("ns", 1e-9), U("min", 60, "minute", "minutes"), U("h", 3600, "hour", "hours"));

    /// <summary>Temperature; SI unit K.</summary>
    public static Dimension Temperature { get; } = new("temperature", new Unit("°C", 1, 273.15, ["C", "degC", "ºC", "℃"]), new Unit("°F", 5.0 / 9, 273.15 - (32 * 5.0 / 9), ["F", "degF", "ºF", "℉"]), U("K", 1, "kelvin"));

    /// <summary>Part of a whole; SI unit 1.</summary>
    public static Dimension Fraction { get; } = new("fraction", U("%", 0.01, "percent", "per cent", "pct"), U("‰", 0.001, "per mille"));

    /// <summary>Pure number.</summary>
    public static Dimension PureNumber { get; } = new("number", U("", 1));

    /// <summary>Length; SI unit m.</summary>
    public static Dimension Length { get; } = new("length", U("m", 1, "metre", "metres", "meter", "meters"), U("mm", 1e-3), U("cm", 1e-2), U("km", 1e3), U("ft", Foot, "feet", "foot"), U("in", Inch, "inch", "inches"));

    /// <summary>Cross-section; SI unit m². AWG is read too: diameter 0.005 in × 92^((36 − n)/39) (ASTM B258).</summary>
    public static Dimension Area { get; } = new("cross-section", U("mm²", 1e-6, "mm2", "mm^2", "sqmm", "sq mm"), U("kcmil", Math.PI / 4 * Inch * Inch * 1e-3, "MCM"), U("cm²", 1e-4, "cm2"), U("m²", 1, "m2"));

    /// <summary>Mass; SI unit kg.</summary>
    public static Dimension Mass { get; } = new("mass", U("kg", 1), U("g", 1e-3), U("t", 1e3, "tonne", "tonnes"), U("lb", Pound, "lbs", "pound", "pounds"));

    /// <summary>Energy; SI unit J.</summary>
    public static Dimension Energy { get; } = new("energy", U("J", 1), U("kJ", 1e3), U("MJ", 1e6), U("Wh", 3600), U("kWh", 3.6e6));

    /// <summary>Speed along a line; SI unit m/s.</summary>
    public static Dimension LinearSpeed { get; } = new("speed along a line", U("m/s", 1), U("m/µs", 1e6, "m/us", "m/μs"), U("m/min", 1.0 / 60), U("ft/min", Foot / 60, "fpm"), U("ft/s", Foot), U("km/h", 1 / 3.6));

    /// <summary>All dimensions.</summary>
    public static IReadOnlyList<Dimension> All { get; } =
        [Voltage, Current, Frequency, RotationalSpeed, Power, ApparentPower, Torque, Inertia, Resistance, Inductance, Capacitance, Time, Temperature, Fraction, PureNumber, Length, Area, Mass, Energy, LinearSpeed];

    /// <summary>What the dimension is called in a message to a person.</summary>
    public string Name { get; }

    /// <summary>The units, the printed one first.</summary>
    public IReadOnlyList<Unit> Units { get; }

    /// <summary>Writes an SI value in the printed unit with up to six significant digits.</summary>
    public string Write(double si) => Write(si, Units[0]);

    /// <summary>Writes an SI value in a unit with up to six significant digits.</summary>
    public string Write(double si, Unit unit) =>
        string.Create(CultureInfo.InvariantCulture, $"{unit.FromSi(si):G6} {unit.Symbol}").TrimEnd();

    /// <summary>The name, for a debugger.</summary>
    public override string ToString() => Name;

    private static Unit U(string symbol, double factor, params string[] spellings) => new(symbol, factor, 0, spellings);
}
