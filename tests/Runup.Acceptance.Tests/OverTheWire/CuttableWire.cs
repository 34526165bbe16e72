using System.Net;
using System.Net.Sockets;

namespace Runup.Acceptance.Tests.OverTheWire;

/// <summary>A cable between program and drive that can be cut: then nothing passes any more, and neither end is told.</summary>
internal sealed class CuttableWire : IAsyncDisposable
{
    private readonly TcpListener listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource ended = new();
    private readonly IPEndPoint far;
    private readonly Task accepting;
    private readonly Action<byte[]>? sent;
    private volatile bool cut;

    internal CuttableWire(IPEndPoint far, Action<byte[]>? sent = null)
    {
        (this.far, this.sent) = (far, sent);
        listener.Start();
        accepting = Accept();
    }

    internal int Port => ((IPEndPoint)listener.LocalEndpoint).Port;

    public async ValueTask DisposeAsync()
    {
        await ended.CancelAsync();
        listener.Dispose();
        await accepting;
        ended.Dispose();
    }

    internal void Cut() => cut = true;

    private async Task Accept()
    {
        var passing = new List<Task>();
        try
        {
            while (true)
            {
                var near = await listener.AcceptTcpClientAsync(ended.Token);
                var there = new TcpClient();
                await there.ConnectAsync(far, ended.Token);
                passing.Add(Pass(near, there, sent));
                passing.Add(Pass(there, near, null));
            }
        }
        catch (Exception e) when (e is OperationCanceledException or SocketException or ObjectDisposedException)
        {
            await Task.WhenAll(passing);
        }
    }

    private async Task Pass(TcpClient from, TcpClient to, Action<byte[]>? seen)
    {
        var bytes = new byte[512];
        try
        {
            while (await from.GetStream().ReadAsync(bytes, ended.Token) is > 0 and var count)
            {
                seen?.Invoke(bytes[..count]);
                if (!cut)
                {
                    await to.GetStream().WriteAsync(bytes.AsMemory(0, count), ended.Token);
                }
            }
        }
        catch (Exception e) when (e is IOException or OperationCanceledException or ObjectDisposedException or InvalidOperationException)
        {
            // The wire ends with either end.
        }
        finally
        {
            from.Dispose();
            to.Dispose();
        }
    }
}
