using Runup.Commissioning.Entry;
using Runup.Commissioning.FirstRun;

namespace Runup.Acceptance.Tests.OverTheWire;

/// <summary>Tests against a drive that runs in real time have the computer for themselves.</summary>
[CollectionDefinition("real time", DisableParallelization = true)]
public sealed class RealTime;

/// <summary>The rules of what can hurt someone, on Tern: command word and reference in one frame.</summary>
[Collection("real time")]
public sealed class TernSafetyTests() : SafetyTests("tern");

/// <summary>The same on Osprey: velocity mode, two frames, speeds in rpm.</summary>
[Collection("real time")]
public sealed class OspreySafetyTests() : SafetyTests("osprey");

/// <summary>The rules of what can hurt someone, tried over real Modbus TCP against the simulated drive in real time.</summary>
public abstract class SafetyTests(string make)
{
    private static readonly TimeSpan OneSecond = TimeSpan.FromSeconds(1);

    [Fact]
    public async Task The_drive_is_proved_to_stop_by_itself_before_any_higher_step()
    {
        await using var site = new WireSite(make);
        var person = new TestPerson(site.Host);
        (await site.Enter(person)).Ending.ShouldBeOfType<EntryEnding.Finished>();
        var report = await site.FirstRun(person);

        report.Proof.ShouldNotBeNull();
        report.Proof.BeganAfter.ShouldBeLessThanOrEqualTo(OneSecond);
        report.Steps.Select(s => s.Step).ShouldBe(["signals", "standstill", "set-up", "bus-loss-proof", "uncoupled-5-hz", "uncoupled-10-hz"]);
        report.NotPutBack.ShouldBeEmpty();
        NoTripWasReset(site);
    }

    [Theory(Timeout = 120_000)]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_hold_that_ends_stops_the_motor_within_a_second(bool letsGo)
    {
        await using var site = new WireSite(make);
        var reaction = new TaskCompletionSource<TimeSpan>();
        var person = new TestPerson(site.Host)
        {
            Holding = (step, hold, beats) =>
            {
                if (step == "uncoupled-5-hz")
                {
                    _ = EndLater(site, hold, beats, letsGo, reaction);
                }
            },
        };
        (await site.Enter(person)).Ending.ShouldBeOfType<EntryEnding.Finished>();
        var report = await site.FirstRun(person);

        (await reaction.Task.WaitAsync(TimeSpan.FromSeconds(20), TestContext.Current.CancellationToken)).ShouldBeLessThanOrEqualTo(OneSecond);
        report.Ending.ShouldNotBeOfType<FirstRunEnding.Finished>();
        NoTripWasReset(site);
    }

    [Fact(Timeout = 120_000)]
    public async Task A_cable_pulled_while_the_motor_runs_stops_it_by_its_own_time_out_within_a_second()
    {
        await using var site = new WireSite(make);
        var reaction = new TaskCompletionSource<TimeSpan>();
        var person = new TestPerson(site.Host)
        {
            Holding = (step, _, _) =>
            {
                if (step == "uncoupled-5-hz")
                {
                    _ = CutLater(site, reaction);
                }
            },
        };
        (await site.Enter(person)).Ending.ShouldBeOfType<EntryEnding.Finished>();
        var report = await site.FirstRun(person);

        (await reaction.Task.WaitAsync(TimeSpan.FromSeconds(20), TestContext.Current.CancellationToken)).ShouldBeLessThanOrEqualTo(OneSecond);
        report.Ending.ShouldNotBeOfType<FirstRunEnding.Finished>();
        NoTripWasReset(site);
    }

    [Fact(Timeout = 120_000)]
    public async Task Nothing_is_written_while_the_motor_runs()
    {
        await using var site = new WireSite(make);
        var person = new TestPerson(site.Host);
        (await site.Enter(person)).Ending.ShouldBeOfType<EntryEnding.Finished>();
        while (site.Host.Drive.State != Profiles.PowerState.SwitchOnDisabled)
        {
            await Task.Delay(10, TestContext.Current.CancellationToken);
        }

        site.RunPastTheProgram(10);
        while (site.Host.Drive.Now.OutputFrequencyHz < 1)
        {
            await Task.Delay(10, TestContext.Current.CancellationToken);
        }

        var before = site.Sent.Count;
        var report = await site.Enter(person);
        report.Ending.ShouldBeOfType<EntryEnding.RefusedForSafety>();
        report.Written.ShouldBeEmpty();
        site.Sent.Skip(before).ShouldAllBe(frame => frame[7] != 6 && frame[7] != 16);
    }

    [Fact]
    public async Task An_entry_sends_no_run_command()
    {
        await using var site = new WireSite(make);
        (await site.Enter(new TestPerson(site.Host))).Ending.ShouldBeOfType<EntryEnding.Finished>();
        site.ControlWords().ShouldBeEmpty();
    }

    private static async Task EndLater(WireSite site, RunHold hold, IDisposable beats, bool letsGo, TaskCompletionSource<TimeSpan> reaction)
    {
        await AtSpeed(site);
        var at = TimeProvider.System.GetTimestamp();
        beats.Dispose();
        if (letsGo)
        {
            hold.Release(HoldEnd.Released);
        }

        reaction.SetResult(await site.StopReaction(at));
    }

    private static async Task CutLater(WireSite site, TaskCompletionSource<TimeSpan> reaction)
    {
        await AtSpeed(site);
        var at = TimeProvider.System.GetTimestamp();
        site.Wire.Cut();
        reaction.SetResult(await site.StopReaction(at));
    }

    private static async Task AtSpeed(WireSite site)
    {
        while (site.Host.Drive.Now.OutputFrequencyHz < 4.9)
        {
            await Task.Delay(5, TestContext.Current.CancellationToken);
        }
    }

    private static void NoTripWasReset(WireSite site) => site.ControlWords().ShouldAllBe(word => !word.Has(7));
}
