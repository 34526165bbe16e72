using Runup.Commissioning.Entry;
using Runup.Modbus;
using Runup.SimulatedDrive.Clock;

namespace Runup.Cli.Demo;

/// <summary>
/// Lets the demo's clock stand still while a connection is made, and while a frame is on its way and not answered, a
/// few real seconds at most: many times as fast as real time, this computer's own delays would else look like a slow link.
/// </summary>
internal sealed class ExchangeHold
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(3);

    private readonly TimeProvider real;
    private long sent;

    internal ExchangeHold(PacedTime time, TimeProvider real)
    {
        this.real = real;
        time.HoldWhile(() => Interlocked.Read(ref sent) is not 0 and var at && this.real.GetElapsedTime(at) < Longest);
    }

    /// <summary>The same links, opened while the clock stands still.</summary>
    internal IDriveLinks Around(IDriveLinks links) => new Held(links, this);

    internal void Tap(FrameDirection direction, DateTimeOffset at, ReadOnlySpan<byte> bytes) =>
        Interlocked.Exchange(ref sent, direction == FrameDirection.Sent ? real.GetTimestamp() : 0);

    private sealed class Held(IDriveLinks links, ExchangeHold hold) : IDriveLinks
    {
        public async Task<LinkOpening> Open(CancellationToken cancellation)
        {
            Interlocked.Exchange(ref hold.sent, hold.real.GetTimestamp());
            try
            {
                return await links.Open(cancellation);
            }
            finally
            {
                Interlocked.Exchange(ref hold.sent, 0);
            }
        }
    }
}
