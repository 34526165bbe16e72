using Runup.Profiles;
using Runup.Quantities;
using Runup.SimulatedDrive;

namespace Runup.Cli.Simulate;

/// <summary>What a person types who stands beside the simulated drives: power off and on, a reset, running them at their panels, and what goes wrong with supply and cable.</summary>
internal sealed class TypedLines(IReadOnlyList<ServedDrive> served)
{
    /// <summary>The lines that are known.</summary>
    internal static IReadOnlyList<string> Known { get; } =
    [
        "status                 what the drive does and shows now, with its trip",
        "power-cycle            off and on again",
        "reset                  a trip is reset at the panel",
        "run 25 Hz [reverse]    started at the panel, or to another frequency; only while the drive takes its commands there",
        "stop                   stopped at the panel",
        "input 3 on             voltage on a terminal, for the second ramps, a reset or a trip from outside; input 3 off takes it away",
        "uncouple               the machine is taken off the motor's shaft; couple puts it back; at standstill",
        "tune [turning]         the drive measures its motor, at rest or turning without load; tuned tells what it found",
        "supply off             the supply goes, and the drive lives on what its DC bus holds; supply on brings it back",
        "supply two-phases      one phase of the supply is missing",
        "fault open U           phase U to the motor is interrupted; V and W likewise",
        "fault earth U 20 ohm   it touches earth, through 20 ohm; without ohms through none",
        "fault short U V 5 ohm  two phases to the motor touch one another",
        "fault none             nothing is wrong between drive and motor any more",
        "end                    no drive is served any more",
    ];

    /// <summary>Follows lines until one ends it, or until cancelled.</summary>
    internal async Task Follow(TextReader typed, TextWriter answers, CancellationToken cancellation)
    {
        while (true)
        {
            string? line;
            try
            {
                line = await typed.ReadLineAsync(cancellation);
                if (line is null)
                {
                    await Task.Delay(Timeout.InfiniteTimeSpan, cancellation);
                }
            }
            catch (OperationCanceledException)
            {
                return;
            }

            var words = line!.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (words is ["end", ..])
            {
                return;
            }

            if (words.Length > 0)
            {
                await answers.WriteLineAsync(await Answer(line, words));
            }
        }
    }

    private async Task<string> Answer(string line, string[] words)
    {
        var (drive, rest) = Named(words[1..]);
        return (words[0], drive, rest) switch
        {
            ("help", _, _) => string.Join(Environment.NewLine, Known.Select(known => "  " + known)),
            ("status" or "power-cycle" or "reset" or "run" or "stop" or "supply" or "fault" or "input" or "couple" or "uncouple" or "tune" or "tuned", null, _) => $"of which drive? One of these tags would do: {string.Join(", ", served.Select(s => s.Job.Job.Tag))}",
            ("status", { } host, []) => AtTheDrive.Status(host.Drive),
            ("power-cycle", { } host, []) => await OffAndOn(host),
            ("reset", { } host, []) => Reset(host),
            ("stop", { } host, []) => Said(host.Drive.StopAtPanel(), "stopping"),
            ("input", { } host, [var number, "on" or "off"]) => AtTheDrive.Input(host.Drive, number, rest[1] is "on"),
            ("couple" or "uncouple", { } host, []) => AtTheDrive.Couple(served.First(s => s.Host == host), words[0] is "couple"),
            ("tune", { } host, [] or ["turning"]) => AtTheDrive.Tune(host.Drive, rest is [] ? Dynamics.AutoTune.Stationary : Dynamics.AutoTune.Rotating),
            ("tuned", { } host, []) => AtTheDrive.Tuned(served.First(s => s.Host == host)),
            ("supply", { } host, [var how]) => Supply(host, how),
            ("fault", { } host, var what) => Fault(host, what),
            ("run", { } host, [.. var frequency, "reverse"]) => Run(host, frequency, Rotation.Reverse),
            ("run", { } host, var frequency) => Run(host, frequency, Rotation.Forward),
            _ => $"'{line}' is not known; help lists what is: status, power-cycle, reset, run 25 Hz, stop, input 3 on, uncouple, tune, supply off, fault open U or end would do{(served.Count > 1 ? ", with a tag, such as power-cycle " + served[0].Job.Job.Tag : "")}",
        };
    }

    /// <summary>The drive that a line names, by its tag before or after what is to be done; of one drive the tag may be left out.</summary>
    private (DriveHost? Drive, string[] Others) Named(string[] words)
    {
        foreach (var (place, word) in words.Index())
        {
            if (served.FirstOrDefault(s => string.Equals(s.Job.Job.Tag, word, StringComparison.OrdinalIgnoreCase)) is { } named)
            {
                return (named.Host, [.. words[..place], .. words[(place + 1)..]]);
            }
        }

        return (served.Count == 1 ? served[0].Host : null, words);
    }

    private static async Task<string> OffAndOn(DriveHost host)
    {
        await host.PowerCycle();
        return "off and on again";
    }

    private static string Reset(DriveHost host)
    {
        if (host.Drive.Now.State != Dynamics.DriveState.Tripped)
        {
            return "nothing happens: there is no trip to reset";
        }

        host.Drive.ResetAtPanel();
        return host.Drive.Now.State == Dynamics.DriveState.Tripped ? "nothing happens: what tripped it is still there" : "trip reset at the panel";
    }

    private static string Supply(DriveHost host, string how)
    {
        switch (how)
        {
            case "off":
                host.Drive.SetSupply(present: false);
                return "the supply is gone";
            case "on":
                host.Drive.SetSupply(present: true);
                host.Drive.RestoreSupplyPhase();
                return "the supply is there, with all its phases";
            case "two-phases":
                return Said(host.Drive.LoseSupplyPhase(), "a phase of the supply is missing");
            default:
                return $"'supply {how}' is not known; supply off, supply on or supply two-phases would do";
        }
    }

    private static string Fault(DriveHost host, string[] words)
    {
        var typed = TypedFault.Read(words);
        if (typed is TypedFault.Unclear unclear)
        {
            return unclear.Why;
        }

        host.Drive.Fault = (typed as TypedFault.There)?.Fault;
        return typed is not TypedFault.There there ? "nothing is wrong between drive and motor any more"
            : there.Fault is Dynamics.OutputFault.ToEarth && !host.Drive.SupplyEarthed ? $"{there.Said}; no current flows, since no point of the supply is earthed"
            : there.Said;
    }

    private static string Run(DriveHost host, string[] frequency, Rotation rotation) => QuantityText.Read<ElectricalFrequency>(string.Join(' ', frequency)) switch
    {
        Reading<ElectricalFrequency>.Value value => Said(host.Drive.RunAtPanel(value.Quantity, rotation), $"run at the panel to {value.Quantity.Hertz:0.##} Hz{(rotation == Rotation.Reverse ? " in reverse" : "")}"),
        Reading<ElectricalFrequency>.Problem problem => $"{problem.Found}; {problem.WouldDo}",
        _ => throw new InvalidOperationException("A reading is a value or a problem."),
    };

    internal static string Said(PanelAnswer answer, string done) => answer switch
    {
        PanelAnswer.Followed => done,
        PanelAnswer.Ignored ignored => $"nothing happens: {ignored.Why}",
        _ => throw new InvalidOperationException("The set of answers is closed."),
    };
}
