using System.Text.Json;

namespace Runup.Acceptance.Tests;

public sealed class CheckTests
{
    [Fact]
    public async Task The_demo_job_has_every_key_that_others_rely_on()
    {
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, "check", scratch.DemoJob(), "--json");
        run.Status.ShouldBe(0);
        run.Errors.ShouldBeEmpty();
        var json = run.Json;
        Keys(json, "tag", "verdict", "counts", "findings", "undecided", "assumptions", "motor", "machine", "supply", "cable", "drive");
        Keys(json.GetProperty("verdict"), "may_be_entered", "may_be_bumped", "may_run_coupled", "blocked_by");
        Keys(json.GetProperty("counts"), "satisfied", "violated", "undecided");
        var motor = json.GetProperty("motor");
        Keys(motor, "circuit", "rotor_2", "pole_count", "rated_slip", "rated_torque_Nm", "rated_current_A", "rated_power_factor", "rated_efficiency", "no_load_current_A", "locked_rotor_current_ratio", "locked_rotor_torque_ratio", "breakdown_torque_ratio");
        Keys(motor.GetProperty("circuit"), "stator_resistance_ohm", "stator_leakage_ohm", "magnetizing_ohm", "rotor_leakage_ohm", "rotor_resistance_ohm", "core_loss_ohm", "friction_loss_W", "stray_loss_W");
        Keys(motor.GetProperty("rated_torque_Nm"), "p05", "p50", "p95");
        Keys(json.GetProperty("machine"), "total_inertia_kgm2", "rms_torque_Nm", "shortest_acceleration_s", "shortest_deceleration_s", "braking_energy_J", "braking_peak_W", "braking_mean_W", "braking_resistor_ohm_min", "braking_resistor_ohm_max");
        Keys(json.GetProperty("supply"), "short_circuit_ratio", "input_current_A", "thd_i_percent", "harmonics_percent", "dc_bus_V", "true_power_factor", "ride_through_ms");
        Keys(json.GetProperty("cable"), "critical_length_m", "peak_terminal_voltage_V", "charging_current_A", "voltage_drop_percent");
        Keys(json.GetProperty("drive"), "derated_current_A", "current_margin_percent", "losses_W");
        json.GetProperty("cable").GetProperty("critical_length_m").ValueKind.ShouldBe(JsonValueKind.Null);
        motor.GetProperty("no_load_current_A").GetProperty("p05").GetDouble().ShouldBeLessThan(motor.GetProperty("no_load_current_A").GetProperty("p95").GetDouble());
    }

    [Fact]
    public async Task Planted_slips_of_the_pen_are_found_and_block_entry()
    {
        using var scratch = new Scratch();
        var job = scratch.DemoJob(text => text.Replace("{value: 7.5 kW, from: plate}", "{value: 7.5 hp, from: plate}", StringComparison.Ordinal).Replace("frequency: {value: 50 Hz, from: plate}", "frequency: 60 Hz", StringComparison.Ordinal));
        var run = await RunupProgram.Call(scratch.Folder, "check", job, "--json");
        run.Status.ShouldBe(1);
        var findings = run.Json.GetProperty("findings").EnumerateArray().ToList();
        findings.Select(f => f.GetProperty("id").GetString()).ShouldContain("plate.power-unit");
        findings.Select(f => f.GetProperty("id").GetString()).ShouldContain("plate.base-frequency");
        foreach (var finding in findings)
        {
            Keys(finding, "id", "severity", "title", "explanation", "value", "limit", "unit", "source", "from_memory", "remedy");
        }

        run.Json.GetProperty("verdict").GetProperty("may_be_entered").GetBoolean().ShouldBeFalse();
    }

    [Fact]
    public async Task Several_jobs_are_an_array_in_the_order_given()
    {
        using var scratch = new Scratch();
        var job = scratch.DemoJob();
        var other = scratch.Write("other.job.yaml", (await File.ReadAllTextAsync(job, TestContext.Current.CancellationToken)).Replace("tag: SWP-101", "tag: SWP-102", StringComparison.Ordinal));
        var run = await RunupProgram.Call(scratch.Folder, "check", other, job, "--json");
        run.Json.EnumerateArray().Select(j => j.GetProperty("tag").GetString()).ShouldBe(["SWP-102", "SWP-101"]);
    }

    [Fact]
    public async Task All_that_is_wrong_with_a_file_is_said_at_once_each_with_its_place()
    {
        using var scratch = new Scratch();
        var job = scratch.DemoJob(text => text.Replace("current: {value: 14.4 A, from: plate}", "current: 14.4", StringComparison.Ordinal).Replace("speed: {value: 1460 rpm, from: plate}", "speed: 1,460 rpm", StringComparison.Ordinal).Replace("cooling: IC411", "colling: IC411", StringComparison.Ordinal));
        var run = await RunupProgram.Call(scratch.Folder, "check", job);
        run.Status.ShouldBe(2);
        run.Output.ShouldBeEmpty();
        var lines = run.Errors.Trim().Split('\n');
        lines.Length.ShouldBe(3);
        lines.ShouldAllBe(l => l.Contains("swp-101.job.yaml:", StringComparison.Ordinal) && l.Contains(" motor.plate.", StringComparison.Ordinal));
        run.ShowsNoInsides();
    }

    [Fact]
    public async Task A_size_that_is_not_there_lists_the_sizes()
    {
        using var scratch = new Scratch();
        var run = await RunupProgram.Call(scratch.Folder, "check", scratch.DemoJob(text => text.Replace("size: \"7.5-400\"", "size: \"8-400\"", StringComparison.Ordinal)));
        run.Status.ShouldBe(2);
        run.Errors.ShouldContain("7.5-400, 11-400");
        run.Errors.ShouldContain("swp-101.job.yaml:");
    }

    [Fact]
    public async Task Settings_sheet_motor_and_rehearsal_have_their_keys()
    {
        using var scratch = new Scratch();
        var job = scratch.DemoJob();
        foreach (var line in (await RunupProgram.Call(scratch.Folder, "settings", job, "--json")).Json.EnumerateArray())
        {
            Keys(line, "setting", "value", "unit", "rank", "reason", "source", "low", "high");
        }

        foreach (var line in (await RunupProgram.Call(scratch.Folder, "sheet", job, "--json")).Json.EnumerateArray())
        {
            Keys(line, "order", "parameter", "name", "display", "unit", "raw", "register", "default_display", "changed", "setting", "mapping", "rank", "reason");
        }

        Keys((await RunupProgram.Call(scratch.Folder, "motor", job, "--json")).Json, "tag", "circuit", "findings", "assumptions", "rated_torque_Nm");
        Keys((await RunupProgram.Call(scratch.Folder, "rehearse", job, "--json")).Json, "events", "peak_current_A", "peak_dc_bus_V", "time_to_speed_s", "time_to_stop_s", "tripped");
    }

    [Fact]
    public async Task Readings_stand_beside_the_bands_before_and_an_exact_plate_has_narrower_ones()
    {
        using var scratch = new Scratch();
        var job = scratch.DemoJob();
        var readings = scratch.Write("a.readings.csv", "output_frequency_Hz,output_current_A,coupled\n50,6.6,no\n");
        static double Width(JsonElement json) => json.GetProperty("no_load_current_A").GetProperty("p95").GetDouble() - json.GetProperty("no_load_current_A").GetProperty("p05").GetDouble();
        var read = (await RunupProgram.Call(scratch.Folder, "motor", job, "--json", "--readings", readings)).Json;
        Width(read).ShouldBeLessThan(0.5 * Width(read.GetProperty("before")));
        read.GetProperty("uncoupled").GetArrayLength().ShouldBe(5);
        var plain = (await RunupProgram.Call(scratch.Folder, "motor", job, "--json")).Json;
        plain.GetProperty("before").ValueKind.ShouldBe(JsonValueKind.Null);
        plain.GetProperty("narrows_most").GetProperty("reading").GetString().ShouldNotBeNull();
        Width((await RunupProgram.Call(scratch.Folder, "motor", job, "--json", "--exact-plate")).Json).ShouldBeLessThan(Width(plain));
        var wrong = scratch.Write("b.readings.csv", "output_current\n6\n");
        var refused = await RunupProgram.Call(scratch.Folder, "motor", job, "--readings", wrong);
        refused.Status.ShouldBe(2);
        refused.Errors.ShouldContain("b.readings.csv:1:1 (file): the column `output_current`");
    }

    [Fact]
    public async Task A_file_with_only_the_motor_part_tells_the_motor()
    {
        using var scratch = new Scratch();
        var file = scratch.Write("m.yaml", "motor:\n  plate: {output: 10 hp, voltage: 460 V, current: 12.5 A, frequency: 60 Hz, speed: 1765 rpm}\n");
        var run = await RunupProgram.Call(scratch.Folder, "motor", file, "--json");
        run.Status.ShouldBe(0);
        run.Json.GetProperty("tag").ValueKind.ShouldBe(JsonValueKind.Null);
        run.Json.GetProperty("pole_count").GetInt32().ShouldBe(4);
    }

    [Fact]
    public async Task A_new_job_file_is_written_once_and_never_over_another()
    {
        using var scratch = new Scratch();
        (await RunupProgram.Call(scratch.Folder, "new", "fan-7")).Status.ShouldBe(0);
        var again = await RunupProgram.Call(scratch.Folder, "new", "fan-7");
        again.Status.ShouldBe(2);
        again.ShowsNoInsides();
    }

    private static void Keys(JsonElement element, params string[] keys)
    {
        var there = element.EnumerateObject().Select(p => p.Name).ToHashSet(StringComparer.Ordinal);
        keys.Where(k => !there.Contains(k)).ShouldBeEmpty();
    }
}
