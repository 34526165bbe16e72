using System.Collections.Frozen;
using Runup.Engineering.Drives;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Profiles.Tests;

/// <summary>Two small makes built in code, of two habits: plain numbers with low words first, and object indexes with speeds in rpm.</summary>
internal static class Makes
{
    internal static DriveSize Size { get; } = new("7.5", Rating()) { Defaults = new Dictionary<string, long>(StringComparer.Ordinal) { ["106"] = 144, ["6075h"] = 14400 } };

    /// <summary>Plain numbers; ramps to base frequency; per cent of motor current; combined run source.</summary>
    internal static DriveProfile Plain { get; } = MakePlain();

    /// <summary>Object indexes; rpm; ramps as speed change over time; per mille; pole pairs; signed 32 bits, high word first.</summary>
    internal static DriveProfile Indexed { get; } = MakeIndexed();

    internal static ParameterValues Defaults(DriveProfile profile) => ParameterValues.Defaults(profile, Size);

    internal static Parameter Number(string number, string name, string unit, decimal scale, long low, long high, long raw, Meaning? meaning = null) => new()
    {
        Number = number,
        Name = name,
        Group = "All",
        Form = new ParameterForm.Numeric(DisplayScale.Of(scale), new ParameterUnit.Fixed(unit), low, high, 1, []),
        Register = ushort.TryParse(number, out var register) ? register : (ushort)0,
        Access = ParameterAccess.StoppedOnly,
        Default = raw,
        Meaning = meaning,
    };

    internal static Meaning Says(Setting setting, Conversion? conversion = null) =>
        new Meaning.Quantity(setting, conversion ?? Conversion.Direct.Instance, FrozenDictionary<long, SettingValue?>.Empty);

    internal static Parameter OneOf(string number, string name, IReadOnlyList<Setting> settings, params (long Raw, string Label, string[]? Says)[] values) => new()
    {
        Number = number,
        Name = name,
        Group = "All",
        Form = new ParameterForm.Choices([.. values.Select(v => new NamedValue(v.Raw, v.Label))]),
        Register = ushort.TryParse(number, out var register) ? register : (ushort)0,
        Access = ParameterAccess.StoppedOnly,
        Default = values[0].Raw,
        Meaning = settings.Count == 0 ? null : new Meaning.Choice(settings, values.ToDictionary(v => v.Raw, v => v.Says is null ? null : (IReadOnlyList<SettingValue>?)[.. v.Says.Select((s, i) => Value(settings[i], s))])),
    };

    private static SettingValue Value(Setting setting, string text) =>
        setting.Form is SettingForm.Numeric n ? new SettingValue.Number(double.Parse(text) * n.SiPerUnit) : new SettingValue.Choice(text);

    private static DriveProfile MakePlain()
    {
        var word = Number("1000", "Command word", "", 1, 0, 65535, 0) with { Access = ParameterAccess.Command, Stored = false };
        var reference = Number("1001", "Reference", "Hz", 0.01m, 0, 65535, 0) with { Access = ParameterAccess.Command, Stored = false };
        var status = Number("1002", "Status word", "", 1, 0, 65535, 0) with { Access = ParameterAccess.ReadOnly, Stored = false };
        var current = Number("1004", "Output current", "A", 0.1m, 0, 65535, 0) with { Access = ParameterAccess.ReadOnly, Stored = false };
        var speed = Number("1008", "Speed", "rpm", 1, -32768, 32767, 0) with { Access = ParameterAccess.ReadOnly, Stored = false, Signed = true };
        return new([
            Number("104", "Motor output", "", 0.01m, 5, 15000, 750, Says(Setting.MotorRatedPower)) with
            {
                Form = new ParameterForm.Numeric(DisplayScale.Of(0.01m), new ParameterUnit.ChosenBy("131", [new(0, "kW", DisplayScale.Of(0.01m)), new(1, "hp", DisplayScale.Of(0.01m))]), 5, 15000, 1, []),
            },
            Number("106", "Motor current", "A", 0.1m, 1, 2000, 100, Says(Setting.MotorRatedCurrent)),
            OneOf("109", "Motor poles", [Setting.MotorPoleCount], (2, "2", ["2"]), (4, "4", ["4"]), (6, "6", ["6"])),
            OneOf("131", "Motor output stated in", [Setting.PowerUnit], (0, "kW", ["kW"]), (1, "hp", ["hp"])),
            Number("150", "Frequency at full voltage", "Hz", 0.1m, 100, 4000, 500, Says(Setting.BaseFrequency)),
            Number("151", "Highest frequency", "Hz", 0.1m, 100, 4000, 500, Says(Setting.MaximumFrequency)),
            Number("157", "Voltage at full frequency", "V", 1, 100, 500, 0, new Meaning.Quantity(Setting.MaximumOutputVoltage, Conversion.Direct.Instance, new Dictionary<long, SettingValue?> { [0] = null })) with
            {
                Form = new ParameterForm.Numeric(DisplayScale.Of(1), new ParameterUnit.Fixed("V"), 100, 500, 1, [new NamedValue(0, "as motor")]),
            },
            Number("170", "Acceleration", "s", 0.01m, 10, 60000, 500, Says(Setting.AccelerationTime, new Conversion.CountedOver(new Basis.Of("150")))) with { Width = 32 },
            Number("190", "Current limit", "%", 1, 20, 200, 150, Says(Setting.CurrentLimit, new Conversion.PartOf(new Basis.Of("106")))),
            OneOf("192", "Overload class", [Setting.OverloadTripClass], (5, "5", ["5"]), (10, "10", ["10"]), (20, "20", ["20"])),
            OneOf("220", "Run and direction", [Setting.RunCommandSource, Setting.PermittedDirection], (0, "panel forward", ["panel", "forward"]), (1, "panel both", ["panel", "both"]), (4, "bus forward", ["bus", "forward"]), (5, "bus both", ["bus", "both"])),
            OneOf("221", "Frequency from", [Setting.FrequencyReferenceSource], (0, "panel", ["panel"]), (3, "bus", ["bus"])),
            Number("900", "Store", "", 1, 0, 1, 0) with { Access = ParameterAccess.Action, Stored = false },
            word, reference, status, current, speed,
        ])
        {
            Family = "plain",
            Title = "Plain",
            Sizes = [Size],
            Command = new CommandInterface(word, reference, status, ReverseBit: 11, RampBits: false),
            Readings = [new(ReadingKind.OutputCurrent, current, Conversion.Direct.Instance), new(ReadingKind.Speed, speed, Conversion.Direct.Instance)],
            Store = new StoreProcedure("900", 1),
        };
    }

