using System.Reflection;
using Microsoft.Extensions.Time.Testing;
using Runup.Commissioning.Entry;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Tests.Contract;
using Runup.Profiles;

namespace Runup.Commissioning.Tests.FirstRun;

public sealed class RunPermitTests
{
    private readonly FakeTimeProvider time = new();

    [Fact]
    public async Task A_frequency_beyond_the_steps_limit_is_refused()
    {
        using var hold = new RunHold(time);
        var permit = await Permits.For(hold, Rotation.Forward, time, limitHz: 10);
        permit.Ask(10).ShouldBeOfType<RunAnswer.Granted>().Command.FrequencyHz.ShouldBe(10);
        permit.Ask(10.01).ShouldBeOfType<RunAnswer.Refused>();
        permit.Ask(double.NaN).ShouldBeOfType<RunAnswer.Refused>();
        permit.Ask(double.PositiveInfinity).ShouldBeOfType<RunAnswer.Refused>();
    }

    [Fact]
    public async Task A_steps_limit_is_cut_to_the_sheets_maximum()
    {
        using var hold = new RunHold(time);
        (await Permits.For(hold, Rotation.Forward, time, limitHz: 87)).LimitHz.ShouldBe(50);
    }

    [Theory]
    [InlineData(Rotation.Forward, -3)]
    [InlineData(Rotation.Reverse, 3)]
    public async Task The_other_direction_is_refused(Rotation rotation, double hz)
    {
        using var hold = new RunHold(time);
        (await Permits.For(hold, rotation, time)).Ask(hz).ShouldBeOfType<RunAnswer.Refused>();
    }

    [Fact]
    public async Task A_direction_that_the_sheet_does_not_permit_gets_no_permit()
    {
        using var hold = new RunHold(time);
        var step = new FirstRunStep.Signals("bench", "bench", []);
        var (checks, _) = await StepChecks.Confirm(step, "T", new Bench.BenchPerson(time), new Bench.BenchRecords(), default);
        Should.Throw<ArgumentException>(() => RunPermit.ForStep(checks!, BusLossProof.Judge(TimeSpan.FromSeconds(0.5), null)!, hold, new RunLimits(5, 50, ReversePermitted: false), 5, Rotation.Reverse));
    }

    [Fact]
    public async Task Without_a_hold_there_is_no_command()
    {
        using var hold = new RunHold(time);
        var permit = await Permits.For(hold, Rotation.Forward, time);
        hold.Release(HoldEnd.Released);
        permit.Ask(5).ShouldBeOfType<RunAnswer.Refused>();
    }

    [Fact]
    public void A_proof_seen_later_than_a_second_is_none()
    {
        BusLossProof.Judge(TimeSpan.FromSeconds(1.001), TimeSpan.FromSeconds(0.4)).ShouldBeNull();
        BusLossProof.Judge(TimeSpan.FromSeconds(1), TimeSpan.FromSeconds(0.4))!.BeganAfter.ShouldBe(TimeSpan.FromSeconds(0.4));
        BusLossProof.Judge(TimeSpan.FromSeconds(0.6), null)!.BeganAfter.ShouldBe(TimeSpan.FromSeconds(0.6));
    }

    // Only the first run makes run commands: nothing outside of Commissioning can call what makes one.
    [Theory]
    [InlineData(typeof(LinkCommand.Run))]
    [InlineData(typeof(RunPermit))]
    [InlineData(typeof(BusLossProof))]
    [InlineData(typeof(StepChecks))]
    public void What_a_run_command_needs_cannot_be_made_from_outside(Type type)
    {
        type.GetConstructors(BindingFlags.Public | BindingFlags.Instance).ShouldBeEmpty();
        type.GetMethods(BindingFlags.Public | BindingFlags.Static).Where(m => m.ReturnType == type).ShouldBeEmpty();
        type.GetProperties().ShouldAllBe(p => p.SetMethod == null || !p.SetMethod.IsPublic);
    }
}
