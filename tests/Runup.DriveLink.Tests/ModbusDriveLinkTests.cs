using Runup.Commissioning.Entry;
using Runup.Commissioning.Tests.Bench;
using Runup.Commissioning.Tests.Contract;
using Runup.Modbus;

namespace Runup.DriveLink.Tests;

/// <summary>The link over Modbus TCP keeps to the contract, byte for byte through a real connection.</summary>
public sealed class ModbusDriveLinkTests : DriveLinkContract
{
    private protected override void On(Func<IContractBench, Task> test) => Modbus(bench => test(bench));

    [Fact]
    public void A_16_bit_value_goes_by_function_6_and_a_32_bit_value_in_one_request_by_function_16() => Modbus(async bench =>
    {
        await bench.Link.Write(BenchMake.Of("105"), 400, default);
        await bench.Link.Write(BenchMake.Of("170"), 70_000, default);
        bench.Device.Requests.ShouldBe([("6", new RegisterRange(105, 1)), ("16", new RegisterRange(170, 2))]);
    });

    [Fact]
    public void A_drive_without_function_6_is_written_by_function_16() => Modbus(async bench =>
    {
        bench.Device.SpeaksFunction6 = false;
        (await bench.Link.Write(BenchMake.Of("105"), 400, default)).ShouldBeOfType<LinkReply<Written>.Answered>();
        bench.Drive.Held["105"].ShouldBe(400);
    });

    [Fact]
    public void Neighbours_are_read_in_one_request_and_a_gap_of_unknown_registers_is_not_bridged() => Modbus(async bench =>
    {
        await bench.Link.Read([.. BenchMake.Profile.Parameters.Where(p => p.Register is >= 104 and <= 173)], default);
        bench.Device.Requests.Select(r => r.Range).ShouldBe([new(104, 3), new(108, 1), new(131, 1), new(150, 3), new(170, 4)]);
    });

    [Fact]
    public void State_and_all_readings_take_one_request() => Modbus(async bench =>
    {
        await bench.Link.Status(default);
        bench.Device.Requests.ShouldBe([("read", new RegisterRange(1002, 9))]);
    });

    [Fact]
    public void A_reading_that_the_drive_does_not_have_costs_the_others_nothing() => Modbus(async bench =>
    {
        bench.Drive.RefusesToRead.Add("1006");
        var status = (await bench.Link.Status(default)).ShouldBeOfType<LinkReply<DriveStatus>.Answered>().Value;
        status.OutputVoltageV.ShouldBeNull();
        status.DcBusV.ShouldBe(561);
    });

    [Fact]
    public void A_drive_that_does_not_give_its_state_has_none() => Modbus(async bench =>
    {
        bench.Drive.RefusesToRead.Add("1002");
        (await bench.Link.Status(default)).ShouldBeOfType<LinkReply<DriveStatus>.Refused>();
    });

    [Fact]
    public void Command_word_and_reference_travel_in_one_request() => Modbus(async bench =>
    {
        await bench.Link.Command(new LinkCommand.Coast(), default);
        bench.Device.Requests.ShouldBe([("16", new RegisterRange(1000, 2))]);
    });

    [Fact]
    public void A_busy_drive_is_asked_again() => Modbus(async bench =>
    {
        bench.Device.BusyTimes = 2;
        (await bench.Link.Write(BenchMake.Of("105"), 400, default)).ShouldBeOfType<LinkReply<Written>.Answered>();
        bench.Drive.Held["105"].ShouldBe(400);
    });

    [Fact]
    public void A_drive_that_stays_busy_is_not_asked_for_each_parameter_alone() => Modbus(async bench =>
    {
        bench.Device.BusyTimes = 100;
        (await bench.Link.Read([BenchMake.Of("105"), BenchMake.Of("106")], default))
            .ShouldBeOfType<LinkReply<IReadOnlyDictionary<string, long>>.Unanswered>().Why.ShouldContain("06");
        bench.Device.Requests.Count.ShouldBeLessThan(10);
    });

    [Fact]
    public void A_command_is_never_sent_twice_to_a_busy_drive() => Modbus(async bench =>
    {
        bench.Device.BusyTimes = 1;
        (await bench.Link.Command(new LinkCommand.Stop(), default)).ShouldBeOfType<LinkReply<Written>.Refused>();
        bench.Device.Requests.ShouldHaveSingleItem();
    });

    // Modbus Application Protocol V1.1b3, clause 7: 05 is "accepted, takes long", 0A and 0B come from a gateway.
    [Theory]
    [InlineData(0x05)]
    [InlineData(0x0A)]
    [InlineData(0x0B)]
    public void An_exception_that_does_not_say_what_became_of_the_write_leaves_it_unanswered(byte code) => Modbus(async bench =>
    {
        bench.Device.Answers = new ExceptionCode(code);
        (await bench.Link.Write(BenchMake.Of("105"), 400, default)).ShouldBeOfType<LinkReply<Written>.Unanswered>();
    });

    [Fact]
    public void A_reading_is_never_written() => Modbus(async bench =>
    {
        (await bench.Link.Write(BenchMake.Of("1004"), 1, default)).ShouldBeOfType<LinkReply<Written>.Refused>();
        (await bench.Link.Write(BenchMake.Of("1000"), 15, default)).ShouldBeOfType<LinkReply<Written>.Refused>();
        bench.Device.Requests.ShouldBeEmpty();
    });

    [Fact]
    public async Task Where_nobody_listens_there_is_no_link_and_it_says_why()
    {
        var bench = await ModbusBench.Start();
        await bench.DisposeAsync();
        var port = int.Parse(bench.Link.Description.Split(':', '/')[4]);
        var opening = await new ModbusDriveLinks(new("127.0.0.1", port, 1), BenchMake.Profile, TimeProvider.System).Open(default);
        opening.ShouldBeOfType<LinkOpening.Failed>().Why.ShouldContain("nobody listens");
    }

    private static void Modbus(Func<ModbusBench, Task> test) => Task.Run(async () =>
    {
        await using var bench = await ModbusBench.Start();
        await test(bench);
    }).GetAwaiter().GetResult();
}
