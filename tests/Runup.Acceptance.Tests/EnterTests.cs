using System.Text.Json;

namespace Runup.Acceptance.Tests;

public sealed class EnterTests
{
    private static readonly string[] Confirmed = ["--by", "A. Tester", "--confirm", "safe-torque-off-open-or-motor-isolated", "--confirm", "no-run-command-pending"];

    [Fact]
    public async Task As_found_is_kept_and_nothing_written()
    {
        using var scratch = new Scratch();
        var job = scratch.DemoJob();
        await using var simulator = await Simulator.Start(scratch, job);
        var run = await RunupProgram.Call(scratch.Folder, "read", job, "--link", simulator.Link, "--json");
        run.Status.ShouldBe(0);
        run.Json.GetProperty("identity").GetString().ShouldNotBeNullOrEmpty();
        var voltage = run.Json.GetProperty("parameters").EnumerateArray().Single(p => p.GetProperty("parameter").GetString() == "105");
        voltage.GetProperty("display").GetString().ShouldBe("400");
        voltage.GetProperty("raw").GetInt64().ShouldBe(400);
        voltage.GetProperty("register").GetInt32().ShouldBe(105);
        voltage.GetProperty("setting").GetString().ShouldBe("motor-rated-voltage");
    }

    [Fact]
    public async Task Without_the_confirmations_nothing_is_written()
    {
        using var scratch = new Scratch();
        var job = scratch.DemoJob();
        await using var simulator = await Simulator.Start(scratch, job);
        var run = await RunupProgram.Call(scratch.Folder, "enter", job, "--link", simulator.Link, "--json");
        run.Status.ShouldBe(4);
        run.Json.GetProperty("written").GetInt32().ShouldBe(0);
        run.Errors.ShouldContain("safe-torque-off-open-or-motor-isolated");
        run.ShowsNoInsides();
    }

    [Theory]
    [InlineData("tern")]
    [InlineData("osprey")]
    public async Task A_sheet_is_entered_proved_and_found_in_place_the_second_time(string make)
    {
        using var scratch = new Scratch();
        var job = scratch.DemoJob(text => text.Replace("profile: tern", $"profile: {make}", StringComparison.Ordinal));
        await using var simulator = await Simulator.Start(scratch, job);
        var first = await RunupProgram.Call(scratch.Folder, ["enter", job, "--link", simulator.Link, "--json", .. Confirmed]);
        first.Json.GetProperty("failed").GetArrayLength().ShouldBe(0);
        first.Json.GetProperty("written").GetInt32().ShouldBeGreaterThan(10);
        first.Json.GetProperty("verified").GetInt32().ShouldBe(first.Json.GetProperty("written").GetInt32());
        first.Status.ShouldBe(0);
        first.Errors.ShouldContain("not yet proved after power-off");
        first.Json.GetProperty("proved_after_power_cycle").GetBoolean().ShouldBeFalse();

        await simulator.PowerCycle();
        var second = await RunupProgram.Call(scratch.Folder, ["enter", job, "--link", simulator.Link, "--json", "--confirm", "power-cycle", .. Confirmed]);
        second.Json.GetProperty("failed").GetArrayLength().ShouldBe(0);
        second.Json.GetProperty("resumed").GetBoolean().ShouldBeTrue();
    }

    [Fact]
    public async Task Nobody_at_the_other_end_is_a_failed_link()
    {
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, ["enter", scratch.DemoJob(), "--link", "tcp://127.0.0.1:9/1", .. Confirmed]);
        run.Status.ShouldBe(3);
        run.ShowsNoInsides();
    }

    [Theory]
    [InlineData("tcp://")]
    [InlineData("tcp://127.0.0.1:99999/1")]
    [InlineData("serial:/dev/ttyUSB0")]
    [InlineData("rtu:/dev/ttyUSB0?baud=19200")]
    [InlineData("http://127.0.0.1")]
    public async Task A_link_that_cannot_be_read_is_bad_input(string link)
    {
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, "read", scratch.DemoJob(), "--link", link);
        run.Status.ShouldBe(2);
        run.Errors.Trim().Split('\n').Length.ShouldBe(1);
        run.ShowsNoInsides();
    }

    [Theory]
    [InlineData("tern", "106", "14.2", "220", "panel forward")]
    [InlineData("osprey", "6075h", "14200", "2140h", "panel")]
    public async Task Restore_brings_back_what_was_found(string make, string current, string amperes, string source, string panel)
    {
        using var scratch = new Scratch();
        var job = scratch.DemoJob(text => text.Replace("profile: tern", $"profile: {make}", StringComparison.Ordinal));
        await using var simulator = await Simulator.Start(scratch, job);
        await RunupProgram.Call(scratch.Folder, ["enter", job, "--link", simulator.Link, .. Confirmed]);
        await RunupProgram.Call(scratch.Folder, ["restore", job, "--link", simulator.Link, .. Confirmed]);
        var run = await RunupProgram.Call(scratch.Folder, "read", job, "--link", simulator.Link, "--json");
        Shown(run.Json, current).ShouldBe(amperes);
        Shown(run.Json, source).ShouldBe(panel);
    }

    private static string? Shown(JsonElement json, string number) =>
        json.GetProperty("parameters").EnumerateArray().Single(p => p.GetProperty("parameter").GetString() == number).GetProperty("display").GetString();
}
