using Runup.Commissioning.Entry;
using Runup.Commissioning.FirstRun;
using Runup.Commissioning.Tests.Bench;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.Commissioning.Tests.Contract;

/// <summary>What every link to a drive must keep to.</summary>
public abstract class DriveLinkContract
{
    private static readonly string[] Word = ["kW", "hp"];

    /// <summary>Does something on a link to a drive on the bench.</summary>
    private protected abstract void On(Func<IContractBench, Task> test);

    [Fact]
    public void It_says_what_the_drive_is() => On(async bench =>
        (await bench.Link.Identify(default)).ShouldBe(new LinkReply<string>.Answered("Bench B-1 1.0")));

    [Fact]
    public void It_reads_what_the_drive_holds_of_16_and_32_bits_and_below_zero() => On(async bench =>
    {
        bench.Drive.Held = bench.Drive.Held.With("105", 400).With("170", 70_000).With("180", -15);
        var read = await Read(bench, "105", "170", "180");
        read["105"].ShouldBe(400);
        read["170"].ShouldBe(70_000);
        read["180"].ShouldBe(-15);
    });

    [Fact]
    public void It_reads_all_parameters_in_one_call() => On(async bench =>
    {
        var all = BenchMake.Profile.Parameters.Where(p => p.IsKept).ToList();
        var read = await Read(bench, [.. all.Select(p => p.Number)]);
        read.Count.ShouldBe(all.Count);
        all.ShouldAllBe(p => read[p.Number] == bench.Drive.Held[p.Number]);
    });

    [Fact]
    public void A_parameter_that_the_drive_does_not_give_is_missing_from_the_answer_and_the_others_are_there() => On(async bench =>
    {
        bench.Drive.RefusesToRead.Add("105");
        var read = await Read(bench, "104", "105", "106");
        read.Keys.Order().ShouldBe(["104", "106"]);
    });

    [Fact]
    public void A_drive_that_gives_none_of_them_refuses() => On(async bench =>
    {
        bench.Drive.RefusesToRead.Add("105");
        (await bench.Link.Read([BenchMake.Of("105")], default)).ShouldBeOfType<LinkReply<IReadOnlyDictionary<string, long>>.Refused>().Why.ShouldContain("02");
    });

    [Theory]
    [InlineData("105", 415)]
    [InlineData("170", 70_001)]
    [InlineData("172", 599_999)]
    [InlineData("180", -100)]
    public void What_is_written_is_held(string number, long raw) => On(async bench =>
    {
        (await bench.Link.Write(BenchMake.Of(number), raw, default)).ShouldBeOfType<LinkReply<Written>.Answered>();
        bench.Drive.Held[number].ShouldBe(raw);
        (await Read(bench, number))[number].ShouldBe(raw);
    });

    [Fact]
    public void A_refused_write_says_so_and_changes_nothing() => On(async bench =>
    {
        var before = bench.Drive.Held["105"];
        bench.Drive.RefusesToWrite.Add("105");
        (await bench.Link.Write(BenchMake.Of("105"), 415, default)).ShouldBeOfType<LinkReply<Written>.Refused>().Why.ShouldContain("03");
        bench.Drive.Held["105"].ShouldBe(before);
    });

    [Fact]
    public void A_write_whose_reply_is_lost_is_unanswered_although_it_was_done() => On(async bench =>
    {
        bench.Mishap = Mishap.ReplyLost;
        (await bench.Link.Write(BenchMake.Of("105"), 415, default)).ShouldBeOfType<LinkReply<Written>.Unanswered>();
        bench.Drive.Held["105"].ShouldBe(415);
        bench.Mishap = Mishap.None;
        (await Read(bench, "105"))["105"].ShouldBe(415);
    });

    [Fact]
    public void A_link_that_was_lost_stays_lost() => On(async bench =>
    {
        await bench.PullCable();
        (await bench.Link.Read([BenchMake.Of("105")], default)).ShouldBeOfType<LinkReply<IReadOnlyDictionary<string, long>>.Unanswered>();
        (await bench.Link.Write(BenchMake.Of("105"), 415, default)).ShouldBeOfType<LinkReply<Written>.Unanswered>();
        (await bench.Link.Status(default)).ShouldBeOfType<LinkReply<DriveStatus>.Unanswered>();
        (await bench.Link.Command(new LinkCommand.Stop(), default)).ShouldBeOfType<LinkReply<Written>.Unanswered>();
        (await bench.Link.Store(default)).ShouldBeOfType<LinkReply<Written>.Unanswered>();
        (await bench.Link.Identify(default)).ShouldBeOfType<LinkReply<string>.Unanswered>();
        bench.Drive.Held["105"].ShouldBe(230);
    });

    [Fact]
    public void What_was_stored_outlives_the_power() => On(async bench =>
    {
        await bench.Link.Write(BenchMake.Of("105"), 415, default);
        (await bench.Link.Store(default)).ShouldBeOfType<LinkReply<Written>.Answered>();
        await bench.Link.Write(BenchMake.Of("106"), 155, default);
        bench.Drive.PowerCycle();
        bench.Drive.Held["105"].ShouldBe(415);
        bench.Drive.Held["106"].ShouldBe(100);
    });

