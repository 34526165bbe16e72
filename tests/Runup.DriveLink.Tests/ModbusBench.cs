using Runup.Commissioning.Entry;
using Runup.Commissioning.Tests.Bench;
using Runup.Commissioning.Tests.Contract;
using Runup.Modbus;
using Runup.Modbus.Serving;
using Runup.Modbus.Tcp;

namespace Runup.DriveLink.Tests;

/// <summary>The bench drive on a port of this machine, and a link to it.</summary>
internal sealed class ModbusBench : IContractBench, IAsyncDisposable
{
    private readonly ModbusTcpServer server;

    private ModbusBench(ModbusTcpServer server, BenchDrive drive, BenchDevice device, IDriveLink link) =>
        (this.server, Drive, Device, Link) = (server, drive, device, link);

    public IDriveLink Link { get; }

    public BenchDrive Drive { get; }

    public BenchDevice Device { get; }

    public TimeProvider Time => TimeProvider.System;

    public Mishap Mishap
    {
        get => Device.Mishap;
        set => Device.Mishap = value;
    }

    internal static async Task<ModbusBench> Start(FrameTap? tap = null)
    {
        var drive = new BenchDrive(TimeProvider.System);
        var device = new BenchDevice(drive);
        var listening = ((ServerStart.Listening)ModbusTcpServer.Start(UnitRouting.Device(device, new UnitId(1)), new ModbusTcpServerOptions())).Server;
        var links = new ModbusDriveLinks(new("127.0.0.1", listening.Endpoint.Port, 1), BenchMake.Profile, TimeProvider.System, tap);
        var link = (await links.Open(default)).ShouldBeOfType<LinkOpening.Opened>().Link;
        return new(listening, drive, device, link);
    }

    public async Task PullCable() => await server.DisposeAsync();

    public async ValueTask DisposeAsync()
    {
        await Link.DisposeAsync();
        await server.DisposeAsync();
    }
}
