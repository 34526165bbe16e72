using System.Globalization;
using Runup.Commissioning.Survey;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Commissioning.Tests.Checks;

/// <summary>Plates and jobs for tests, written as a surveyor writes them.</summary>
internal static class Plates
{
    internal const double Hp = 745.69987158227022;

    internal static PlateSurvey Of(
        string output, double volts, double amperes, double hertz, double rpm, int? poles = null, double? powerFactor = null, double? efficiencyPercent = null,
        WindingConnection? connection = null, double? serviceFactor = null, string? efficiencyClass = null) => new()
        {
            Output = Output(output),
            Voltage = new(LineVoltage.FromVolts(volts)),
            Current = new(LineCurrent.FromAmperes(amperes)),
            Frequency = new(ElectricalFrequency.FromHertz(hertz)),
            Speed = new(ShaftSpeed.FromRpm(rpm)),
            Poles = poles is { } p ? new(p) : null,
            PowerFactor = powerFactor is { } c ? new(PowerFactor.FromRatio(c)) : null,
            Efficiency = efficiencyPercent is { } e ? new(Efficiency.FromRatio(e / 100)) : null,
            Connection = connection is { } w ? new(w) : null,
            ServiceFactor = serviceFactor is { } s ? new(Ratio.FromValue(s)) : null,
            EfficiencyClass = efficiencyClass is { } k ? new(k) : null,
        };

    internal static Datum<ShaftPower> Output(string written)
    {
        var parts = written.Split(' ');
        var factor = parts[1] switch { "kW" => 1000, "W" => 1, "hp" => Hp, "PS" => 735.49875, _ => throw new ArgumentException(written, nameof(written)) };
        return new(ShaftPower.FromWatts(double.Parse(parts[0], CultureInfo.InvariantCulture) * factor), AsWritten: written);
    }

    internal static OtherRating Other(double volts, WindingConnection? connection, double? amperes, double? hertz = null) => new(
        new(LineVoltage.FromVolts(volts)),
        connection is { } c ? new(c) : null,
        amperes is { } a ? new(LineCurrent.FromAmperes(a)) : null,
        hertz is { } h ? new(ElectricalFrequency.FromHertz(h)) : null,
        null,
        null);

    internal static MotorSurvey Motor(PlateSurvey plate) => new() { Plate = plate };
}