    [Fact]
    public void State_and_readings_come_in_one_round() => On(async bench =>
    {
        var status = await Status(bench);
        status.State.ShouldBe(PowerState.SwitchOnDisabled);
        status.Running.ShouldBeFalse();
        status.DcBusV.ShouldBe(561);
        status.OutputFrequencyHz.ShouldBe(0);
        status.Trip.ShouldBe(TripCause.None);
    });

    [Theory]
    [InlineData(PowerState.OperationEnabled)]
    [InlineData(PowerState.QuickStopActive)]
    public void A_live_output_counts_as_running(PowerState state) => On(async bench =>
    {
        bench.Drive.State = state;
        bench.Drive.Hertz = 25;
        (await Status(bench)).Running.ShouldBeTrue();
    });

    [Fact]
    public void A_trip_is_told_with_its_cause() => On(async bench =>
    {
        bench.Drive.TripNow(TripCause.Overvoltage);
        var status = await Status(bench);
        status.State.ShouldBe(PowerState.Fault);
        status.Trip.ShouldBe(TripCause.Overvoltage);
    });

    [Fact]
    public void A_drive_that_follows_the_bus_is_prepared_without_running() => On(async bench =>
    {
        FromBus(bench);
        (await bench.Link.Command(new LinkCommand.Prepare(), default)).ShouldBeOfType<LinkReply<Written>.Answered>();
        bench.Drive.State.ShouldBe(PowerState.SwitchedOn);
        bench.Drive.FrequenciesRun.ShouldBeEmpty();
    });

    [Fact]
    public void A_drive_that_takes_its_commands_elsewhere_is_not_prepared() => On(async bench =>
    {
        (await bench.Link.Command(new LinkCommand.Prepare(), default)).ShouldBeOfType<LinkReply<Written>.Refused>();
        bench.Drive.State.ShouldBe(PowerState.SwitchOnDisabled);
    });

    [Fact]
    public void A_tripped_drive_is_neither_prepared_nor_reset() => On(async bench =>
    {
        FromBus(bench);
        bench.Drive.TripNow(TripCause.Overcurrent);
        (await bench.Link.Command(new LinkCommand.Prepare(), default)).ShouldBeOfType<LinkReply<Written>.Refused>();
        await bench.Link.Command(new LinkCommand.Stop(), default);
        await bench.Link.Command(new LinkCommand.Coast(), default);
        bench.Drive.State.ShouldBe(PowerState.Fault);
        bench.Drive.FaultResetSeen.ShouldBeFalse();
    });

    [Theory]
    [InlineData(Rotation.Forward, 4.99)]
    [InlineData(Rotation.Reverse, -5)]
    public void It_runs_at_what_was_permitted_and_stops(Rotation rotation, double hz) => On(async bench =>
    {
        FromBus(bench);
        using var hold = new RunHold(bench.Time);
        var permit = await Permits.For(hold, rotation, bench.Time);
        await bench.Link.Command(new LinkCommand.Prepare(), default);
        (await bench.Link.Command(((RunAnswer.Granted)permit.Ask(hz)).Command, default)).ShouldBeOfType<LinkReply<Written>.Answered>();
        bench.Drive.State.ShouldBe(PowerState.OperationEnabled);
        bench.Drive.FrequenciesRun[^1].ShouldBe(hz, 1e-9);
        (await Status(bench)).Running.ShouldBeTrue();

        (await bench.Link.Command(new LinkCommand.Stop(), default)).ShouldBeOfType<LinkReply<Written>.Answered>();
        bench.Drive.State.ShouldBe(PowerState.SwitchedOn);
        (await bench.Link.Command(new LinkCommand.Coast(), default)).ShouldBeOfType<LinkReply<Written>.Answered>();
        bench.Drive.State.ShouldBe(PowerState.SwitchOnDisabled);
        bench.Drive.Hertz.ShouldBe(0);
    });

    [Fact]
    public void A_call_that_is_given_up_says_so_by_exception() => On(async bench =>
    {
        using var gone = new CancellationTokenSource();
        await gone.CancelAsync();
        await Should.ThrowAsync<OperationCanceledException>(() => bench.Link.Status(gone.Token));
        (await Status(bench)).State.ShouldBe(PowerState.SwitchOnDisabled);
    });

    [Fact]
    public void A_choice_is_written_by_its_number() => On(async bench =>
    {
        await bench.Link.Write(BenchMake.Of("131"), Array.IndexOf(Word, "hp"), default);
        bench.Drive.Held["131"].ShouldBe(1);
    });

    private static void FromBus(IContractBench bench) => bench.Drive.Held = bench.Drive.Held.With("220", 5).With("221", 3);

    private static async Task<IReadOnlyDictionary<string, long>> Read(IContractBench bench, params string[] numbers) =>
        (await bench.Link.Read([.. numbers.Select(BenchMake.Of)], default)).ShouldBeOfType<LinkReply<IReadOnlyDictionary<string, long>>.Answered>().Value;

    private static async Task<DriveStatus> Status(IContractBench bench) =>
        (await bench.Link.Status(default)).ShouldBeOfType<LinkReply<DriveStatus>.Answered>().Value;
}

/// <summary>A link to a drive on the bench.</summary>
internal interface IContractBench
{
    IDriveLink Link { get; }

    BenchDrive Drive { get; }

    TimeProvider Time { get; }

    /// <summary>What goes wrong with every exchange from now on.</summary>
    Mishap Mishap { get; set; }

    Task PullCable();
}
