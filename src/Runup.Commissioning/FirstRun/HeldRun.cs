using Runup.Commissioning.Entry;
using Runup.Profiles;

namespace Runup.Commissioning.FirstRun;

/// <summary>
/// The one writer on the link while a run command is out. Each beat of the hold allows one command exchange and one round of readings;
/// without a beat nothing is sent but the stop.
/// </summary>
internal sealed class HeldRun(IDriveLink link, RunPermit permit, RunHold hold, TimeSpan rampLimit, TimeProvider time)
{
    private static readonly TimeSpan ExchangeLimit = TimeSpan.FromMilliseconds(200);

    private readonly List<RunSample> samples = [];
    private long? begun;
    private bool prepared;

    /// <summary>All rounds of readings of this run.</summary>
    public IReadOnlyList<RunSample> Samples => samples;

    /// <summary>When the last run command was sent.</summary>
    public long LastRenewal { get; private set; }

    private RunEnding HoldEnded => new RunEnding.HoldEnded(hold.End ?? HoldEnd.Silent);

    /// <summary>Time since the first run command.</summary>
    public TimeSpan Elapsed => begun is { } b ? time.GetElapsedTime(b) : TimeSpan.Zero;

    /// <summary>Renews a run command until a sample says that it is enough; null then, else how it ended.</summary>
    /// <param name="frequencyHz">What is asked for; negative is reverse.</param>
    /// <param name="enough">Looks at each sample.</param>
    /// <param name="limit">The longest that it may take.</param>
    public async Task<RunEnding?> Follow(double frequencyHz, Func<RunSample, bool> enough, TimeSpan limit)
    {
        if (!prepared && await Prepare() is { } unready)
        {
            return unready;
        }

        var from = time.GetTimestamp();
        var blind = 0;
        while (await hold.Renewal())
        {
            if (await Renew(frequencyHz) is { } ending)
            {
                return ending;
            }

            if (await Exchange(link.Status, hold.Lost) is LinkReply<DriveStatus>.Answered { Value: var status })
            {
                if (Trip(status) is { } tripped)
                {
                    return await Off(tripped);
                }

                blind = 0;
                samples.Add(new(Elapsed, status));
                if (enough(samples[^1]))
                {
                    return null;
                }
            }
            else if (hold.IsHeld() && ++blind == 2)
            {
                return await Stop(new RunEnding.NotReached("twice in a row no readings came"));
            }

            if (time.GetElapsedTime(from) > limit)
            {
                return await Stop(new RunEnding.NotReached($"{Math.Abs(frequencyHz):0.##} Hz did not settle within {limit.TotalSeconds:0.#} s"));
            }
        }

        return await Stop(HoldEnded);
    }

    /// <summary>Sends one run command and reads nothing; null when the drive took it.</summary>
    public async Task<RunEnding?> Renew(double frequencyHz)
    {
        if (permit.Ask(frequencyHz) is not RunAnswer.Granted granted)
        {
            return await Stop(HoldEnded);
        }

        var sent = time.GetTimestamp();
        var reply = await Exchange(token => link.Command(granted.Command, token), hold.Lost);
        begun ??= sent;
        LastRenewal = sent;
        return reply switch
        {
            LinkReply<Written>.Answered => null,
            LinkReply<Written>.Refused refused => await Stop(new RunEnding.Refused(refused.Why)),

            // The hold may have ended during the exchange; else the link fails, which is treated the same way.
            LinkReply<Written>.Unanswered lost => await Stop(hold.IsHeld() ? new RunEnding.NotReached($"a renewal was not answered: {lost.Why}") : HoldEnded),
            _ => throw new InvalidOperationException("The set of replies is closed."),
        };
    }

    /// <summary>Writes the stop, sees it obeyed and follows the motor to standstill.</summary>
    /// <param name="why">How the run ends then; null for the planned end of a step.</param>
    public async Task<RunEnding?> Stop(RunEnding? why = null) => await StopNow() ?? await ToStandstill() ?? why;

