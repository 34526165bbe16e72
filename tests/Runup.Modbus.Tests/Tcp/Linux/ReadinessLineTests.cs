using System.Buffers.Binary;
using System.Net;
using System.Net.Sockets;
using Runup.Modbus.Serving;
using Runup.Modbus.Tcp;
using Runup.Modbus.Tcp.Linux;
using Runup.Modbus.Tests.Serving;

namespace Runup.Modbus.Tests.Tcp.Linux;

public sealed class ReadinessLineTests
{
    [Fact]
    public async Task Reply_without_room_waits_whole_while_nothing_more_is_read_and_none_is_lost()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "the readiness loop is there on Linux only");
        using var client = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp) { ReceiveBufferSize = 2048, NoDelay = true };
        using var served = await ConnectAsync(client);
        served.SendBufferSize = 2048;
        var options = new ModbusTcpServerOptions();
        var line = new ReadinessLine(
            served,
            new TcpConversation(new RequestServer(UnitRouting.Any(new BankDevice())), new TapGate(null, options.Time), new TcpDeadlines(options)),
            key: 1);
        using var epoll = new Epoll();
        epoll.Watch(served.SafeHandle, 1, Readiness.Readable);
        var reply = new byte[ModbusLimits.TcpFrameLength];

        // Replies of many lengths, so that the system's room ends now between two and now within one.
        ushort asked = 0;
        ushort answered = 0;
        for (var round = 0; round < 15; round++)
        {
            while (!line.HoldsReply)
            {
                Ask(client, ++asked);
                epoll.Wait().ShouldBe(1);
                line.Attend(reply, epoll).ShouldBeTrue();
            }

            // Asked while a reply waits: taken up only afterwards.
            Ask(client, ++asked);
            Ask(client, ++asked);
            while (answered < asked)
            {
                answered++;
                var got = Take(client, served, line, epoll, reply, 9 + (2 * RegistersAskedFor(answered)));
                BinaryPrimitives.ReadUInt16BigEndian(got).ShouldBe(answered);
                got[8].ShouldBe((byte)(2 * RegistersAskedFor(answered)));
            }

            line.HoldsReply.ShouldBeFalse();
            client.Available.ShouldBe(0);
        }
    }

    private static int RegistersAskedFor(ushort transaction) => 1 + (transaction * 37 % 125);

    private static byte[] Take(Socket client, Socket served, ReadinessLine line, Epoll epoll, byte[] scratch, int length)
    {
        var got = new byte[length];
        var count = 0;
        while (count < got.Length)
        {
            if (client.Available == 0 && (line.HoldsReply || served.Available > 0))
            {
                epoll.Wait().ShouldBe(1);
                line.Attend(scratch, epoll).ShouldBeTrue();
            }

            count += client.Receive(got.AsSpan(count, Math.Min(got.Length - count, Math.Max(client.Available, 1))));
        }

        return got;
    }

    private static void Ask(Socket client, ushort transaction) =>
        client.Send([(byte)(transaction >> 8), (byte)transaction, 0, 0, 0, 6, 1, 3, 0, 0, 0, (byte)RegistersAskedFor(transaction)]).ShouldBe(12);

    private static async Task<Socket> ConnectAsync(Socket client)
    {
        using var listener = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
        listener.Bind(new IPEndPoint(IPAddress.Loopback, 0));
        listener.Listen();
        await client.ConnectAsync(listener.LocalEndPoint!);
        return await listener.AcceptAsync();
    }
}
