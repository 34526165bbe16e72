using System.Net.Sockets;
using System.Runtime.InteropServices;

namespace Runup.Modbus.Tcp.Linux;

/// <summary>One connection of the readiness loop. While a reply waits for room it reads nothing, so a peer that takes nothing costs one reply's memory.</summary>
internal sealed class ReadinessLine(Socket socket, TcpConversation conversation, ulong key)
{
    private readonly SafeHandle _handle = socket.SafeHandle;
    private byte[]? _waitingReply;
    private int _waitingStart;
    private int _waitingEnd;

    public Socket Socket => socket;

    public TcpConversation Conversation => conversation;

    public ulong Key => key;

    /// <summary>Whether a reply waits for room.</summary>
    public bool HoldsReply => _waitingEnd > 0;

    /// <summary>Goes on as far as it can without waiting.</summary>
    /// <param name="reply">A frame's memory, shared by all lines of the loop.</param>
    /// <param name="epoll">Where to ask for room.</param>
    /// <returns>False when the line is to be closed.</returns>
    public bool Attend(Span<byte> reply, Epoll epoll) => HoldsReply ? Resume(reply, epoll) : Receive(reply, epoll);

    private bool Receive(Span<byte> reply, Epoll epoll)
    {
        var count = LibC.Receive(_handle, conversation.Room.Span);
        if (count <= 0)
        {
            return count < 0 && CanGoOn();
        }

        conversation.Arrived(count);
        return WorkOff(reply, epoll);
    }

    private bool WorkOff(Span<byte> reply, Epoll epoll)
    {
        var turn = conversation.Next(reply, out var length);
        while (turn == TurnKind.Reply)
        {
            var sent = LibC.Send(_handle, reply[..length]);
            if (sent < 0 && !CanGoOn())
            {
                return false;
            }

            if (sent < length)
            {
                KeepBack(reply[Math.Max(sent, 0)..length], epoll);
                return true;
            }

            turn = conversation.Next(reply, out length);
        }

        return turn == TurnKind.Listen;
    }

    private void KeepBack(ReadOnlySpan<byte> rest, Epoll epoll)
    {
        _waitingReply ??= new byte[ModbusLimits.TcpFrameLength];
        rest.CopyTo(_waitingReply);
        _waitingStart = 0;
        _waitingEnd = rest.Length;
        conversation.ReplyWaits();
        epoll.Rewatch(_handle, key, Readiness.Writable);
    }

    private bool Resume(Span<byte> reply, Epoll epoll)
    {
        var sent = LibC.Send(_handle, _waitingReply.AsSpan(_waitingStart, _waitingEnd - _waitingStart));
        if (sent < 0)
        {
            return CanGoOn();
        }

        _waitingStart += sent;
        if (_waitingStart < _waitingEnd)
        {
            return true;
        }

        _waitingEnd = 0;
        conversation.ReplyLeft();
        epoll.Rewatch(_handle, key, Readiness.Readable);
        return WorkOff(reply, epoll);
    }

    private static bool CanGoOn() => Marshal.GetLastPInvokeError() is LibC.WouldBlock or LibC.Interrupted;
}
