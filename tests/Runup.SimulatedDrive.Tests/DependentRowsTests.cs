using Runup.Files;
using Runup.Files.Profiles;
using Runup.Modbus;
using Runup.Modbus.Serving;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.SimulatedDrive.Tests;

/// <summary>The demo make with ranges and factory values that depend on other rows, and with bits.</summary>
public sealed class DependentRowsTests
{
    private static readonly DriveProfile Profile = Changed();

    [Fact]
    public void It_wakes_with_what_the_other_rows_decide() => Drive().Word(150).ShouldBe((ushort)500);

    [Fact]
    public void It_refuses_what_another_row_forbids_and_takes_it_once_that_is_changed()
    {
        var drive = Drive();
        drive.Put(152, 501).Refusal.ShouldBe(ExceptionCode.IllegalDataValue);
        drive.Put(151, 600).ShouldBe(DeviceAnswer.Done);
        drive.Put(152, 501).ShouldBe(DeviceAnswer.Done);
    }

    [Fact]
    public void A_row_that_resets_sets_what_depends_on_it_and_only_when_it_changes()
    {
        var drive = Drive();
        drive.Put(150, 450).ShouldBe(DeviceAnswer.Done);
        drive.Put(131, 0).ShouldBe(DeviceAnswer.Done);
        drive.Word(150).ShouldBe((ushort)450);
        drive.Put(131, 1).ShouldBe(DeviceAnswer.Done);
        drive.Word(150).ShouldBe((ushort)600);
    }

    [Fact]
    public void Bits_are_settings_at_work()
    {
        var memory = new DriveMemory(Profile, Profile.FindSize("7.5-400")!);
        memory.Take(Profile.Find("198")!, 0b1010);
        (memory.Settings.Choice(Setting.PhaseLoss), memory.Settings.Choice(Setting.OutputPhaseLoss), memory.Settings.Choice(Setting.EarthFault)).ShouldBe(("off", "trip", "warn"));
    }

    [Fact]
    public void What_needs_a_restart_is_read_back_at_once_and_acts_after_off_and_on()
    {
        var size = Profile.FindSize("7.5-400")!;
        var memory = new DriveMemory(Profile, size);
        var before = memory.Settings.Number(Setting.StationAddress);
        memory.Take(Profile.Find("250")!, 17);
        (memory.Values["250"], memory.Settings.Number(Setting.StationAddress)).ShouldBe((17, before));
        memory.Keep();
        memory.LosePower();
        (memory.Values["250"], memory.Settings.Number(Setting.StationAddress)).ShouldBe((17, 17));
    }

    private static VirtualDrive Drive() => Bench.Drive(Profile, "7.5-400", Bench.Plate, Bench.Pump, 400);

    private static DriveProfile Changed()
    {
        var text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", "drives", "tern" + ProfileReader.Extension));
        foreach (var (row, key, with) in ((string, string, string)[])
        [
            ("number: 150,", "default: 50.0", "default: {chosen-by: 131, 0: 50.0, 1: 60.0}"),
            ("number: 131,", "default: 0", "default: 0, resets: yes"),
            ("number: 152,", "default: 0.0", "default: 0.0, not-above: 151"),
            ("number: 198,", "choices: loss, default: 0, means: phase-loss", "scale: 1, low: 0, high: 15, default: 7, bits: {0: {means: phase-loss, 0: off, 1: trip}, 1: {means: output-phase-loss, 0: off, 1: trip}, 2-3: {means: earth-fault, 0: off, 1: trip, 2: warn}}"),
            ("number: 199,", ", means: output-phase-loss", ""),
            ("number: 205,", ", means: earth-fault", ""),
        ])
        {
            var line = text.Split('\n').Single(l => l.Contains(row, StringComparison.Ordinal));
            line.ShouldContain(key);
            text = text.Replace(line, line.Replace(key, with, StringComparison.Ordinal), StringComparison.Ordinal);
        }

        var problems = new Problems("tern");
        var profile = ProfileReader.Read(text, problems);
        problems.InOrder().ShouldBeEmpty();
        return profile!;
    }
}
