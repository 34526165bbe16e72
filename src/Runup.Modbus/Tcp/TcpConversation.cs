using Runup.Modbus.Serving;

namespace Runup.Modbus.Tcp;

/// <summary>What a conversation wants next.</summary>
internal enum TurnKind
{
    /// <summary>More bytes.</summary>
    Listen,

    /// <summary>Its reply sent.</summary>
    Reply,

    /// <summary>To be closed: what came is not Modbus.</summary>
    HangUp,
}

/// <summary>The server's side of one connection without the connection: bytes in, replies out, one frame's memory. Knows deadlines but no clock and no socket.</summary>
internal sealed class TcpConversation(RequestServer server, TapGate tap, TcpDeadlines deadlines)
{
    private const long Never = long.MinValue;
    private readonly byte[] _received = new byte[ModbusLimits.TcpFrameLength];
    private int _start;
    private int _end;
    private long _lastFrame = deadlines.Now;
    private long _waitingSince = Never;

    /// <summary>Where arriving bytes go; never empty after <see cref="TurnKind.Listen"/>.</summary>
    public Memory<byte> Room => _received.AsMemory(_end);

    /// <summary>Takes note of bytes put into <see cref="Room"/>.</summary>
    public void Arrived(int count)
    {
        _end += count;
        if (Volatile.Read(ref _waitingSince) == Never)
        {
            Volatile.Write(ref _waitingSince, deadlines.Now);
        }
    }

    /// <summary>Works off what has arrived up to the next reply.</summary>
    /// <param name="reply">A frame's memory.</param>
    /// <param name="length">The reply's length.</param>
    public TurnKind Next(Span<byte> reply, out int length)
    {
        length = 0;
        while (true)
        {
            var waiting = _received.AsSpan(_start, _end - _start);
            var reading = TcpFrame.Read(waiting);
            switch (reading.State)
            {
                case TcpFrameState.Whole:
                    length = Answer(reading, waiting[..reading.Length], reply);
                    if (length > 0)
                    {
                        return TurnKind.Reply;
                    }

                    break;
                case TcpFrameState.NotModbus:
                    tap.Show(FrameDirection.Received, waiting);
                    return TurnKind.HangUp;
                default:
                    Compact(waiting);
                    return TurnKind.Listen;
            }
        }
    }

    /// <summary>Takes note that the other side has no room for the reply.</summary>
    public void ReplyWaits() => Volatile.Write(ref _waitingSince, deadlines.Now);

    /// <summary>Takes note that the reply has left after all.</summary>
    public void ReplyLeft() => WaitForMore();

    /// <summary>Whether a frame begun, a reply not taken or an idle line has lasted too long.</summary>
    public bool IsOverdue => deadlines.FramePassed(Volatile.Read(ref _waitingSince), Never) || deadlines.IdlePassed(Volatile.Read(ref _lastFrame));

    private int Answer(TcpFrameReading reading, ReadOnlySpan<byte> frame, Span<byte> reply)
    {
        tap.Show(FrameDirection.Received, frame);
        _start += reading.Length;
        Volatile.Write(ref _lastFrame, deadlines.Now);
        WaitForMore();
        var pduLength = server.Answer(reading.Unit, reading.Pdu(frame), reply[TcpFrame.HeaderLength..]);
        if (pduLength == 0)
        {
            return 0;
        }

        var length = TcpFrame.WriteHeader(reply, reading.Transaction, reading.Unit, pduLength);
        tap.Show(FrameDirection.Sent, reply[..length]);
        return length;
    }

    private void Compact(ReadOnlySpan<byte> waiting)
    {
        if (_start > 0)
        {
            waiting.CopyTo(_received);
            _start = 0;
            _end = waiting.Length;
        }
    }

    private void WaitForMore() => Volatile.Write(ref _waitingSince, _end > _start ? deadlines.Now : Never);
}
