using System.Buffers.Binary;
using System.Net;
using System.Net.Sockets;

namespace Runup.Acceptance.Tests;

/// <summary>Something on a TCP port that answers a Modbus request as a test wants, well or ill.</summary>
internal sealed class HostileDrive : IAsyncDisposable
{
    private readonly TcpListener listener = new(IPAddress.Loopback, 0);
    private readonly Func<byte[], byte[]?> answer;
    private readonly Task serving;

    /// <summary>Listens.</summary>
    /// <param name="answer">From a whole request frame to the bytes that go back; null for silence.</param>
    internal HostileDrive(Func<byte[], byte[]?> answer)
    {
        this.answer = answer;
        listener.Start();
        serving = Serve();
    }

    internal string Link => $"tcp://127.0.0.1:{((IPEndPoint)listener.LocalEndpoint).Port}/1";

    /// <summary>Functions that were asked for, in order.</summary>
    internal List<byte> Functions { get; } = [];

    public async ValueTask DisposeAsync()
    {
        listener.Stop();
        await serving;
    }

    /// <summary>A frame that answers another: its transaction and unit, and a PDU.</summary>
    internal static byte[] Reply(byte[] request, params ReadOnlySpan<byte> pdu) =>
        [request[0], request[1], 0, 0, 0, (byte)(pdu.Length + 1), request[6], .. pdu];

    /// <summary>The reply to a read: every register holds the word that a function gives for its address.</summary>
    internal static byte[] Registers(byte[] request, Func<int, ushort> word)
    {
        var (first, count) = (BinaryPrimitives.ReadUInt16BigEndian(request.AsSpan(8)), BinaryPrimitives.ReadUInt16BigEndian(request.AsSpan(10)));
        var words = Enumerable.Range(first, count).SelectMany(r => new[] { (byte)(word(r) >> 8), (byte)word(r) });
        return Reply(request, [3, (byte)(2 * count), .. words]);
    }

    private async Task Serve()
    {
        try
        {
            while (true)
            {
                using var client = await listener.AcceptTcpClientAsync();
                await Converse(client.GetStream());
            }
        }
        catch (Exception e) when (e is SocketException or ObjectDisposedException)
        {
            // The test is over.
        }
    }

    private async Task Converse(NetworkStream stream)
    {
        var header = new byte[6];
        try
        {
            while (await stream.ReadAtLeastAsync(header, 6, throwOnEndOfStream: false) == 6)
            {
                var rest = new byte[BinaryPrimitives.ReadUInt16BigEndian(header.AsSpan(4))];
                await stream.ReadExactlyAsync(rest);
                lock (Functions)
                {
                    Functions.Add(rest[1]);
                }

                if (answer([.. header, .. rest]) is { } bytes)
                {
                    await stream.WriteAsync(bytes);
                }
            }
        }
        catch (IOException)
        {
            // The program hung up.
        }
    }
}
