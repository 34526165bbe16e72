using System.Globalization;
using Runup.Commissioning.Handover.ControlSystem;
using Runup.Commissioning.Survey;
using Runup.Files.Jobs;
using Runup.Profiles;
using Runup.Quantities;
using Runup.Settings;

namespace Runup.Files.Tests.Profiles;

/// <summary>What the handover tells whoever programs the control system, against frames and tables that were written by hand.</summary>
public sealed class ProgrammersPageTests
{
    private static readonly string[] Makes = ["tern", "osprey"];

    /// <summary>Run commands of <c>data/cases/MAKE-commands.csv</c>, written by hand from the make's list.</summary>
    public static TheoryData<string, string, string, string> RunCommands =>
        [.. Makes.SelectMany(make => Cases.Rows($"{make}-commands").Where(r => r[0] is "run").Select(r => (make, r[1], r[2], r[3])))];

    [Theory]
    [MemberData(nameof(RunCommands))]
    public void A_run_command_worked_out_is_the_hand_written_frame_in_its_order(string make, string hertz, string rotation, string pdu)
    {
        var (profile, values) = FromTheFactory(make);

        var example = ReferenceExample.Of(profile, profile.Command!, ElectricalFrequency.FromHertz(double.Parse(hertz, CultureInfo.InvariantCulture)), rotation is "reverse" ? Rotation.Reverse : Rotation.Forward, values);

        example.ShouldNotBeNull().Requests.ShouldBe(pdu.Split(" | "));
    }

    [Theory]
    [InlineData("tern", 35, "35.00 Hz", 3500, "0DACh")]
    [InlineData("osprey", 35, "1050 rpm", 1050, "0000h 041Ah")]
    public void Thirty_five_hertz_read_as_worked_out_by_hand(string make, double hertz, string display, long counts, string words)
    {
        var (profile, values) = FromTheFactory(make);

        var example = ReferenceExample.Of(profile, profile.Command!, ElectricalFrequency.FromHertz(hertz), Rotation.Forward, values).ShouldNotBeNull();

        (example.Display, example.Raw, example.Words).ShouldBe((display, counts, words));
    }

    [Theory]
    [InlineData("tern", "run", "000Fh")]
    [InlineData("tern", "run in reverse", "080Fh")]
    [InlineData("osprey", "run", "007Fh")]
    [InlineData("osprey", "run in reverse", "007Fh")]
    public void The_word_to_run_is_that_of_the_make(string make, string name, string word) =>
        WordRow.OfCommand(FromTheFactory(make).Profile.Command!, mayReverse: true).Single(w => w.Name == name).Word.ShouldBe(word);

    [Theory]
    [InlineData("tern")]
    [InlineData("osprey")]
    public void A_drive_that_is_set_to_forward_only_is_given_no_word_for_reverse(string make)
    {
        var command = FromTheFactory(make).Profile.Command!;
        WordRow.OfCommand(command, mayReverse: false).ShouldNotContain(w => w.Name.Contains("reverse", StringComparison.Ordinal));
        BitRow.OfCommand(command, mayReverse: false).ShouldNotContain(b => b.Meaning.StartsWith("reverse", StringComparison.Ordinal));
        BitRow.OfCommand(command, mayReverse: false).Count(b => b.Meaning.StartsWith("leave 0: it would reverse", StringComparison.Ordinal)).ShouldBe(command.ReverseBit is null ? 0 : 1);
    }

    /// <summary>Words of <c>data/cases/cia402-commands.csv</c>, seen in public implementations of the profile.</summary>
    [Theory]
    [InlineData("shutdown", "shutdown")]
    [InlineData("switch on", "switch on")]
    [InlineData("quick stop", "quick stop")]
    [InlineData("coast", "disable voltage")]
    [InlineData("reset a trip", "fault reset")]
    public void Words_are_those_of_the_standard(string name, string inTheTable)
    {
        var hex = Cases.Rows("cia402-commands").Single(r => r[0] == inTheTable)[6].Split(' ')[0][2..] + "h";
        foreach (var make in Makes)
        {
            WordRow.OfCommand(FromTheFactory(make).Profile.Command!, mayReverse: true).Single(w => w.Name == name).Word.ShouldBe(hex);
        }
    }

