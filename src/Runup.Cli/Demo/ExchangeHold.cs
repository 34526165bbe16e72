using Runup.Modbus;
using Runup.SimulatedDrive.Clock;

namespace Runup.Cli.Demo;

/// <summary>
/// Lets the demo's clock stand still while a frame is on its way and not answered, a real second at most: many
/// times as fast as real time, this computer's own delays would else look like a slow link.
/// </summary>
internal sealed class ExchangeHold
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(1);

    private readonly TimeProvider real;
    private long sent;

    internal ExchangeHold(PacedTime time, TimeProvider real)
    {
        this.real = real;
        time.HoldWhile(() => Interlocked.Read(ref sent) is not 0 and var at && this.real.GetElapsedTime(at) < Longest);
    }

    internal void Tap(FrameDirection direction, DateTimeOffset at, ReadOnlySpan<byte> bytes) =>
        Interlocked.Exchange(ref sent, direction == FrameDirection.Sent ? real.GetTimestamp() : 0);
}
