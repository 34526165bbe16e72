using System.ComponentModel;
using System.Net;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Rehearsal;
using Runup.Modbus;
using Runup.Modbus.Tcp;
using Runup.SimulatedDrive;
using Runup.SimulatedDrive.Clock;
using Spectre.Console.Cli;

namespace Runup.Cli.Simulate;

/// <summary><c>runup simulate JOB|SITE</c>: serves the simulated drives until told to end.</summary>
internal sealed class SimulateCommand : AsyncCommand<SimulateCommand.Settings>
{
    public override async Task<int> ExecuteAsync(Spectre.Console.Cli.CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var paths = Directory.Exists(settings.Site)
            ? Directory.GetFiles(settings.Site, "*.job.yaml").Order(StringComparer.Ordinal).ToArray()
            : [settings.Site];
        if (paths.Length == 0)
        {
            throw new Complaint(ExitStatus.BadInput, $"{settings.Site}:1:1 (file): there is no job file in this folder; a file *.job.yaml would do");
        }

        using var time = new PacedTime(settings.Rate, TimeProvider.System);
        var hosts = new List<ServedDrive>();
        try
        {
            var port = settings.Tcp;
            foreach (var job in LoadedJob.All(paths))
            {
                var host = Serve(job, time, settings.Address, port);
                hosts.Add(new ServedDrive(job.Job.Tag, Link(host, job), host));
                port = port == 0 ? 0 : port + 1;
            }

            Announce(hosts, settings.Json);
            await Commands(hosts, cancellationToken);
        }
        finally
        {
            foreach (var served in hosts)
            {
                await served.Host.DisposeAsync();
            }
        }

        return (int)ExitStatus.Fine;
    }

    internal static DriveHost Serve(LoadedJob job, PacedTime time, IPAddress address, int port)
    {
        var plant = RehearsalSystem.Of(job.Context)
            ?? throw new Complaint(ExitStatus.BadInput, $"{job.Path}:1:1 (file): no induction motor fits the plate, so that its drive can't be simulated; `runup check {job.Path}` says why");
        var drive = new VirtualDrive(job.Profile, job.Size, plant);
        var (host, why) = DriveHost.Start(drive, time, TimeProvider.System, UnitOf(job), new ModbusTcpServerOptions { Address = address, Port = port });
        return host ?? throw new Complaint(ExitStatus.BadInput, $"runup: the simulated drive of {job.Job.Tag} can't listen: {why}");
    }

    internal static string Link(DriveHost host, LoadedJob job) => $"tcp://{host.Endpoint.Address}:{host.Endpoint.Port}/{UnitOf(job).Value}";

    internal static UnitId UnitOf(LoadedJob job) => new((byte)Math.Clamp(job.Job.Bus.Address?.Value ?? 1, 1, 247));

    private static void Announce(List<ServedDrive> hosts, bool json)
    {
        if (json)
        {
            JsonOut.Write(
                writer =>
                {
                    writer.WriteStartObject();
                    writer.Array("drives", hosts, (j, h) =>
                    {
                        j.WriteStartObject();
                        j.WriteString("tag", h.Tag);
                        j.WriteString("link", h.Link);
                        j.WriteEndObject();
                    });
                    writer.WriteEndObject();
                },
                indented: false);
            return;
        }

        var page = new Page(Console.Out);
        foreach (var served in hosts)
        {
            page.Line($"{served.Tag}: {served.Link}");
        }

        page.Line("Simulated; nothing real turns. Type power-cycle, reset or end, and the tag where there are several; Ctrl-C ends.");
    }

    private static async Task Commands(List<ServedDrive> hosts, CancellationToken cancellation)
    {
        while (true)
        {
            string? line;
            try
            {
                line = await Console.In.ReadLineAsync(cancellation);
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
            var host = words switch
            {
                [_] when hosts.Count == 1 => hosts[0].Host,
                [_, var tag] => hosts.Find(h => string.Equals(h.Tag, tag, StringComparison.OrdinalIgnoreCase))?.Host,
                _ => null,
            };
            switch (words)
            {
                case ["end", ..]:
                    return;
                case ["power-cycle", ..] when host is not null:
                    await host.PowerCycle();
                    await Console.Error.WriteLineAsync("off and on again");
                    break;
                case ["reset", ..] when host is not null:
                    host.Drive.ResetAtPanel();
                    await Console.Error.WriteLineAsync("trip reset at the panel");
                    break;
                case []:
                    break;
                default:
                    await Console.Error.WriteLineAsync($"'{line}' is not known; power-cycle TAG, reset TAG or end would do");
                    break;
            }
        }
    }

    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<JOB|SITE>")]
        [Description("A job file, or a folder of them")]
        public string Site { get; set; } = "";

        [CommandOption("--tcp <PORT>")]
        [Description("Port of the first drive, the others follow; 0 picks free ones")]
        [DefaultValue(0)]
        public int Tcp { get; set; }

        [CommandOption("--on <ADDRESS>")]
        [Description("Address to listen on; by default only this computer reaches it")]
        [DefaultValue("127.0.0.1")]
        public string On { get; set; } = "127.0.0.1";

        [CommandOption("--rate <N>")]
        [Description("Times real time")]
        [DefaultValue(1.0)]
        public double Rate { get; set; } = 1;

        [CommandOption("--json")]
        [Description("One line of JSON once it listens")]
        public bool Json { get; set; }

        internal IPAddress Address => IPAddress.TryParse(On, out var address)
            ? address
            : throw new Complaint(ExitStatus.BadInput, $"runup: --on {On} is not an address; one such as 127.0.0.1 would do");

        public override Spectre.Console.ValidationResult Validate() => this switch
        {
            { Tcp: < 0 or > 65535 } => Spectre.Console.ValidationResult.Error($"--tcp {Tcp} is not a port; 0 to 65535 would do"),
            { Rate: not (>= 0.1 and <= 1000) } => Spectre.Console.ValidationResult.Error($"--rate {Rate} would not do; 0.1 to 1000 would"),
            _ => Spectre.Console.ValidationResult.Success(),
        };
    }
}

/// <summary>A simulated drive that is being served.</summary>
internal sealed record ServedDrive(string Tag, string Link, DriveHost Host);
