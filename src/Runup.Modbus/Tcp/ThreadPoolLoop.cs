using System.Net.Sockets;
using Runup.Modbus.Serving;

namespace Runup.Modbus.Tcp;

/// <summary>An asynchronous receive for each connection; works on every system.</summary>
internal sealed class ThreadPoolLoop : ServerLoop
{
    private static readonly TimeSpan PauseWhenOutOfSockets = TimeSpan.FromMilliseconds(100);
    private readonly Socket _listener;
    private readonly RequestServer _server;
    private readonly ModbusTcpServerOptions _options;
    private readonly TapGate _tap;
    private readonly TcpDeadlines _deadlines;
    private readonly Lock _gate = new();
    private readonly Lock _device = new();
    private readonly HashSet<Line> _lines = [];
    private readonly TaskCompletionSource _drained = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly CancellationTokenSource _stopping = new();
    private readonly ITimer _sweep;
    private readonly Task _accepting;

    public ThreadPoolLoop(Socket listener, RequestServer server, ModbusTcpServerOptions options)
    {
        _listener = listener;
        _server = server;
        _options = options;
        _tap = new TapGate(options.Tap, options.Time);
        _deadlines = new TcpDeadlines(options);
        _sweep = options.Time.CreateTimer(static state => ((ThreadPoolLoop)state!).Sweep(), this, _deadlines.SweepPeriod, _deadlines.SweepPeriod);
        _accepting = Task.Run(AcceptAsync);
    }

    public override int ConnectionCount
    {
        get
        {
            lock (_gate)
            {
                return _lines.Count;
            }
        }
    }

    public override async ValueTask DisposeAsync()
    {
        await _stopping.CancelAsync();
        await _accepting;
        _listener.Dispose();
        await _sweep.DisposeAsync();
        lock (_gate)
        {
            foreach (var line in _lines)
            {
                line.Socket.Dispose();
            }

            if (_lines.Count == 0)
            {
                _drained.TrySetResult();
            }
        }

        await _drained.Task;
        _stopping.Dispose();
    }

    private async Task AcceptAsync()
    {
        while (!_stopping.IsCancellationRequested)
        {
            try
            {
                Admit(await _listener.AcceptAsync(_stopping.Token));
            }
            catch (OperationCanceledException)
            {
                return;
            }
            catch (SocketException failure) when (failure.SocketErrorCode == SocketError.TooManyOpenSockets)
            {
                await Task.Delay(PauseWhenOutOfSockets, _stopping.Token).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            }
            catch (SocketException)
            {
                // The caller went away between knocking and being let in; the next one may stay.
            }
        }
    }

    private void Admit(Socket socket)
    {
        var line = new Line(socket, new TcpConversation(_server, _tap, _deadlines));
        lock (_gate)
        {
            if (_lines.Count >= _options.MaxConnections)
            {
                socket.Dispose();
                return;
            }

            _lines.Add(line);
        }

        Prepare(socket);
        _ = Task.Run(() => ServeAsync(line));
    }

    private async Task ServeAsync(Line line)
    {
        try
        {
            while (true)
            {
                var count = await line.Socket.ReceiveAsync(line.Conversation.Room, SocketFlags.None);
                if (count == 0)
                {
                    return;
                }

                line.Conversation.Arrived(count);
                var turn = Next(line, out var length);
                while (turn == TurnKind.Reply)
                {
                    await SendAsync(line, length);
                    turn = Next(line, out length);
                }

                if (turn == TurnKind.HangUp)
                {
                    return;
                }
            }
        }
        catch (Exception failure) when (failure is SocketException or ObjectDisposedException)
        {
            // The other side went away, or the line was overdue, or the server stops: in each case the line ends here.
        }
        catch (Exception failure)
        {
            _server.Report(failure);
        }
        finally
        {
            Forget(line);
        }
    }

    private TurnKind Next(Line line, out int length)
    {
        lock (_device)
        {
            return line.Conversation.Next(line.Reply, out length);
        }
    }

    private static async ValueTask SendAsync(Line line, int length)
    {
        var sent = 0;
        while (sent < length)
        {
            var sending = line.Socket.SendAsync(line.Reply.AsMemory(sent, length - sent), SocketFlags.None);
            if (sending.IsCompletedSuccessfully)
            {
                sent += await sending;
                continue;
            }

            line.Conversation.ReplyWaits();
            sent += await sending;
            line.Conversation.ReplyLeft();
        }
    }

    private void Forget(Line line)
    {
        line.Socket.Dispose();
        lock (_gate)
        {
            _lines.Remove(line);
            if (_stopping.IsCancellationRequested && _lines.Count == 0)
            {
                _drained.TrySetResult();
            }
        }
    }

    private void Sweep()
    {
        lock (_gate)
        {
            foreach (var line in _lines)
            {
                if (line.Conversation.IsOverdue)
                {
                    line.Socket.Dispose();
                }
            }
        }
    }

    private sealed class Line(Socket socket, TcpConversation conversation)
    {
        public Socket Socket => socket;

        public TcpConversation Conversation => conversation;

        public byte[] Reply { get; } = new byte[ModbusLimits.TcpFrameLength];
    }
}
