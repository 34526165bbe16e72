using System.Globalization;
using Runup.Profiles;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Files.Tests.Profiles;

/// <summary>Frames written by hand from the makes' lists hold what the profiles declare to scale, sign, address and word order.</summary>
public sealed class FrameTests
{
    private const string Size = "7.5-400";
    private static readonly string[] Makes = ["tern", "osprey"];

    public static TheoryData<string, string, string, string, string> Settings =>
        [.. Makes.SelectMany(make => Cases.Rows($"{make}-settings").Select(r => (make, r[0], r[1], r[2], r[3])))];

    public static TheoryData<string, string, string, string, string> Commands =>
        [.. Makes.SelectMany(make => Cases.Rows($"{make}-commands").Select(r => (make, r[0], r[1], r[2], r[3])))];

    [Theory]
    [MemberData(nameof(Settings))]
    public void A_setting_is_shown_and_written_as_the_hand_has_it(string make, string plan, string number, string display, string pdu)
    {
        var (profile, size, before) = FromTheFactory(make);
        var line = Sheet.For(profile, size, Cases.Plan(plan), before).Single(l => string.Equals(l.Parameter?.Number, number, StringComparison.Ordinal));
        line.Display.ShouldBe(display);
        Cases.Pdu(line.Parameter!, line.Raw!.Value).ShouldBe(pdu);
    }

    [Theory]
    [MemberData(nameof(Settings))]
    public void And_read_back_it_says_the_setting_again(string make, string plan, string number, string display, string pdu)
    {
        _ = display;
        var (profile, size, before) = FromTheFactory(make);
        var wanted = Cases.Plan(plan);
        var parameter = profile.Find(number)!;
        var raw = RegisterImage.Raw(parameter, Cases.Words(pdu).AsSpan()[^parameter.RegisterCount..]);
        var after = Sheet.After(profile, size, Sheet.For(profile, size, wanted, before), before).With(number, raw);
        var read = SettingsReader.Read(profile, size, after);
        foreach (var setting in parameter.Meaning!.Settings)
        {
            if (wanted.Number(setting) is { } number_)
            {
                read.Number(setting)!.Value.ShouldBe(number_, Math.Abs(number_) * 1e-5);
            }
            else
            {
                read.Choice(setting).ShouldBe(wanted.Choice(setting));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void A_command_is_written_as_the_hand_has_it(string make, string command, string hertz, string rotation, string pdu)
    {
        var (profile, _, values) = FromTheFactory(make);
        if (command is "store")
        {
            Cases.Pdu(profile.Find(profile.Store!.Parameter)!, profile.Store.Write).ShouldBe(pdu);
            return;
        }

        var word = command switch
        {
            "shutdown" => ControlWord.Shutdown,
            "switch on" or "stop" => ControlWord.SwitchOn,
            "run" => ControlWord.EnableOperation,
            "coast" => ControlWord.DisableVoltage,
            _ => throw new InvalidOperationException(command),
        };
        var asked = new DriveCommand(word, ElectricalFrequency.FromHertz(double.Parse(hertz, CultureInfo.InvariantCulture)), rotation is "reverse" ? Rotation.Reverse : Rotation.Forward);
        var wordRaw = CommandCodec.WordRaw(profile.Command!, asked);
        var referenceRaw = CommandCodec.ReferenceRaw(profile, profile.Command!, asked, values)!.Value;
        CommandRequests.Of(profile, profile.Command!, asked, values)!.Select(r => Cases.Pdu(r.Register, r.Words)).ShouldBe(pdu.Split(" | "));
        var taken = CommandCodec.Read(profile, profile.Command!, wordRaw, referenceRaw, values)!.Value;
        taken.Frequency.Hertz.ShouldBeInRange(asked.Frequency.Hertz - 0.0334, asked.Frequency.Hertz + 1e-9);
        taken.Rotation.ShouldBe(asked.Rotation);
    }

    [Theory]
    [InlineData("tern")]
    [InlineData("osprey")]
    public void A_round_of_readings_says_what_the_hand_has(string make)
    {
        var (profile, _, values) = FromTheFactory(make);
        foreach (var row in Cases.Rows($"{make}-readings"))
        {
            var answered = Cases.Registers(row[0]);
            long? Raw(Parameter p) => RegisterImage.Raw(p, Enumerable.Range(p.Register, p.RegisterCount).Select(at => answered[at]).ToArray());
            var round = ReadingCodec.Decode(profile, values, p => Raw(p));
            double Cell(int i) => double.Parse(row[i], CultureInfo.InvariantCulture);
            new StatusWord((ushort)Raw(profile.Command!.Status)!.Value).State.ShouldBe(Enum.Parse<PowerState>(row[1]));
            if (profile.Readings.Any(r => r.Kind == ReadingKind.State))
            {
                round.State.ShouldBe(Enum.Parse<PowerState>(row[1]));
            }

            round.OutputFrequency!.Value.Hertz.ShouldBe(Cell(2), 1e-9);
            round.OutputCurrent!.Value.Amperes.ShouldBe(Cell(3), 1e-9);
            round.DcBus!.Value.Volts.ShouldBe(Cell(4), 1e-9);
            round.OutputVoltage!.Value.Volts.ShouldBe(Cell(5), 1e-9);
            round.Torque!.Value.Percent.ShouldBe(Cell(6), 1e-9);
            round.Speed!.Value.Rpm.ShouldBe(Cell(7), 1e-9);
            round.LastTrip!.Value.Name().ShouldBe(row[8]);

            // And back, but for the state, whose word has bits of the moment.
            foreach (var (parameter, raw) in ReadingCodec.Encode(profile, values, round))
            {
                raw.ShouldBe(Raw(parameter)!.Value, parameter.ToString());
            }
        }
    }

    private static (DriveProfile Profile, DriveSize Size, ParameterValues Values) FromTheFactory(string make)
    {
        var profile = Drives.Of(make);
        var size = profile.FindSize(Size)!;
        return (profile, size, ParameterValues.Defaults(profile, size));
    }
}
