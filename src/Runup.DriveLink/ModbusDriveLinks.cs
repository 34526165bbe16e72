using Runup.Commissioning.Entry;
using Runup.Modbus;
using Runup.Modbus.Tcp;
using Runup.Profiles;

namespace Runup.DriveLink;

/// <summary>Opens links to one drive over Modbus TCP: one connection, one attempt a call.</summary>
/// <param name="address">Where the drive is.</param>
/// <param name="profile">How it is spoken to.</param>
/// <param name="time">The clock of the time-outs.</param>
/// <param name="tap">Sees every frame, or null.</param>
public sealed class ModbusDriveLinks(LinkAddress address, DriveProfile profile, TimeProvider time, FrameTap? tap = null) : IDriveLinks
{
    /// <inheritdoc/>
    public async Task<LinkOpening> Open(CancellationToken cancellation)
    {
        var options = new ModbusTcpClientOptions { Time = time, Tap = tap };
        return await ModbusTcpClient.ConnectAsync(address.Host, address.Port, options, cancellation) switch
        {
            ConnectOutcome.Connected connected => new LinkOpening.Opened(new ModbusDriveLink(connected.Client, new UnitId(address.Unit), profile, time, address.ToString())),
            ConnectOutcome.TimedOut late => new LinkOpening.Failed($"{address}: no connection within {late.After.TotalSeconds:0.#} s"),
            ConnectOutcome.NobodyListens => new LinkOpening.Failed($"{address}: the machine is there, and nobody listens at that port"),
            ConnectOutcome.Unreachable unreachable => new LinkOpening.Failed($"{address}: {unreachable.Why}"),
            _ => throw new InvalidOperationException("The set of outcomes is closed."),
        };
    }
}
