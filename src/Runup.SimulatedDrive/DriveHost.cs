using System.Net;
using Runup.Modbus;
using Runup.Modbus.Serving;
using Runup.Modbus.Tcp;
using Runup.SimulatedDrive.Clock;

namespace Runup.SimulatedDrive;

/// <summary>Serves a simulated drive on Modbus TCP and moves it with a clock, until disposed.</summary>
public sealed class DriveHost : IAsyncDisposable
{
    private const int LowestOwnPort = 20_000;
    private const int OwnPorts = 10_000;
    private const int AttemptsAtPort = 50;
    private static readonly TimeSpan PauseAtPort = TimeSpan.FromMilliseconds(100);
    private static readonly TimeSpan Overdue = TimeSpan.FromMilliseconds(150);
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(500);

    private readonly UnitRouting routing;
    private readonly ModbusTcpServerOptions options;
    private readonly TimeProvider real;
    private readonly TimeSpan begun;
    private ModbusTcpServer server;
    private long lastWait;

    private DriveHost(VirtualDrive drive, PacedTime time, TimeProvider real, UnitRouting routing, ModbusTcpServerOptions options, ModbusTcpServer server)
    {
        (Drive, Time, this.real, this.routing, this.options, this.server) = (drive, time, real, routing, options, server);
        begun = time.GetElapsedTime(0);
        time.Moved += MoveDrive;
        if (time.Rate > 1)
        {
            time.HoldWhile(WaitsForPeer);
        }
    }

    /// <summary>The drive.</summary>
    public VirtualDrive Drive { get; }

    /// <summary>Its clock.</summary>
    public PacedTime Time { get; }

    /// <summary>Where it listens.</summary>
    public IPEndPoint Endpoint => server.Endpoint;

    /// <summary>Begins to serve; null and why where the port can't be had.</summary>
    public static (DriveHost? Host, string? Why) Start(VirtualDrive drive, PacedTime time, TimeProvider real, UnitId unit, ModbusTcpServerOptions options)
    {
        var route = UnitRouting.Device(drive, unit);
        return Listen(route, options) switch
        {
            ServerStart.Listening listening => (new DriveHost(drive, time, real, route, options with { Port = listening.Server.Endpoint.Port }, listening.Server), null),
            ServerStart.PortTaken => (null, $"port {options.Port} is taken"),
            ServerStart.NotAllowed no => (null, no.Why),
            _ => throw new InvalidOperationException("Every start of a server is told apart."),
        };
    }

    /// <summary>Power is lost and returns: connections end, what was not stored is gone, and the same port answers again.</summary>
    public async Task PowerCycle()
    {
        await server.DisposeAsync();
        Drive.PowerCycle();
        for (var attempt = 0; ; attempt++)
        {
            if (ModbusTcpServer.Start(routing, options) is ServerStart.Listening listening)
            {
                server = listening.Server;
                return;
            }

            if (attempt == AttemptsAtPort)
            {
                throw new IOException($"Port {options.Port} could not be taken again after the power cycle.");
            }

            await Task.Delay(PauseAtPort, real);
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        Time.Moved -= MoveDrive;
        await server.DisposeAsync();
    }

    /// <summary>
    /// Where any port will do, one below those that this computer hands out to clients: the drive must find it free again after
    /// a power cycle.
    /// </summary>
    private static ServerStart Listen(UnitRouting route, ModbusTcpServerOptions options)
    {
        for (var attempt = 0; options.Port == 0 && attempt < AttemptsAtPort; attempt++)
        {
            var port = Random.Shared.Next(LowestOwnPort, LowestOwnPort + OwnPorts);
            if (ModbusTcpServer.Start(route, options with { Port = port }) is ServerStart.Listening listening)
            {
                return listening;
            }
        }

        return ModbusTcpServer.Start(route, options);
    }

    private void MoveDrive(TimeSpan reached) => Drive.MoveTo(reached - begun);

    /// <summary>
    /// Above real time a stall of this computer must not look like a lost bus: when a frame is overdue while the motor turns for
    /// somebody on the bus, the clock waits a little for the peer, once for each silence.
    /// </summary>
    private bool WaitsForPeer()
    {
        if (!Drive.AwaitsPeer || Drive.Silence < Overdue)
        {
            lastWait = 0;
            return false;
        }

        if (lastWait == 0)
        {
            lastWait = real.GetTimestamp();
        }

        return real.GetElapsedTime(lastWait) < Patience;
    }
}
