using System.Collections.Frozen;
using Runup.Engineering.Drives;
using Runup.Profiles;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Commissioning.Tests.Bench;

/// <summary>A small make built in code: plain numbers, the register is the number, 32 bits with the low word first, a unit chosen by a parameter.</summary>
internal static class BenchMake
{
    internal static DriveSize Size { get; } = new("7.5", Rating());

    internal static DriveProfile Profile { get; } = Make();

    internal static Parameter Of(string number) => Profile.Find(number)!;

    private static Parameter Number(string number, string name, string unit, decimal scale, long low, long high, long raw, Setting? says = null) => new()
    {
        Number = number,
        Name = name,
        Group = "All",
        Form = new ParameterForm.Numeric(DisplayScale.Of(scale), new ParameterUnit.Fixed(unit), low, high, 1, []),
        Register = ushort.Parse(number),
        Access = ParameterAccess.StoppedOnly,
        Default = raw,
        Meaning = says is null ? null : new Meaning.Quantity(says, Conversion.Direct.Instance, FrozenDictionary<long, SettingValue?>.Empty),
    };

    private static Parameter OneOf(string number, string name, IReadOnlyList<Setting> settings, params string[][] values) => new()
    {
        Number = number,
        Name = name,
        Group = "All",
        Form = new ParameterForm.Choices([.. values.Select((v, i) => new NamedValue(i, string.Join(' ', v)))]),
        Register = ushort.Parse(number),
        Access = ParameterAccess.StoppedOnly,
        Default = 0,
        Meaning = new Meaning.Choice(settings, values.Select((v, i) => (v, i)).ToDictionary(x => (long)x.i, x => (IReadOnlyList<SettingValue>?)[.. x.v.Select(s => new SettingValue.Choice(s))])),
    };

    private static Parameter Reading(string number, string name, string unit, decimal scale, bool signed = false) =>
        Number(number, name, unit, scale, signed ? -32768 : 0, signed ? 32767 : 65535, 0) with { Access = ParameterAccess.ReadOnly, Stored = false, Signed = signed };

    private static DriveProfile Make()
    {
        var word = Number("1000", "Command word", "", 1, 0, 65535, 0) with { Access = ParameterAccess.Command, Stored = false };
        var reference = Number("1001", "Reference", "Hz", 0.01m, 0, 65535, 0) with { Access = ParameterAccess.Command, Stored = false };
        var status = Reading("1002", "Status word", "", 1);
        var hertz = Reading("1003", "Output frequency", "Hz", 0.01m);
        var current = Reading("1004", "Output current", "A", 0.1m);
        var bus = Reading("1005", "DC bus", "V", 1);
        var volts = Reading("1006", "Output voltage", "V", 1);
        var torque = Reading("1007", "Torque", "%", 0.1m, signed: true);
        var speed = Reading("1008", "Speed", "rpm", 1, signed: true);
        var state = Reading("1009", "State", "", 1);
        var trip = Reading("1010", "Last trip", "", 1);
        return new([
            Number("104", "Motor output", "kW", 0.01m, 5, 15000, 400, Setting.MotorRatedPower) with
            {
                Form = new ParameterForm.Numeric(DisplayScale.Of(0.01m), new ParameterUnit.ChosenBy("131", [new(0, "kW", DisplayScale.Of(0.01m)), new(1, "hp", DisplayScale.Of(0.01m))]), 5, 15000, 1, []),
            },
            Number("105", "Motor voltage", "V", 1, 100, 500, 230, Setting.MotorRatedVoltage),
            Number("106", "Motor current", "A", 0.1m, 1, 2000, 100, Setting.MotorRatedCurrent),
            Number("108", "Motor cos phi", "", 0.01m, 30, 100, 80, Setting.MotorPowerFactor) with
            {
                DefaultFrom = new Dependent.ByChoice("131", new Dictionary<long, long> { [0] = 80, [1] = 84 }),
            },
            OneOf("131", "Motor output stated in", [Setting.PowerUnit], ["kW"], ["hp"]) with { Resets = true },
            Number("150", "Frequency at full voltage", "Hz", 0.1m, 100, 4000, 600, Setting.BaseFrequency),
            Number("151", "Highest frequency", "Hz", 0.1m, 100, 4000, 600, Setting.MaximumFrequency),
            Number("152", "Lowest frequency", "Hz", 0.1m, 0, 4000, 0, Setting.MinimumFrequency),
            Number("170", "Acceleration", "s", 0.01m, 10, 600000, 500, Setting.AccelerationTime) with { Width = 32 },
            Number("172", "Deceleration", "s", 0.01m, 10, 600000, 500, Setting.DecelerationTime) with { Width = 32 },
            Number("180", "Skip offset", "Hz", 0.1m, -100, 100, 0) with { Signed = true, Access = ParameterAccess.AnyTime },
            OneOf("220", "Run and direction", [Setting.RunCommandSource, Setting.PermittedDirection], ["panel", "forward"], ["panel", "both"], ["terminals", "forward"], ["terminals", "both"], ["bus", "forward"], ["bus", "both"]),
            OneOf("221", "Frequency from", [Setting.FrequencyReferenceSource], ["panel"], ["analogue-1"], ["analogue-2"], ["bus"], ["fixed"]),
            OneOf("240", "Start after power loss", [Setting.RestartAfterPowerLoss], ["off"], ["on"]),
            Number("260", "Bus time-out", "s", 0.1m, 0, 600, 0, Setting.BusTimeout),
            OneOf("261", "On bus loss", [Setting.BusLossAction], ["none"], ["coast"], ["ramp"]),
            Number("900", "Store", "", 1, 0, 1, 0) with { Access = ParameterAccess.Action, Stored = false },
            word, reference, status, hertz, current, bus, volts, torque, speed, state, trip,
        ])
        {
            Family = "bench",
            Title = "Bench",
            Sizes = [Size],
            Identity = new("Bench", "B-1", "1.0"),
            Command = new CommandInterface(word, reference, status, ReverseBit: 11, RampBits: false),
            Readings =
            [
                new(ReadingKind.OutputFrequency, hertz, Conversion.Direct.Instance), new(ReadingKind.OutputCurrent, current, Conversion.Direct.Instance),
                new(ReadingKind.DcBusVoltage, bus, Conversion.Direct.Instance), new(ReadingKind.OutputVoltage, volts, Conversion.Direct.Instance),
                new(ReadingKind.Torque, torque, Conversion.Direct.Instance), new(ReadingKind.Speed, speed, Conversion.Direct.Instance),
                new(ReadingKind.State, state, Conversion.Direct.Instance), new(ReadingKind.LastTrip, trip, Conversion.Direct.Instance),
            ],
            Trips = new TripCodes([.. Enum.GetValues<TripCause>().Where(c => c != TripCause.None).Select(c => new TripCode((long)c, c))]),
            Store = new StoreProcedure("900", 1),
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
