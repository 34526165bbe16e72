using System.Net.Sockets;
using Microsoft.Win32.SafeHandles;
using Runup.Modbus.Serving;

namespace Runup.Modbus.Tcp.Linux;

/// <summary>
/// One thread that serves every connection: the system says which have something to read, each is given one receive, and the thread sleeps again.
/// No hand-over between threads lies between a request and its reply; that is what the measurements chose it for.
/// </summary>
internal sealed class ReadinessLoop : ServerLoop
{
    private const ulong ListenerKey = ulong.MaxValue;
    private const ulong WakeKey = ulong.MaxValue - 1;
    private readonly Socket _listener;
    private readonly RequestServer _server;
    private readonly TapGate _tap;
    private readonly TcpDeadlines _deadlines;
    private readonly ReadinessLine?[] _lines;
    private readonly Stack<int> _free;
    private readonly Epoll _epoll = new();
    private readonly SafeFileHandle _wakeUp = LibC.CreateEvent();
    private readonly ITimer _sweepTimer;
    private readonly byte[] _reply = new byte[ModbusLimits.TcpFrameLength];
    private readonly TaskCompletionSource _ended = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private uint _generation;
    private int _count;
    private bool _listenerRests;
    private volatile bool _sweepDue;
    private volatile bool _stopping;

    public ReadinessLoop(Socket listener, RequestServer server, ModbusTcpServerOptions options)
    {
        _listener = listener;
        _listener.Blocking = false;
        _server = server;
        _tap = new TapGate(options.Tap, options.Time);
        _deadlines = new TcpDeadlines(options);
        _lines = new ReadinessLine?[options.MaxConnections];
        _free = new Stack<int>(Enumerable.Range(0, options.MaxConnections).Reverse());
        _epoll.Watch(_listener.SafeHandle, ListenerKey, Readiness.Readable);
        _epoll.Watch(_wakeUp, WakeKey, Readiness.Readable);
        _sweepTimer = options.Time.CreateTimer(static state => ((ReadinessLoop)state!).AskForSweep(), this, _deadlines.SweepPeriod, _deadlines.SweepPeriod);
        new Thread(Run) { IsBackground = true, Name = "Modbus TCP server" }.Start();
    }

    public override int ConnectionCount => Volatile.Read(ref _count);

    public override async ValueTask DisposeAsync()
    {
        await _sweepTimer.DisposeAsync();
        _stopping = true;
        LibC.Raise(_wakeUp);
        await _ended.Task;
        _wakeUp.Dispose();
        _epoll.Dispose();
    }

    private void AskForSweep()
    {
        _sweepDue = true;
        LibC.Raise(_wakeUp);
    }

    private void Run()
    {
        while (!_stopping)
        {
            var ready = _epoll.Wait();
            for (var i = 0; i < ready && !_stopping; i++)
            {
                Attend(_epoll.Key(i));
            }
        }

        _listener.Dispose();
        foreach (var line in _lines)
        {
            if (line is not null)
            {
                Close(line);
            }
        }

        _ended.SetResult();
    }

    private void Attend(ulong key)
    {
        switch (key)
        {
            case ListenerKey:
                Accept();
                break;
            case WakeKey:
                LibC.Clear(_wakeUp);
                if (_sweepDue)
                {
                    _sweepDue = false;
                    Sweep();
                }

                break;
            default:
                // A line closed earlier in this round may have left its place to another, which then has another key.
                if (_lines[(int)(uint)key] is { } line && line.Key == key)
                {
                    Attend(line);
                }

                break;
        }
    }

    private void Attend(ReadinessLine line)
    {
        try
        {
            if (!line.Attend(_reply, _epoll))
            {
                Close(line);
            }
        }
        catch (Exception failure) when (failure is not OutOfMemoryException)
        {
            _server.Report(failure);
            Close(line);
        }
    }

    private void Accept()
    {
        try
        {
            var socket = _listener.Accept();
            if (!_free.TryPop(out var place))
            {
                socket.Dispose();
                return;
            }

            Prepare(socket);
            var line = new ReadinessLine(socket, new TcpConversation(_server, _tap, _deadlines), ((ulong)_generation++ << 32) | (uint)place);
            _epoll.Watch(socket.SafeHandle, line.Key, Readiness.Readable);
            _lines[place] = line;
            Volatile.Write(ref _count, _count + 1);
        }
        catch (SocketException failure) when (failure.SocketErrorCode == SocketError.TooManyOpenSockets)
        {
            Rest(true);
        }
        catch (SocketException)
        {
            // The caller went away between knocking and being let in.
        }
    }

    // Without a descriptor to spare the listener would be ready for ever; it rests until a line closes or the next sweep.
    private void Rest(bool rests)
    {
        if (_listenerRests != rests)
        {
            _listenerRests = rests;
            _epoll.Rewatch(_listener.SafeHandle, ListenerKey, rests ? Readiness.None : Readiness.Readable);
        }
    }

    private void Sweep()
    {
        Rest(false);
        foreach (var line in _lines)
        {
            if (line is { Conversation.IsOverdue: true })
            {
                Close(line);
            }
        }
    }

    private void Close(ReadinessLine line)
    {
        // Closing the descriptor takes it out of the watched set.
        line.Socket.Dispose();
        var place = (int)(uint)line.Key;
        _lines[place] = null;
        _free.Push(place);
        Volatile.Write(ref _count, _count - 1);
        if (!_stopping)
        {
            Rest(false);
        }
    }
}
