using Runup.Modbus;

namespace Runup.DriveLink;

/// <summary>How long a link waits for the reply to a write.</summary>
/// <remarks>
/// The link's own time, until a reply was lost; from then on four times the slowest that was heard, since a drive or a gateway that
/// swallows one often swallows all, and the read-back tells what came of it anyway. At least 0.1 s, at most the link's own
/// (common practice, no source).
/// </remarks>
internal sealed class WritePatience(TimeProvider time)
{
    private static readonly TimeSpan Least = TimeSpan.FromMilliseconds(100);
    private static readonly TimeSpan Most = TimeSpan.FromSeconds(1);

    private TimeSpan slowest;
    private bool lost;

    /// <summary>An exchange whose time counts as heard where it is answered.</summary>
    public async Task<ModbusOutcome<T>> Heard<T>(Task<ModbusOutcome<T>> exchange)
    {
        var begun = time.GetTimestamp();
        var outcome = await exchange;
        if (outcome is ModbusOutcome<T>.Answered or ModbusOutcome<T>.Refused && time.GetElapsedTime(begun) is var took && took > slowest)
        {
            slowest = took;
        }

        return outcome;
    }

    /// <summary>A write, with the time that it gets unless another is asked for.</summary>
    public async Task<ModbusOutcome<T>> Over<T>(TimeSpan? asked, Func<TimeSpan?, Task<ModbusOutcome<T>>> write)
    {
        var outcome = await Heard(write(asked ?? (lost ? Within(4 * slowest) : null)));
        lost |= outcome is ModbusOutcome<T>.TimedOut;
        return outcome;
    }

    private static TimeSpan Within(TimeSpan time) => time < Least ? Least : time > Most ? Most : time;
}