    [Fact]
    public void Bits_of_the_status_word_are_named_as_in_the_standard()
    {
        foreach (var row in Cases.Rows("cia402-statusword-bits").Where(r => !r[1].Contains("specific", StringComparison.Ordinal)))
        {
            var ours = BitRow.OfStatus.Single(b => b.Bit == int.Parse(row[0], CultureInfo.InvariantCulture)).Meaning;
            // Of "quick stop (0 = ...)" and the like the first words.
            ours.ShouldContain(row[1].Split(" (", 2)[0].Replace(" active", "", StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("osprey", new[] { 4, 5, 6 }, true)]
    [InlineData("tern", new[] { 4, 5, 6 }, false)]
    [InlineData("tern", new[] { 11 }, true)]
    [InlineData("osprey", new[] { 11 }, false)]
    public void A_bit_is_explained_where_the_make_uses_it(string make, int[] bits, bool uses)
    {
        var rows = BitRow.OfCommand(FromTheFactory(make).Profile.Command!, mayReverse: true);
        foreach (var bit in bits)
        {
            (rows.Single(r => r.Bit == bit).Meaning is not ("leave 0" or "not used by this drive")).ShouldBe(uses);
        }

        rows.Select(r => r.Bit).ShouldBe(Enumerable.Range(0, 16));
    }

    [Theory]
    [InlineData(0, "ramp", "when the control system falls silent the motor RUNS ON")]
    [InlineData(0.4, "ramp", "After that long without a valid request the drive brings the motor down on its ramp (parameter 261 On loss of bus = ramp)")]
    [InlineData(0.4, "coast", "the drive lets the motor coast")]
    [InlineData(0.4, "none", "the drive does nothing: the motor RUNS ON")]
    public void What_silence_does_is_said_in_words(double timeout, string action, string said) =>
        string.Join(' ', Page(s => s.With(Setting.BusTimeout, timeout).With(Setting.BusLossAction, action)).Silence).ShouldContain(said);

    [Fact]
    public void A_drive_that_follows_its_terminals_is_neither_started_nor_stopped_from_here()
    {
        var page = Page(s => s.With(Setting.RunCommandSource, "terminals"));

        page.WhoCommands.ShouldContain("from: terminals. What is written here starts the motor only after that setting is changed");
        page.Silence[0].ShouldBe("As it was left the drive is run from: terminals; silence on the bus stops nothing then. What follows holds once it is run from the bus.");
    }

    [Fact]
    public void Registers_stand_from_0_and_behind_a_4_from_1()
    {
        var word = Page(s => s).Registers[0];

        (word.Register, word.Holding).ShouldBe(((ushort)1000, "41001"));
        (word with { Register = 9998 }).Holding.ShouldBe("49999");
        (word with { Register = 9999 }).Holding.ShouldBe("410000");
    }

    [Fact]
    public void A_reading_shows_the_plate_in_counts_and_registers()
    {
        var readings = Page(s => s).Readings;

        // 14.4 A in 0.1 A are 144 counts, 90 in hex; by hand.
        readings.Single(r => r.Name == "output current").Example.ShouldBe("14.4 A = 144 = 0090h");
        readings.Single(r => r.Name == "output current").CountIsWorth.ShouldBe("0.1 A");
    }

    [Fact]
    public void Of_a_machine_that_is_run_from_its_own_control_no_start_is_written_down()
    {
        var page = Page(s => s, "A hoist is run from its own control only.");

        page.Start.ShouldBeEmpty();
        page.References.ShouldBeEmpty();
        page.CommandBits.ShouldBeEmpty();
        page.CommandWords.Select(w => w.Name).ShouldBe(["quick stop", "coast", "reset a trip"]);
        page.WhoCommands.ShouldStartWith("A hoist is run from its own control only. No start over the bus is written down here");
        page.Stop.ShouldNotBeEmpty();
        page.Readings.ShouldNotBeEmpty();
    }

    private static ProgrammersPage Page(Func<SettingSet, SettingSet> change, string? ownControlOnly = null)
    {
        var (profile, values) = FromTheFactory("tern");
        var size = profile.FindSize("7.5-400")!;
        var held = change(SettingSet.Empty.With(Setting.RunCommandSource, "bus").With(Setting.PermittedDirection, "forward"));
        var after = Sheet.After(profile, size, Sheet.For(profile, size, held, values), values);
        return ProgrammersPage.Of(Pump, profile, SettingsReader.Read(profile, size, after), after, isAsLeft: true, ownControlOnly).ShouldNotBeNull();
    }

    private static Job Pump { get; } = JobFile.ReadText("""
        runup: 1
        tag: P-101
        supply: {voltage: 400 V, frequency: 50 Hz}
        motor:
          plate: {output: 7.5 kW, voltage: 400 V, current: 14.4 A, frequency: 50 Hz, speed: 1460 rpm}
        drive: {profile: tern, size: "7.5-400"}
        machine: {load: quadratic, torque: 42 N·m, at-speed: 1460 rpm}
        operation: {maximum-frequency: 50 Hz}
        """, "p-101.job.yaml").ShouldBeOfType<JobReading.Read>().Job;

    private static (DriveProfile Profile, ParameterValues Values) FromTheFactory(string make)
    {
        var profile = Drives.Of(make);
        return (profile, ParameterValues.Defaults(profile, profile.FindSize("7.5-400")!));
    }
}
