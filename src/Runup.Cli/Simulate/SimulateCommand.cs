using System.ComponentModel;
using System.Net;
using Runup.Cli.Rehearsal;
using Runup.Cli.Survey;
using Runup.Cli.Terminal;
using Runup.Commissioning.Handover;
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

        if (settings.Tcp != 0 && settings.Tcp + paths.Length - 1 > IPEndPoint.MaxPort)
        {
            throw new Complaint(ExitStatus.BadInput, $"runup: {paths.Length} drives from port {settings.Tcp} on would need ports above {IPEndPoint.MaxPort}; a lower --tcp, or 0, would do");
        }

        var served = new List<ServedDrive>();
        try
        {
            foreach (var (place, job) in OneOfEachTag(LoadedJob.All(paths)).Index())
            {
                served.Add(ServedDrive.Of(job, settings.Rate, settings.Address, settings.Tcp == 0 ? 0 : settings.Tcp + place));
            }

            Announce(served, settings.Json);
            await new TypedLines(served).Follow(Console.In, Console.Error, cancellationToken);
        }
        finally
        {
            foreach (var drive in served)
            {
                await drive.DisposeAsync();
            }
        }

        return (int)ExitStatus.Fine;
    }

    // Whoever types a tag, or links to it, must meet one drive.
    private static IReadOnlyList<LoadedJob> OneOfEachTag(IReadOnlyList<LoadedJob> jobs)
    {
        var twice = jobs.GroupBy(j => j.Job.Tag, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1)
            .Select(g => $"runup: {string.Join(" and ", g.Select(j => j.Path))} have the same tag '{g.Key}'; a tag of its own in each would do").ToList();
        return twice.Count == 0 ? jobs : throw new Complaint(ExitStatus.BadInput, twice);
    }

    internal static DriveHost Serve(LoadedJob job, PacedTime time, IPAddress address, int port)
    {
        var plant = RehearsalSystem.Of(job.Context) ?? throw RehearseCommand.Impossible(job, "simulated", [$"it would take {RehearsalSystem.Missing(job.Context)}"]);
        if (VirtualDrive.Problems(job.Profile, job.Size, plant) is { Count: > 0 } problems)
        {
            throw RehearseCommand.Impossible(job, "simulated", problems.Select(p => p.ToString()));
        }

        var drive = new VirtualDrive(job.Profile, job.Size, plant);
        var (host, why) = DriveHost.Start(drive, time, TimeProvider.System, UnitOf(job), new ModbusTcpServerOptions { Address = address, Port = port });
        return host ?? throw new Complaint(ExitStatus.BadInput, $"runup: the simulated drive of {job.Job.Tag} can't listen: {why}");
    }

    internal static string Link(DriveHost host, LoadedJob job) => $"tcp://{host.Endpoint.Address}:{host.Endpoint.Port}/{UnitOf(job).Value}";

    internal static UnitId UnitOf(LoadedJob job) => new((byte)Math.Clamp(job.Job.Bus.Address?.Value ?? 1, 1, 247));

    private static void Announce(IReadOnlyList<ServedDrive> served, bool json)
    {
        if (json)
        {
            JsonOut.Write(
                writer =>
                {
                    writer.WriteStartObject();
                    writer.Array("drives", served, (j, h) =>
                    {
                        j.WriteStartObject();
                        j.WriteString("tag", h.Job.Job.Tag);
                        j.WriteString("link", h.Link);
                        j.WriteEndObject();
                    });
                    writer.WriteEndObject();
                },
                indented: false);
            return;
        }

        var page = new Page(Console.Out);
        page.Table(
            [new("set"), new("what", Whole: false), new("drive"), new("link")],
            served.Select(s => (IReadOnlyList<string>)[s.Job.Job.Tag, s.Job.Job.Title ?? "", SiteRow.DriveOf(s.Job.Profile, s.Job.Size), s.Link]));
        page.Line($"Simulated; nothing real turns. Type what a person would do at the drive{(served.Count > 1 ? ", with its tag" : "")}; Ctrl-C ends:");
        foreach (var line in TypedLines.Known)
        {
            page.Line($"  {line}");
        }
    }

    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<JOB|SITE>")]
        [Description("A job file, or a folder of them")]
        public string Site { get; set; } = "";

        [CommandOption("--tcp <PORT>")]
        [Description("Port of the first drive, the others follow; 0 picks free ones")]
        [DefaultValue("0")]
        public NumberOption TcpText { get; set; } = new("0");

        [CommandOption("--on <ADDRESS>")]
        [Description("Address to listen on; by default only this computer reaches it")]
        [DefaultValue("127.0.0.1")]
        public string On { get; set; } = "127.0.0.1";

        [CommandOption("--rate <N>")]
        [Description("Times real time")]
        [DefaultValue("1")]
        public NumberOption RateText { get; set; } = new("1");

        [CommandOption("--json")]
        [Description("One line of JSON once it listens")]
        public bool Json { get; set; }

        internal IPAddress Address => IPAddress.TryParse(On, out var address)
            ? address
            : throw new Complaint(ExitStatus.BadInput, $"runup: --on {On} is not an address; one such as 127.0.0.1 would do");

        internal int Tcp => (int)TcpText.Whole(IPEndPoint.MaxPort)!.Value;

        internal double Rate => RateText.Within(0.1, 1000)!.Value;

        public override Spectre.Console.ValidationResult Validate() => this switch
        {
            { TcpText: var port } when port.Whole(IPEndPoint.MaxPort) is null => port.Wrong("--tcp", "a port from 1 to 65535, or 0 for a free one,"),
            { RateText: var rate } when rate.Within(0.1, 1000) is null => rate.Wrong("--rate", "a number from 0.1 to 1000, such as 10,"),
            _ => Spectre.Console.ValidationResult.Success(),
        };
    }
}
