using Runup.Commissioning.Checks;
using Runup.Commissioning.Entry;
using Runup.Commissioning.Records;
using Runup.Commissioning.Tests.Bench;
using Runup.Profiles;

namespace Runup.Commissioning.Tests.Entry;

/// <summary>Tries to break the rules of writing, one by one.</summary>
public sealed class EntrySafetyTests
{
    private readonly BenchSite site = new();

    [Fact]
    public void Nothing_is_written_into_a_drive_that_runs()
    {
        site.Drive.State = PowerState.OperationEnabled;
        var report = site.Enter();
        report.Ending.ShouldBeOfType<EntryEnding.RefusedForSafety>().Why.ShouldContain("runs");
        NothingWritten();
    }

    [Fact]
    public void Nothing_is_written_while_the_shaft_is_still_driven_to_standstill()
    {
        site.Drive.State = PowerState.SwitchedOn;
        site.Drive.Hertz = 1000;
        site.Enter().Ending.ShouldBeOfType<EntryEnding.RefusedForSafety>();
        NothingWritten();
    }

    [Fact]
    public void Nothing_is_written_when_the_state_is_refused()
    {
        site.Script = op => op.Kind == "status" ? Mishap.Refused : Mishap.None;
        site.Enter().Ending.ShouldBeOfType<EntryEnding.RefusedForSafety>().Why.ShouldContain("can't be read");
        NothingWritten();
    }

    [Fact]
    public void Nothing_is_written_when_the_state_is_not_answered()
    {
        site.Script = op => op.Kind == "status" ? Mishap.ReplyLost : Mishap.None;
        site.Enter().Ending.ShouldBeOfType<EntryEnding.LinkFailed>();
        NothingWritten();
    }

    [Fact]
    public void A_drive_that_begins_to_run_in_between_gets_no_further_write()
    {
        site.Script = op =>
        {
            site.Drive.State = op is { Kind: "write", What: "151" } ? PowerState.OperationEnabled : site.Drive.State;
            return Mishap.None;
        };
        var report = site.Enter();
        report.Ending.ShouldBeOfType<EntryEnding.RefusedForSafety>();
        site.Sent("write").Last().What.ShouldBe("151");
        site.Sent("store").ShouldBeEmpty();
        EntryTests.Lists(report).ShouldBe(BenchSite.Sheet().Lines.Select(l => l.Number).Order());
        report.Failed.ShouldContain(f => f.Parameter == "220" && f.Outcome.Why!.Contains("runs"));
    }

    [Fact]
    public void A_drive_that_runs_is_not_told_to_store()
    {
        var last = BenchSite.Sheet().Lines[^1].Number;
        site.Script = op =>
        {
            site.Drive.State = op.Kind == "write" && op.What == last ? PowerState.OperationEnabled : site.Drive.State;
            return Mishap.None;
        };
        site.Enter().Ending.ShouldBeOfType<EntryEnding.RefusedForSafety>();
        site.Sent("store").ShouldBeEmpty();
    }

    [Theory]
    [InlineData("safe-torque-off-open-or-motor-isolated")]
    [InlineData("no-run-command-pending")]
    public void Nothing_is_written_before_a_person_confirmed_by_name(string what)
    {
        site.Person.Declines.Add(what);
        site.Enter().Ending.ShouldBeOfType<EntryEnding.RefusedForSafety>().Why.ShouldContain(what);
        NothingWritten();
    }

    [Fact]
    public void The_confirmations_are_recorded_with_who_gave_them_before_the_first_write()
    {
        site.Enter();
        var bodies = site.Records.Bodies.ToList();
        var first = bodies.FindIndex(b => b is RecordBody.WriteIntended);
        var before = bodies.Take(first).OfType<RecordBody.Confirmed>().ToList();
        before.Select(c => c.What).ShouldBe(["safe-torque-off-open-or-motor-isolated", "no-run-command-pending"]);
        before.ShouldAllBe(c => c.By == "A. Person");
    }

