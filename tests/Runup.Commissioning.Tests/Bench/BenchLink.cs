using Runup.Commissioning.Entry;
using Runup.Profiles;

namespace Runup.Commissioning.Tests.Bench;

/// <summary>What is done on a link, for scripts.</summary>
/// <param name="Kind">identify, read, write, store, status or command.</param>
/// <param name="What">The parameter or command, or empty.</param>
/// <param name="Raw">The value of a write.</param>
internal sealed record BenchOp(string Kind, string What = "", long Raw = 0);

/// <summary>What goes wrong with an exchange.</summary>
internal enum Mishap
{
    None,
    RequestLost,
    ReplyLost,
    Refused,
    CablePulled,
}

/// <summary>A link to the bench drive, with a script of mishaps and a log of what was sent when.</summary>
internal sealed class BenchLink(BenchDrive drive, TimeProvider time) : IDriveLink
{
    internal List<(TimeSpan At, BenchOp Op)> Log { get; init; } = [];

    internal Func<BenchOp, Mishap> Script { get; set; } = _ => Mishap.None;

    /// <summary>Called before and after each exchange: a test that cuts the runner off throws here.</summary>
    internal Action? Cut { get; set; }

    internal TimeSpan Latency { get; set; }

    internal bool Dead { get; set; }

    public string Description => "bench";

    public Task<LinkReply<string>> Identify(CancellationToken cancellation) => Exchange(new("identify"), () => new LinkReply<string>.Answered(drive.Identity), cancellation);

    public Task<LinkReply<IReadOnlyDictionary<string, long>>> Read(IReadOnlyList<Parameter> parameters, CancellationToken cancellation) =>
        Exchange<IReadOnlyDictionary<string, long>>(new("read", parameters.Count == 1 ? parameters[0].Number : ""), () =>
        {
            var given = parameters.Where(p => !drive.RefusesToRead.Contains(p.Number)).ToDictionary(p => p.Number, p => drive.Held[p.Number]!.Value, StringComparer.Ordinal);
            return given.Count == 0 ? new LinkReply<IReadOnlyDictionary<string, long>>.Refused("exception 02") : new LinkReply<IReadOnlyDictionary<string, long>>.Answered(given);
        }, cancellation);

    public Task<LinkReply<Written>> Write(Parameter parameter, long raw, CancellationToken cancellation) =>
        Exchange<Written>(new("write", parameter.Number, raw), () =>
        {
            if (drive.RefusesToWrite.Contains(parameter.Number) || !parameter.Accepts(raw, BenchMake.Size))
            {
                return new LinkReply<Written>.Refused("exception 03");
            }

            // Its display rounds the last of a ramp to nothing; the drive itself is not done before.
            if (drive.Hertz != 0 && parameter.Access != ParameterAccess.AnyTime)
            {
                return new LinkReply<Written>.Refused("exception 04");
            }

            drive.Write(parameter.Number, raw);
            return new LinkReply<Written>.Answered(default);
        }, cancellation);

    public Task<LinkReply<Written>> Store(CancellationToken cancellation) => Exchange<Written>(new("store"), () =>
    {
        drive.Store();
        return new LinkReply<Written>.Answered(default);
    }, cancellation);

    public Task<LinkReply<DriveStatus>> Status(CancellationToken cancellation) => Exchange<DriveStatus>(new("status"), () =>
    {
        var r = drive.Readings();
        return new LinkReply<DriveStatus>.Answered(new()
        {
            State = drive.State,
            Running = drive.State is PowerState.OperationEnabled or PowerState.QuickStopActive or PowerState.FaultReactionActive || r.OutputFrequency!.Value.Hertz > 0,
            Trip = drive.Trip,
            OutputFrequencyHz = r.OutputFrequency!.Value.Hertz,
            OutputCurrentA = r.OutputCurrent!.Value.Amperes,
            DcBusV = r.DcBus!.Value.Volts,
            OutputVoltageV = r.OutputVoltage!.Value.Volts,
            TorquePercent = r.Torque!.Value.Percent,
            SpeedRpm = r.Speed!.Value.Rpm,
        });
    }, cancellation);

    public Task<LinkReply<Written>> Command(LinkCommand command, CancellationToken cancellation) =>
        Exchange<Written>(new("command", command.GetType().Name, command is LinkCommand.Run r ? (long)Math.Round(r.FrequencyHz * 100) : 0), () =>
        {
            switch (command)
            {
                case LinkCommand.Prepare:
                    for (var i = 0; i < 2 && drive.State is (PowerState.SwitchOnDisabled or PowerState.ReadyToSwitchOn); i++)
                    {
                        drive.TakeWord(PowerMachine.TowardOperation(drive.State)!.Value, 0);
                    }

                    return drive.State == PowerState.SwitchedOn ? new LinkReply<Written>.Answered(default) : new LinkReply<Written>.Refused($"it stays in {drive.State}");
                case LinkCommand.Run run:
                    drive.TakeWord(ControlWord.EnableOperation.With(11, run.FrequencyHz < 0), Math.Abs(run.FrequencyHz));
                    break;
                case LinkCommand.Stop:
                    drive.TakeWord(ControlWord.SwitchOn, 0);
                    break;
                case LinkCommand.Coast:
                    drive.TakeWord(ControlWord.DisableVoltage, 0);
                    break;
            }

            return new LinkReply<Written>.Answered(default);
        }, cancellation);

    public ValueTask DisposeAsync()
    {
        Dead = true;
        return ValueTask.CompletedTask;
    }

    private async Task<LinkReply<T>> Exchange<T>(BenchOp op, Func<LinkReply<T>> answer, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        Cut?.Invoke();
        drive.Pass();
        Log.Add((drive.Now, op));
        var mishap = Dead ? Mishap.CablePulled : Script(op);
        if (Latency > TimeSpan.Zero)
        {
            await Task.Delay(Latency, time, cancellation);
        }

        Dead |= mishap == Mishap.CablePulled;
        if (mishap is Mishap.RequestLost or Mishap.CablePulled)
        {
            return await Silence<T>(cancellation);
        }

        drive.Frame();
        var reply = mishap == Mishap.Refused ? new LinkReply<T>.Refused("exception 04") : answer();
        Cut?.Invoke();
        return mishap == Mishap.ReplyLost ? await Silence<T>(cancellation) : reply;
    }

    private async Task<LinkReply<T>> Silence<T>(CancellationToken cancellation)
    {
        if (!Dead)
        {
            await Task.Delay(TimeSpan.FromSeconds(1), time, cancellation);
        }

        return new LinkReply<T>.Unanswered(Dead ? "connection lost" : "no answer within 1 s");
    }
}
