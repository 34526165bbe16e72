using System.Globalization;
using Runup.Profiles;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Files.Tests.Profiles;

/// <summary>Frames written by hand from the make's list hold what the profile declares to scale, sign, address and word order.</summary>
public sealed class FrameTests
{
    private static readonly DriveSize Size = Drives.Size("7.5-400");

    public static TheoryData<string, string, string, string> Settings => [.. Cases.Rows("tern-settings").Select(r => (r[0], r[1], r[2], r[3]))];

    public static TheoryData<string, string, string, string> Commands => [.. Cases.Rows("tern-commands").Select(r => (r[0], r[1], r[2], r[3]))];

    [Theory]
    [MemberData(nameof(Settings))]
    public void A_setting_is_shown_and_written_as_the_hand_has_it(string plan, string number, string display, string pdu)
    {
        var before = ParameterValues.Defaults(Drives.Tern, Size);
        var line = Sheet.For(Drives.Tern, Size, Cases.Plan(plan), before).Single(l => string.Equals(l.Parameter?.Number, number, StringComparison.Ordinal));
        line.Display.ShouldBe(display);
        Cases.Pdu(line.Parameter!, line.Raw!.Value).ShouldBe(pdu);
    }

    [Theory]
    [MemberData(nameof(Settings))]
    public void And_read_back_it_says_the_setting_again(string plan, string number, string display, string pdu)
    {
        _ = display;
        var wanted = Cases.Plan(plan);
        var parameter = Drives.Tern.Find(number)!;
        var raw = RegisterImage.Raw(parameter, Cases.Words(pdu).AsSpan()[^parameter.RegisterCount..]);
        var before = ParameterValues.Defaults(Drives.Tern, Size);
        var after = Sheet.After(Sheet.For(Drives.Tern, Size, wanted, before), before).With(number, raw);
        var read = SettingsReader.Read(Drives.Tern, Size, after);
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
    public void A_command_is_written_as_the_hand_has_it(string command, string hertz, string rotation, string pdu)
    {
        if (command is "store")
        {
            Cases.Pdu(Drives.Tern.Find(Drives.Tern.Store!.Parameter)!, Drives.Tern.Store.Write).ShouldBe(pdu);
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
        var profile = Drives.Tern;
        var values = ParameterValues.Defaults(profile, Size);
        var wordRaw = CommandCodec.WordRaw(profile.Command!, asked);
        var referenceRaw = CommandCodec.ReferenceRaw(profile, profile.Command!, asked, values)!.Value;
        Cases.Pdu(profile.Command!.Word.Register, [(ushort)wordRaw, (ushort)referenceRaw]).ShouldBe(pdu);
        CommandCodec.Read(profile, profile.Command, wordRaw, referenceRaw, values)!.Value.Frequency.ShouldBe(asked.Frequency);
    }

    [Fact]
    public void A_round_of_readings_says_what_the_hand_has()
    {
        var profile = Drives.Tern;
        var values = ParameterValues.Defaults(profile, Size);
        foreach (var row in Cases.Rows("tern-readings"))
        {
            var words = Cases.Words(row[0]);
            long? Raw(Parameter p) => RegisterImage.Raw(p, words.AsSpan(p.Register - 1002, p.RegisterCount));
            var round = ReadingCodec.Decode(profile, values, p => Raw(p));
            double Cell(int i) => double.Parse(row[i], CultureInfo.InvariantCulture);
            new StatusWord((ushort)Raw(profile.Command!.Status)!.Value).State.ShouldBe(Enum.Parse<PowerState>(row[1]));
            round.State.ShouldBe(Enum.Parse<PowerState>(row[1]));
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
}
