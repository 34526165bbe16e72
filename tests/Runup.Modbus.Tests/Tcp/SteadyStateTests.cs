using System.Net;
using System.Net.Sockets;
using Runup.Modbus.Serving;
using Runup.Modbus.Tcp;

namespace Runup.Modbus.Tests.Tcp;

public sealed class SteadyStateTests
{
    [Fact]
    public async Task Serving_a_request_allocates_nothing_on_the_loop_s_thread()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "the readiness loop is there on Linux only");
        var device = new Weigher();
        await using var server = ModbusTcpServer.Start(UnitRouting.Any(device), new ModbusTcpServerOptions { Threading = ServerThreading.ReadinessLoop })
            .ShouldBeOfType<ServerStart.Listening>().Server;
        using var line = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
        await line.ConnectAsync(IPAddress.Loopback, server.Endpoint.Port);
        Ask(line, 200);
        var before = device.Allocated;
        Ask(line, 2000);
        (device.Allocated - before).ShouldBe(0);
    }

    private static void Ask(Socket line, int times)
    {
        byte[] request = [0, 1, 0, 0, 0, 6, 1, 3, 0, 0, 0, 10];
        var reply = new byte[29];
        for (var i = 0; i < times; i++)
        {
            line.Send(request);
            var got = 0;
            while (got < reply.Length)
            {
                got += line.Receive(reply.AsSpan(got));
            }
        }
    }

    /// <summary>Weighs what the thread that asks it has allocated so far.</summary>
    private sealed class Weigher : IModbusDevice
    {
        private long _allocated;

        public long Allocated => Interlocked.Read(ref _allocated);

        public DeviceAnswer ReadHoldingRegisters(RegisterRange range, Span<ushort> values)
        {
            values.Clear();
            Interlocked.Exchange(ref _allocated, GC.GetAllocatedBytesForCurrentThread());
            return DeviceAnswer.Done;
        }
    }
}
