using Runup.Profiles;

namespace Runup.Commissioning.Entry;

/// <summary>Sees a drive lose its power while a person switches it off and on.</summary>
/// <remarks>
/// The link falls silent where the drive's own supply feeds it; a drive whose electronics have another supply is seen by its DC bus.
/// The bus is taken for empty below 50 V (common practice, no source).
/// </remarks>
internal sealed class PowerCycleWatch(IDriveLink link, IPerson person, TimeProvider time)
{
    private const double EmptyBusV = 50;
    private static readonly TimeSpan Pace = TimeSpan.FromMilliseconds(500);

    public async Task<(PersonSays Says, bool Seen)> Run(CancellationToken cancellation)
    {
        var done = person.PowerCycle(cancellation);
        var seen = false;
        while (!done.IsCompleted && !seen)
        {
            seen = await WithoutPower(cancellation);
            await Task.WhenAny(done, Task.Delay(Pace, time, cancellation));
        }

        var says = await done;
        return (says, seen || await WithoutPower(cancellation));
    }

    private async Task<bool> WithoutPower(CancellationToken cancellation) => await link.Status(cancellation) switch
    {
        LinkReply<DriveStatus>.Unanswered => true,
        LinkReply<DriveStatus>.Answered { Value: var status } => status.State == PowerState.NotReadyToSwitchOn || status.DcBusV < EmptyBusV,
        _ => false,
    };
}