    private static DriveProfile MakeIndexed()
    {
        Parameter[] rows =
        [
            Number("6040h", "Controlword", "", 1, 0, 65535, 0) with { Access = ParameterAccess.Command, Stored = false },
            Number("6041h", "Statusword", "", 1, 0, 65535, 0) with { Access = ParameterAccess.ReadOnly, Stored = false },
            Number("6042h", "Target velocity", "rpm", 1, -24000, 24000, 0) with { Access = ParameterAccess.Command, Stored = false },
            Number("6046h:1", "Velocity minimum", "rpm", 1, 0, 24000, 0, Says(Setting.MinimumFrequency, Conversion.NoSlipSpeed.Instance)),
            Number("6046h:2", "Velocity maximum", "rpm", 1, 0, 24000, 1500, Says(Setting.MaximumFrequency, Conversion.NoSlipSpeed.Instance)),
            Number("6048h:1", "Acceleration, speed", "rpm", 1, 0, 24000, 1500, Says(Setting.AccelerationTime, new Conversion.SpeedChange("6048h:2"))),
            Number("6048h:2", "Acceleration, time", "s", 1, 1, 600, 5, Says(Setting.AccelerationTime, new Conversion.ChangeTime("6048h:1"))),
            Number("6073h", "Current limit", "‰", 1, 200, 2000, 1500, Says(Setting.CurrentLimit, new Conversion.PartOf(new Basis.Of("6075h")))),
            Number("6075h", "Motor current", "mA", 1, 100, 200000, 10000, Says(Setting.MotorRatedCurrent)),
            Number("6078h", "Current", "‰", 1, -32768, 32767, 0) with { Access = ParameterAccess.ReadOnly, Stored = false },
            Number("2101h", "Motor power", "", 1, 50, 150000, 7500, Says(Setting.MotorRatedPower)) with
            {
                Form = new ParameterForm.Numeric(DisplayScale.Of(1), new ParameterUnit.ChosenBy("2110h", [new(0, "W", DisplayScale.Of(1)), new(1, "hp", DisplayScale.Of(0.001m))]), 50, 150000, 1, []),
            },
            Number("2106h", "Pole pairs", "pole pairs", 1, 1, 6, 2, Says(Setting.MotorPoleCount)),
            OneOf("2110h", "Power shown in", [Setting.PowerUnit], (0, "kW", ["kW"]), (1, "hp", ["hp"])),
            Number("1010h:1", "Store", "", 1, 0, uint.MaxValue, 0) with { Access = ParameterAccess.Action, Stored = false },
        ];
        var placed = rows.Select((p, i) => p with { Register = (ushort)(2 * i), Width = 32, WordOrder = WordOrder.HighFirst, Signed = p.Number is not "1010h:1" }).ToList();
        Parameter Row(string number) => placed.Single(p => string.Equals(p.Number, number, StringComparison.Ordinal));
        return new(placed)
        {
            Family = "indexed",
            Title = "Indexed",
            Sizes = [Size],
            Command = new CommandInterface(Row("6040h"), Row("6042h"), Row("6041h"), ReverseBit: null, RampBits: true),
            Readings = [new(ReadingKind.OutputCurrent, Row("6078h"), new Conversion.PartOf(new Basis.Of("6075h")))],
            Store = new StoreProcedure("1010h:1", 0x65766173),
        };
    }

    private static DriveRating Rating() => new()
    {
        NominalPower = ShaftPower.FromWatts(7500),
        SupplyVoltage = (LineVoltage.FromVolts(380), LineVoltage.FromVolts(480)),
        SupplyPhases = 3,
        Overloads = [new("normal", LineCurrent.FromAmperes(17), Fraction.FromPercent(110), Duration.FromSeconds(60), Duration.FromSeconds(600))],
        PeakCurrent = LineCurrent.FromAmperes(24),
        PeakTime = Duration.FromSeconds(2),
        OvercurrentTrip = LineCurrent.FromAmperes(30),
        BusCapacitance = Capacitance.FromFarads(540e-6),
        DcChoke = Fraction.FromPercent(4),
        OvervoltageTrip = DcVoltage.FromVolts(820),
        OvervoltageControl = DcVoltage.FromVolts(780),
        ChopperLevel = DcVoltage.FromVolts(760),
        UndervoltageTrip = DcVoltage.FromVolts(380),
        SwitchingDerating = [(SwitchingFrequency.FromHertz(4000), Fraction.FromPercent(100))],
        AmbientDerating = new(Temperature.FromCelsius(40), 0.015, Temperature.FromCelsius(50)),
        AltitudeDerating = new(Length.FromMetres(1000), 0.0001, Length.FromMetres(4000)),
    };
}
