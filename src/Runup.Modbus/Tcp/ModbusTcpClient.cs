using System.Net.Sockets;
using Runup.Modbus.Replies;
using Runup.Modbus.Requests;

namespace Runup.Modbus.Tcp;

/// <summary>
/// A client on one TCP connection. One request is outstanding at a time; others wait their turn.
/// A reply that comes after its request was given up is recognised by its transaction and discarded, so it is never taken for another's answer.
/// When the connection is lost it stays lost: every further request says so, and connecting anew is the caller's decision.
/// </summary>
public sealed class ModbusTcpClient : IModbusClient
{
    private readonly Socket _socket;
    private readonly ModbusTcpClientOptions _options;
    private readonly SemaphoreSlim _turn = new(1, 1);
    private readonly byte[] _sending = new byte[ModbusLimits.TcpFrameLength];
    private readonly Task _receiving;
    private readonly Lock _gate = new();
    private readonly TapGate _tap;
    private PendingExchange? _pending;
    private TransactionId _transaction;
    private string? _lost;
    private long _discarded;

    private ModbusTcpClient(Socket socket, ModbusTcpClientOptions options)
    {
        _socket = socket;
        _options = options;
        _tap = new TapGate(options.Tap, options.Time);
        _receiving = ReceiveAsync();
    }

    /// <summary>How many frames came that answered no request still waited for.</summary>
    public long DiscardedReplies => Interlocked.Read(ref _discarded);

    /// <summary>Whether the connection still stands as far as is known.</summary>
    public bool IsConnected
    {
        get
        {
            lock (_gate)
            {
                return _lost is null;
            }
        }
    }

