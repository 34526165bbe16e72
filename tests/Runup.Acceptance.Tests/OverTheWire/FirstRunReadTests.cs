using System.Net;
using System.Text.RegularExpressions;

namespace Runup.Acceptance.Tests.OverTheWire;

/// <summary>A person runs the motor at the simulated drive's panel, the program reads, and on the wire no request ever writes.</summary>
[Collection("real time")]
public sealed partial class FirstRunReadTests
{
    private static readonly string[] Entered = ["--by", "A. Tester", "--confirm", "safe-torque-off-open-or-motor-isolated", "--confirm", "no-run-command-pending"];

    [Fact]
    public async Task A_hoist_is_run_from_its_own_control_up_and_down()
    {
        using var scratch = new Scratch();
        var job = scratch.Write("gh-501.job.yaml", await File.ReadAllTextAsync(Path.Combine(RunupProgram.Root, "demo", "ostrevad", "gh-501.job.yaml"), TestContext.Current.CancellationToken));
        var run = await Watched(scratch, job, 20, async (simulator, question) =>
        {
            if (Steady().Match(question) is { Success: true } at)
            {
                var down = question.Contains("lowering its load steadily", StringComparison.Ordinal);
                await simulator.Type("stop");
                await Task.Delay(1500, TestContext.Current.CancellationToken);
                (await simulator.Type($"run {at.Groups["hz"].Value} Hz{(down ? " reverse" : "")}")).ShouldNotBeNull().ShouldStartWith("run at the panel");
                await Task.Delay(1500, TestContext.Current.CancellationToken);
            }

            return ScriptedPerson.AsExpected(question);
        });
        run.Status.ShouldBe(0, run.Errors);
        run.Errors.ShouldContain("A hoist is run from its own control only.");
        var steps = run.Json.GetProperty("steps").EnumerateArray().ToList();
        steps.Count.ShouldBe(10);
        steps.ShouldAllBe(s => s.GetProperty("outcome").GetString() == "passed");
        run.Json.GetProperty("run_source").GetString().ShouldBe("panel");
    }

    [Fact]
    public async Task A_pump_is_started_and_stopped_at_the_panel_and_the_program_takes_the_times()
    {
        using var scratch = new Scratch();
        var job = scratch.DemoJob(AtPanel);
        var watching = Task.CompletedTask;
        var run = await Watched(scratch, job, 1, (simulator, question) =>
        {
            if (question.Contains("[ready-to-start]", StringComparison.Ordinal))
            {
                watching = StartAndStop(simulator);
            }

            return question.Contains("s REASON", StringComparison.Ordinal) && !question.Contains("  coupled-ramps", StringComparison.Ordinal)
                ? Task.FromResult("s not in this test") : Task.FromResult(ScriptedPerson.AsExpected(question));
        });
        await watching;
        run.Status.ShouldBe(0, run.Errors);
        var ramps = run.Json.GetProperty("steps").EnumerateArray().Single(s => s.GetProperty("step").GetString() == "coupled-ramps");
        ramps.GetProperty("outcome").GetString().ShouldBe("passed", run.Errors);
        ramps.GetProperty("readings").EnumerateArray().Count(r => r.GetProperty("within").GetBoolean()).ShouldBe(4);
        ramps.GetProperty("readings").EnumerateArray().ShouldAllBe(r => r.GetProperty("typed_by").GetString() == null);
    }

    private static string AtPanel(string text) =>
        text.Replace("run-from: bus", "run-from: panel", StringComparison.Ordinal).Replace("reference-from: bus", "reference-from: panel", StringComparison.Ordinal);

    private static async Task StartAndStop(Simulator simulator)
    {
        await Task.Delay(1000);
        (await simulator.Type("run 50 Hz")).ShouldNotBeNull().ShouldStartWith("run at the panel");
        await Task.Delay(14000);
        (await simulator.Type("stop")).ShouldBe("stopping");
    }

    /// <summary>Enters the sheet, and then runs first-run over a wire that is listened to.</summary>
    private static async Task<Run> Watched(Scratch scratch, string job, int rate, Func<Simulator, string, Task<string>> answer)
    {
        await using var simulator = await Simulator.Start(scratch, job, "--rate", $"{rate}");
        var entry = await ScriptedPerson.Call(scratch.Folder, ["enter", job, "--link", simulator.Link, .. Entered], async question =>
        {
            if (question.Contains("[power-cycle]", StringComparison.Ordinal))
            {
                await simulator.PowerCycle();
            }

            return "yes";
        });
        entry.Status.ShouldBe(0, entry.Errors);

        var requests = new List<byte>();
        var far = new Uri(simulator.Link);
        await using var wire = new CuttableWire(new IPEndPoint(IPAddress.Parse(far.Host), far.Port), requests.AddRange);
        var run = await ScriptedPerson.Call(
            scratch.Folder, ["first-run", job, "--link", $"tcp://127.0.0.1:{wire.Port}{far.AbsolutePath}", "--by", "A. Tester", "--json"], async q => await answer(simulator, q));
        Functions(requests).Distinct().ShouldBeSubsetOf([3, 4, 0x2B]);
        requests.Count.ShouldBeGreaterThan(500);
        return run;
    }

    /// <summary>The function code of each request (MODBUS Messaging on TCP/IP, 3.1.3: bytes 5 and 6 are the length, byte 8 the function).</summary>
    private static IEnumerable<int> Functions(List<byte> requests)
    {
        for (var at = 0; at < requests.Count; at += 6 + (requests[at + 4] << 8 | requests[at + 5]))
        {
            yield return requests[at + 7];
        }
    }

    [GeneratedRegex(@"steadily at (?<hz>[0-9.]+) Hz", RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex Steady();
}
