using System.Buffers.Binary;
using Runup.Modbus;

namespace Runup.Outside.Tests.Modbus;

/// <summary>Writes what a tap sees as a capture file: each frame in one TCP segment between two addresses (pcap with link type 101, raw IPv4).</summary>
internal sealed class Capture(ushort serverPort) : IDisposable
{
    private const ushort ClientPort = 40_000;
    private const int IpHeader = 20;
    private const int TcpHeader = 20;
    private const byte PushAndAcknowledge = 0x18;
    private readonly FileStream _file = File.Create(System.IO.Path.Combine(System.IO.Path.GetTempPath(), $"runup-{Guid.NewGuid():N}.pcap"));
    private uint _sent = 1;
    private uint _received = 1;
    private bool _begun;

    public string Path => _file.Name;

    public int Frames { get; private set; }

    public void Tap(FrameDirection direction, DateTimeOffset at, ReadOnlySpan<byte> bytes)
    {
        Begin();
        Frames++;
        var length = IpHeader + TcpHeader + bytes.Length;
        Span<byte> record = stackalloc byte[16 + length];
        record.Clear();
        BinaryPrimitives.WriteUInt32LittleEndian(record, (uint)at.ToUnixTimeSeconds());
        BinaryPrimitives.WriteUInt32LittleEndian(record[4..], (uint)(at.Microsecond + (at.Millisecond * 1000)));
        BinaryPrimitives.WriteUInt32LittleEndian(record[8..], (uint)length);
        BinaryPrimitives.WriteUInt32LittleEndian(record[12..], (uint)length);
        var sent = direction == FrameDirection.Sent;
        WriteIp(record.Slice(16, IpHeader), length, sent);
        WriteTcp(record.Slice(16 + IpHeader, TcpHeader), sent);
        bytes.CopyTo(record[(16 + IpHeader + TcpHeader)..]);
        _file.Write(record);
        if (sent)
        {
            _sent += (uint)bytes.Length;
        }
        else
        {
            _received += (uint)bytes.Length;
        }
    }

    public void Finish() => _file.Flush();

    public void Dispose()
    {
        _file.Dispose();
        File.Delete(Path);
    }

    private void Begin()
    {
        if (_begun)
        {
            return;
        }

        _begun = true;
        Span<byte> head = stackalloc byte[24];
        head.Clear();
        BinaryPrimitives.WriteUInt32LittleEndian(head, 0xA1B2C3D4);
        BinaryPrimitives.WriteUInt16LittleEndian(head[4..], 2);
        BinaryPrimitives.WriteUInt16LittleEndian(head[6..], 4);
        BinaryPrimitives.WriteUInt32LittleEndian(head[16..], 65_535);
        BinaryPrimitives.WriteUInt32LittleEndian(head[20..], 101);
        _file.Write(head);
    }

    private static void WriteIp(Span<byte> ip, int length, bool sent)
    {
        ip[0] = 0x45;
        BinaryPrimitives.WriteUInt16BigEndian(ip[2..], (ushort)length);
        ip[8] = 64;
        ip[9] = 6;
        ip[12] = 10;
        ip[15] = (byte)(sent ? 1 : 2);
        ip[16] = 10;
        ip[19] = (byte)(sent ? 2 : 1);
        BinaryPrimitives.WriteUInt16BigEndian(ip[10..], OnesComplement(ip));
    }

    private void WriteTcp(Span<byte> tcp, bool sent)
    {
        BinaryPrimitives.WriteUInt16BigEndian(tcp, sent ? ClientPort : serverPort);
        BinaryPrimitives.WriteUInt16BigEndian(tcp[2..], sent ? serverPort : ClientPort);
        BinaryPrimitives.WriteUInt32BigEndian(tcp[4..], sent ? _sent : _received);
        BinaryPrimitives.WriteUInt32BigEndian(tcp[8..], sent ? _received : _sent);
        tcp[12] = TcpHeader / 4 << 4;
        tcp[13] = PushAndAcknowledge;
        BinaryPrimitives.WriteUInt16BigEndian(tcp[14..], 65_535);
    }

    private static ushort OnesComplement(ReadOnlySpan<byte> bytes)
    {
        uint sum = 0;
        for (var i = 0; i < bytes.Length; i += 2)
        {
            sum += BinaryPrimitives.ReadUInt16BigEndian(bytes[i..]);
        }

        while (sum > 0xFFFF)
        {
            sum = (sum >> 16) + (sum & 0xFFFF);
        }

        return (ushort)~sum;
    }
}