    // Within 200 ms and at most two reads the stop is seen to be obeyed, or Runup falls silent. A trip counts, since it stops too.
    private async Task<RunEnding?> StopNow()
    {
        using var window = new CancellationTokenSource(ExchangeLimit, time);
        var before = samples.Count > 0 ? samples[^1].Status.OutputFrequencyHz : null;
        var reply = await Exchange(token => link.Command(new LinkCommand.Stop(), token), window.Token);
        for (var read = 1; read <= 2 && !window.IsCancellationRequested; read++)
        {
            if (await Exchange(link.Status, window.Token) is LinkReply<DriveStatus>.Answered { Value: var status })
            {
                samples.Add(new(Elapsed, status));
                if (Trip(status) is { } tripped)
                {
                    return await Off(tripped);
                }

                if (Obeyed(status, before))
                {
                    return null;
                }
            }

            if (read == 1)
            {
                await Pause(TimeSpan.FromMilliseconds(80), window.Token);
            }
        }

        return new RunEnding.FellSilent(reply is LinkReply<Written>.Answered ? "the drive took the stop and was not seen to obey it" : "the stop was not answered");
    }

    // Reads, without commanding, until the motor stands; falls silent when it does not go on stopping.
    private async Task<RunEnding?> ToStandstill()
    {
        var from = time.GetTimestamp();
        var lowest = double.PositiveInfinity;
        var still = 0;
        while (time.GetElapsedTime(from) < rampLimit)
        {
            if (await Read() is not { } status)
            {
                return new RunEnding.FellSilent("no reading came while it was stopping");
            }

            samples.Add(new(Elapsed, status));
            if (Trip(status) is { } tripped)
            {
                return await Off(tripped);
            }

            // Two in a row: the last of a ramp rounds to nothing on the display before the drive is done.
            still = Standstill.Is(status) ? still + 1 : 0;
            if (still == 2)
            {
                return null;
            }

            if (status.OutputFrequencyHz > lowest + 0.5)
            {
                return new RunEnding.FellSilent("it ran up again after the stop");
            }

            lowest = Math.Min(lowest, status.OutputFrequencyHz ?? double.PositiveInfinity);
            await Pause(RunHold.Period, CancellationToken.None);
        }

        return new RunEnding.FellSilent($"it does not stand {rampLimit.TotalSeconds:0.#} s after the stop");
    }

    /// <summary>A reading of a motor that is stopping; none when three in a row do not come.</summary>
    public async Task<DriveStatus?> Read()
    {
        DriveStatus? status = null;
        for (var attempt = 1; attempt <= 3 && status is null; attempt++)
        {
            status = (await Exchange(link.Status, CancellationToken.None) as LinkReply<DriveStatus>.Answered)?.Value;
        }

        return status;
    }

    /// <summary>One reading within its time, or none.</summary>
    public async Task<DriveStatus?> Look() => (await Exchange(link.Status, CancellationToken.None) as LinkReply<DriveStatus>.Answered)?.Value;

    private static RunEnding.Tripped? Trip(DriveStatus status) =>
        status.State is PowerState.Fault or PowerState.FaultReactionActive ? new(status.Trip) : null;

    private static bool Obeyed(DriveStatus status, double? before) =>
        status.State != PowerState.OperationEnabled || !status.Running || status.OutputFrequencyHz < before - 0.015;

    private async Task<RunEnding?> Prepare()
    {
        prepared = true;
        return await link.Command(new LinkCommand.Prepare(), CancellationToken.None) switch
        {
            LinkReply<Written>.Answered => null,
            LinkReply<Written>.Refused refused => new RunEnding.Refused(refused.Why),
            LinkReply<Written>.Unanswered lost => new RunEnding.Refused($"the drive did not get ready: {lost.Why}"),
            _ => throw new InvalidOperationException("The set of replies is closed."),
        };
    }

    // The run command must not lie in the drive when a person resets the trip. This word resets nothing.
    private async Task<RunEnding> Off(RunEnding.Tripped tripped)
    {
        await Exchange(token => link.Command(new LinkCommand.Coast(), token), CancellationToken.None);
        return tripped;
    }

    private async Task<LinkReply<T>> Exchange<T>(Func<CancellationToken, Task<LinkReply<T>>> exchange, CancellationToken also)
    {
        using var limit = new CancellationTokenSource(ExchangeLimit, time);
        using var either = CancellationTokenSource.CreateLinkedTokenSource(limit.Token, also);
        try
        {
            return await exchange(either.Token);
        }
        catch (OperationCanceledException) when (either.IsCancellationRequested)
        {
            return new LinkReply<T>.Unanswered(also.IsCancellationRequested ? "given up" : $"no answer within {ExchangeLimit.TotalMilliseconds:0} ms");
        }
    }

    private async Task Pause(TimeSpan pause, CancellationToken cancellation)
    {
        try
        {
            await Task.Delay(pause, time, cancellation);
        }
        catch (OperationCanceledException) when (cancellation.IsCancellationRequested)
        {
            // The window is over; what called looks at it.
        }
    }
}