    [Fact]
    public void The_power_is_not_taken_away_without_the_same_confirmations()
    {
        var cycled = false;
        site.Person.CyclesPower = () =>
        {
            cycled = true;
            return Task.FromResult<PersonSays>(new PersonSays.Yes("A. Person"));
        };
        site.Person.Says = thing => thing is { What: "no-run-command-pending", Step: "before-power-cycle" } ? new PersonSays.No("contact closed") : null;
        site.Enter().Ending.ShouldBeOfType<EntryEnding.RefusedForSafety>();
        cycled.ShouldBeFalse();
    }

    [Fact]
    public void What_can_make_the_motor_start_goes_last_and_is_named()
    {
        site.Enter();
        var written = site.Sent("write").Select(o => o.What).ToList();
        written.TakeLast(2).ShouldBe(["220", "240"], ignoreOrder: true);
        foreach (var number in (string[])["220", "240"])
        {
            site.Told.ShouldContain(t => t.Line != null && t.Line.Number == number && t.Words.Contains("start by itself"));
        }
    }

    [Fact]
    public void A_parameter_that_is_safe_while_running_is_written_only_when_asked_for_by_name()
    {
        site.Drive.State = PowerState.OperationEnabled;
        var sheet = EntrySheet.Of([new EntryLine(BenchMake.Of("180"), -15)]);
        site.Enter(BenchSite.Job(sheet)).Ending.ShouldBeOfType<EntryEnding.RefusedForSafety>();
        NothingWritten();

        var named = BenchSite.Job(sheet) with { WhileRunning = new HashSet<string>(["180"]) };
        site.Enter(named);
        site.Drive.Held["180"].ShouldBe(-15);
    }

    [Fact]
    public void A_parameter_that_the_profile_does_not_mark_is_never_written_while_running()
    {
        site.Drive.State = PowerState.OperationEnabled;
        var named = BenchSite.Job(EntrySheet.Of([new EntryLine(BenchMake.Of("105"), 400)])) with { WhileRunning = new HashSet<string>(["105"]) };
        site.Enter(named).Ending.ShouldBeOfType<EntryEnding.RefusedForSafety>();
        NothingWritten();
    }

    [Fact]
    public void A_blocked_job_is_not_entered_and_the_drive_not_even_asked()
    {
        var report = site.Enter(BenchSite.Job() with { Verdict = new Verdict(["plate.base-frequency"], ["plate.base-frequency"], ["plate.base-frequency"]) });
        report.Ending.ShouldBeOfType<EntryEnding.RefusedForSafety>().Why.ShouldContain("plate.base-frequency");
        site.Log.ShouldBeEmpty();
    }

    [Fact]
    public void Another_drive_after_the_power_cycle_proves_nothing()
    {
        var properly = site.Person.CyclesPower;
        site.Person.CyclesPower = () =>
        {
            site.Drive.Identity = "Bench B-2 1.0";
            return properly();
        };
        site.Enter().Ending.ShouldBeOfType<EntryEnding.RefusedForSafety>().Why.ShouldContain("another drive");
    }

    [Fact]
    public void Entry_sends_no_command_to_the_motor()
    {
        site.Enter();
        site.Sent("command").ShouldBeEmpty();
    }

    [Fact]
    public void A_write_that_could_not_be_journalled_is_not_sent()
    {
        site.Records.Cut = () =>
        {
            if (site.Records.All.Count > 0 && site.Records.All[^1].Body is RecordBody.EntryBegun)
            {
                throw new IOException("disk full");
            }
        };
        Should.Throw<IOException>(() => site.Enter());
        NothingWritten();
    }

    private void NothingWritten()
    {
        site.Sent("write").ShouldBeEmpty();
        site.Records.Bodies.OfType<RecordBody.WriteIntended>().ShouldBeEmpty();
    }
}
