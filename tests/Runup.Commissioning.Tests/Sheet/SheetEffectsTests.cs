using Runup.Commissioning.Checks;
using Runup.Commissioning.Plan;
using Runup.Commissioning.Sheet;
using Runup.Commissioning.Tests.Checks;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Tests.Sheet;

/// <summary>The demo's pump on a drive that can't hold just what is wanted.</summary>
public sealed class SheetEffectsTests
{
    private static readonly DriveSize Size = DemoFiles.TernSize("7.5-400");
    private static readonly JobContext Pump = JobContext.For(DemoFiles.Job("swp-101.job.yaml"), Size.Rating);
    private static readonly SettingsPlan Plan = SettingsPlan.For(Pump);

    [Fact]
    public void Where_the_drive_holds_what_is_wanted_nothing_is_worked_out() => SheetEffects.Of(Pump, Plan, DemoFiles.Tern, Size).ShouldBeEmpty();

    [Fact]
    public void A_current_limit_out_of_reach_says_what_it_keeps_from_happening()
    {
        var effect = Effects(Narrowed("190", 20, 60), Plan)["190"];
        effect.ShouldStartWith("so it does not carry the load, which takes ");
        effect.ShouldContain("; it does not come to speed: it gets to ");
        effect.ShouldEndWith(" Hz and the current limit holds it there");
    }

    [Fact]
    public void A_ramp_that_ends_shorter_says_what_the_run_comes_to() =>
        Effects(Narrowed("172", 10, 600), Plan)["172"].ShouldMatch(@"^so it stops in \d\.\d+ s instead of 12\.\d s");

    [Fact]
    public void What_is_rounded_and_not_felt_is_said_to_be_nothing() =>
        Effects(Size, new([.. Plan.Lines.Select(l => l.Setting == Setting.TorqueBoost ? l with { Value = new SettingValue.Number(0.0164) } : l)]))["155"]
            .ShouldBe("no other start, stop or current comes of it, rehearsed");

    [Fact]
    public void What_no_run_feels_is_held_against_plate_and_job() =>
        Effects(Narrowed("191", 1, 100), Plan)["191"].ShouldStartWith("so it trips while running: the load takes ");

    [Fact]
    public void The_sheet_says_it_in_its_reason_and_apart()
    {
        var size = Narrowed("190", 20, 60);
        var entry = SheetModel.Of(Pump.Job, Plan, DemoFiles.Tern, size, SheetExtent.Decided, DateTimeOffset.UnixEpoch, null, Effects(size, Plan)).Entries.Single(e => e.Line.Parameter!.Number == "190");
        entry.Marks.Select(m => m.Word).ShouldContain("DIFFERS");
        entry.Effect.ShouldNotBeNull();
        entry.Why.ShouldEndWith("; " + entry.Effect);
    }

    private static IReadOnlyDictionary<string, string> Effects(DriveSize size, SettingsPlan plan) => SheetEffects.Of(Pump, plan, DemoFiles.Tern, size);

    private static DriveSize Narrowed(string number, long low, long high) =>
        Size with { Ranges = new Dictionary<string, ParameterRange>(StringComparer.Ordinal) { [number] = new(low, high) } };
}
