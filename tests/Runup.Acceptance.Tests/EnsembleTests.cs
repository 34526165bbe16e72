using System.Text.Json;

namespace Runup.Acceptance.Tests;

/// <summary><c>runup rehearse --ensemble</c>: bands over all motors that the plate may stand for.</summary>
public sealed class EnsembleTests
{
    [Fact]
    public async Task Every_figure_is_a_band_and_every_column_as_long_as_the_times()
    {
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, "rehearse", scratch.DemoJob(), "--ensemble", "--json");
        run.Status.ShouldBe(0);
        run.Errors.ShouldBeEmpty();
        var ensemble = run.Json.GetProperty("ensemble");

        ensemble.GetProperty("members").GetInt32().ShouldBe(512);
        ensemble.GetProperty("broke_down").GetInt32().ShouldBe(0);
        ensemble.GetProperty("trips").ValueKind.ShouldBe(JsonValueKind.Array);
        foreach (var figure in new[] { "peak_current_A", "peak_dc_bus_V", "time_to_speed_s", "time_to_stop_s" })
        {
            var band = ensemble.GetProperty(figure);
            var (low, middle, high) = (band.GetProperty("p05").GetDouble(), band.GetProperty("p50").GetDouble(), band.GetProperty("p95").GetDouble());
            low.ShouldBeGreaterThan(0, figure);
            middle.ShouldBeInRange(low, high, figure);
        }

        var times = ensemble.GetProperty("t_s").EnumerateArray().Select(t => t.GetDouble()).ToList();
        times[0].ShouldBe(0);
        times.ShouldBeInOrder(SortDirection.Ascending);
        times[^1].ShouldBeGreaterThan(run.Json.GetProperty("events").EnumerateArray().Last().GetProperty("t_s").GetDouble());
        foreach (var column in new[] { "output_frequency_Hz", "speed_rpm", "output_current_A", "dc_bus_V", "torque_Nm" })
        {
            foreach (var edge in new[] { "p05", "p50", "p95" })
            {
                ensemble.GetProperty(column).GetProperty(edge).GetArrayLength().ShouldBe(times.Count, $"{column} {edge}");
            }
        }

        // The one rehearsal by the plate's circuit lies in the band of the many that get its orders.
        run.Json.GetProperty("peak_current_A").GetProperty("p50").GetDouble().ShouldBe(ensemble.GetProperty("peak_current_A").GetProperty("p50").GetDouble());
        run.Json.GetProperty("by_plate").GetProperty("peak_current_A").GetDouble().ShouldBeInRange(
            ensemble.GetProperty("peak_current_A").GetProperty("p05").GetDouble() * 0.9, ensemble.GetProperty("peak_current_A").GetProperty("p95").GetDouble() * 1.1);
    }

    [Fact]
    public async Task The_same_job_gives_the_same_bands_to_the_last_digit_however_many_processors_there_are()
    {
        using var scratch = new Scratch();
        string[] call = ["rehearse", scratch.DemoJob(), "--ensemble", "--json"];
        var all = await RunupProgram.Call(scratch.Folder, call);
        var one = await RunupProgram.Call(scratch.Folder, call, environment: ("DOTNET_PROCESSOR_COUNT", "1"));
        all.Status.ShouldBe(0);
        one.Output.ShouldBe(all.Output);
    }

    [Fact]
    public async Task A_seed_draws_other_motors_and_the_same_ones_again()
    {
        using var scratch = new Scratch();
        var usual = await RunupProgram.Call(scratch.Folder, "rehearse", scratch.DemoJob(), "--ensemble", "--json");
        var named = await RunupProgram.Call(scratch.Folder, "rehearse", scratch.DemoJob(), "--ensemble", "--json", "--seed", "20");
        var other = await RunupProgram.Call(scratch.Folder, "rehearse", scratch.DemoJob(), "--ensemble", "--json", "--seed", "4294967295");
        var again = await RunupProgram.Call(
            scratch.Folder, ["rehearse", scratch.DemoJob(), "--ensemble", "--json", "--seed", "4294967295"], environment: ("DOTNET_PROCESSOR_COUNT", "1"));

        named.Output.ShouldBe(usual.Output);
        again.Output.ShouldBe(other.Output);
        Seed(usual).ShouldBe(20u);
        Seed(other).ShouldBe(4294967295u);
        Peak(other).ShouldNotBe(Peak(usual));
        Peak(other).ShouldBe(Peak(usual), 0.05 * Peak(usual));

        static ulong Seed(Run run) => run.Json.GetProperty("ensemble").GetProperty("seed").GetUInt64();
        static double Peak(Run run) => run.Json.GetProperty("peak_current_A").GetProperty("p95").GetDouble();
    }

    [Fact]
    public async Task One_motor_is_rehearsed_in_all_detail_and_many_are_not()
    {
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, "rehearse", scratch.DemoJob(), "--detail", "--json");
        run.Status.ShouldBe(0);
        run.Json.GetProperty("detail").GetProperty("cages").GetInt32().ShouldBe(2);
        run.Json.GetProperty("detail").GetProperty("iron_share_percent").GetDouble().ShouldBe(15);

        var both = await RunupProgram.Call(scratch.Folder, "rehearse", scratch.DemoJob(), "--detail", "--ensemble");
        both.Status.ShouldBe(2);
        both.Errors.ShouldContain("one of them would do");
    }
}