    /// <summary>Connects.</summary>
    /// <param name="host">A name or an address.</param>
    /// <param name="port">The TCP port, 502 by convention.</param>
    /// <param name="options">Null for the defaults.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="OperationCanceledException">The caller gave up.</exception>
    public static async Task<ConnectOutcome> ConnectAsync(
        string host, int port, ModbusTcpClientOptions? options = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(host);
        options ??= new ModbusTcpClientOptions();
        if (Uri.CheckHostName(host) == UriHostNameType.Unknown)
        {
            return new ConnectOutcome.Unreachable($"'{host}' is neither a host name nor an address");
        }

        using var deadline = new CancellationTokenSource(options.ConnectTimeout, options.Time);
        using var either = CancellationTokenSource.CreateLinkedTokenSource(deadline.Token, cancellationToken);
        var socket = new Socket(SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
        try
        {
            await socket.ConnectAsync(host, port, either.Token);
            socket.SetSocketOption(SocketOptionLevel.Socket, SocketOptionName.KeepAlive, true);
            return new ConnectOutcome.Connected(new ModbusTcpClient(socket, options));
        }
        catch (OperationCanceledException) when (!cancellationToken.IsCancellationRequested)
        {
            socket.Dispose();
            return new ConnectOutcome.TimedOut(options.ConnectTimeout);
        }
        catch (SocketException failure)
        {
            socket.Dispose();
            return failure.SocketErrorCode switch
            {
                SocketError.ConnectionRefused => new ConnectOutcome.NobodyListens(),
                SocketError.TimedOut => new ConnectOutcome.TimedOut(options.ConnectTimeout),
                _ => new ConnectOutcome.Unreachable(failure.Message),
            };
        }
        catch
        {
            socket.Dispose();
            throw;
        }
    }

    /// <inheritdoc />
    public async Task<ModbusOutcome<ModbusReply>> SendAsync(
        UnitId unit, ModbusRequest request, TimeSpan? timeout = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        await _turn.WaitAsync(cancellationToken);
        try
        {
            return await ExchangeAsync(unit, request, timeout ?? _options.ReplyTimeout, cancellationToken);
        }
        finally
        {
            _turn.Release();
        }
    }

    /// <summary>Closes the connection; a request still waiting ends as connection lost.</summary>
    public async ValueTask DisposeAsync()
    {
        Lose("closed by this side");
        await _receiving;
    }

    private async Task<ModbusOutcome<ModbusReply>> ExchangeAsync(
        UnitId unit, ModbusRequest request, TimeSpan timeout, CancellationToken cancellationToken)
    {
        cancellationToken.ThrowIfCancellationRequested();
        PendingExchange pending;
        lock (_gate)
        {
            if (_lost is { } why)
            {
                return new ModbusOutcome<ModbusReply>.ConnectionLost(why, MayHaveArrived: false);
            }

            _transaction = _transaction.Next;
            pending = new PendingExchange(_transaction, unit, request, timeout);
            _pending = pending;
        }

        var pduLength = request.Encode(_sending.AsSpan(TcpFrame.HeaderLength));
        var length = TcpFrame.WriteHeader(_sending, pending.Transaction, unit, pduLength);
        await using var deadline = _options.Time.CreateTimer(static state => ((PendingExchange)state!).TimeOut(), pending, timeout, Timeout.InfiniteTimeSpan);
        await using var givingUp = cancellationToken.UnsafeRegister(static (state, token) => ((PendingExchange)state!).GiveUp(token), pending);
        try
        {
            await TransmitAsync(pending, _sending.AsMemory(0, length));
            return await pending.Ending;
        }
        finally
        {
            lock (_gate)
            {
                _pending = null;
            }
        }
    }

    private async Task TransmitAsync(PendingExchange pending, ReadOnlyMemory<byte> frame)
    {
        _tap.Show(FrameDirection.Sent, frame.Span);
        pending.MayHaveArrived = true;
        var sending = SendAllAsync(pending, frame);
        await Task.WhenAny(sending, pending.Ending);
        if (!sending.IsCompleted && pending.WasGivenUp)
        {
            // A frame cut short would leave the server out of step for good, so a send that can't be finished in time ends the connection.
            Lose("the request could not be sent in time");
        }

        await sending;
    }

    private async Task SendAllAsync(PendingExchange pending, ReadOnlyMemory<byte> frame)
    {
        var sent = 0;
        try
        {
            while (sent < frame.Length)
            {
                sent += await _socket.SendAsync(frame[sent..], SocketFlags.None);
            }
        }
        catch (Exception failure) when (failure is SocketException or ObjectDisposedException)
        {
            pending.MayHaveArrived = sent > 0;
            Lose(failure.Message);
        }
    }

    private async Task ReceiveAsync()
    {
        var received = new byte[ModbusLimits.TcpFrameLength];
        var count = 0;
        try
        {
            while (true)
            {
                var arrived = await _socket.ReceiveAsync(received.AsMemory(count), SocketFlags.None);
                if (arrived == 0)
                {
                    Lose("closed by the other side");
                    return;
                }

                count += arrived;
                var reading = TcpFrame.Read(received.AsSpan(0, count));
                while (reading.State == TcpFrameState.Whole)
                {
                    Take(reading, received.AsSpan(0, reading.Length));
                    received.AsSpan(reading.Length, count - reading.Length).CopyTo(received);
                    count -= reading.Length;
                    reading = TcpFrame.Read(received.AsSpan(0, count));
                }

                if (reading.State == TcpFrameState.NotModbus)
                {
                    _tap.Show(FrameDirection.Received, received.AsSpan(0, count));
                    Lose("what came is not Modbus", ReplyFault.NotModbus);
                    return;
                }
            }
        }
        catch (Exception failure) when (failure is SocketException or ObjectDisposedException)
        {
            Lose(failure.Message);
        }
        catch (Exception failure)
        {
            // The tap threw: nobody may wait for what will not come, and disposing shows the failure.
            Lose(failure.Message);
            throw;
        }
    }

    private void Take(TcpFrameReading reading, ReadOnlySpan<byte> frame)
    {
        _tap.Show(FrameDirection.Received, frame);
        PendingExchange? pending;
        lock (_gate)
        {
            pending = _pending;
        }

        if (pending is null || pending.Transaction != reading.Transaction || !pending.Take(reading.Unit, reading.Pdu(frame)))
        {
            Interlocked.Increment(ref _discarded);
        }
    }

    private void Lose(string why, ReplyFault? fault = null)
    {
        PendingExchange? pending;
        lock (_gate)
        {
            _lost ??= why;
            pending = _pending;
        }

        if (fault is { } known)
        {
            pending?.Fail(known);
        }

        pending?.Lose(why);
        _socket.Dispose();
    }
}
