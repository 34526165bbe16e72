using Runup.Commissioning.Entry;
using Runup.Modbus;
using Runup.Profiles;
using Runup.Quantities;

namespace Runup.DriveLink;

/// <summary>Commands as control word and reference.</summary>
/// <remarks>No word that it sends has the fault-reset bit: a trip is a person's to reset.</remarks>
internal sealed class Commanding(IModbusClient client, UnitId unit, DriveProfile profile, KnownValues known, StatusReading status, TimeProvider time)
{
    private static readonly TimeSpan Pace = TimeSpan.FromMilliseconds(50);
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);

    // The direction stays while the motor is stopped from it.
    private Rotation rotation = Rotation.Forward;

    public async Task<LinkReply<Written>> Send(LinkCommand command, CancellationToken cancellation)
    {
        if (profile.Command is not { } registers)
        {
            return new LinkReply<Written>.Refused("the profile does not tell how the drive is commanded");
        }

        switch (command)
        {
            case LinkCommand.Prepare:
                return await Prepare(registers, cancellation);
            case LinkCommand.Run run:
                rotation = run.FrequencyHz < 0 ? Rotation.Reverse : Rotation.Forward;
                return await Send(registers, ControlWord.EnableOperation, Math.Abs(run.FrequencyHz), cancellation);
            case LinkCommand.Stop:
                return await Send(registers, ControlWord.SwitchOn, 0, cancellation);
            case LinkCommand.Coast:
                return await Send(registers, ControlWord.DisableVoltage, 0, cancellation);
            default:
                throw new InvalidOperationException("The set of commands is closed.");
        }
    }

    // State by state to switched on. A drive that stands still in between does not follow the command word.
    private async Task<LinkReply<Written>> Prepare(CommandInterface registers, CancellationToken cancellation)
    {
        var from = time.GetTimestamp();
        while (true)
        {
            switch (await status.Read(cancellation))
            {
                case LinkReply<DriveStatus>.Refused refused:
                    return new LinkReply<Written>.Refused(refused.Why);
                case LinkReply<DriveStatus>.Unanswered lost:
                    return new LinkReply<Written>.Unanswered(lost.Why);
                case LinkReply<DriveStatus>.Answered { Value.State: PowerState.SwitchedOn }:
                    return new LinkReply<Written>.Answered(default);
                case LinkReply<DriveStatus>.Answered { Value.State: PowerState.Fault or PowerState.FaultReactionActive }:
                    return new LinkReply<Written>.Refused("the drive is tripped; a person resets it at the drive");
                case LinkReply<DriveStatus>.Answered { Value.State: PowerState.OperationEnabled }:
                    return new LinkReply<Written>.Refused("operation is enabled already: another master commands the drive");
                case LinkReply<DriveStatus>.Answered { Value.State: var state } when time.GetElapsedTime(from) > Patience:
                    return new LinkReply<Written>.Refused($"the drive stays in {state}: it does not follow the command word");
                case LinkReply<DriveStatus>.Answered { Value.State: var state }:
                    if (PowerMachine.TowardOperation(state) is { } word && await Send(registers, word, 0, cancellation) is not LinkReply<Written>.Answered and var failed)
                    {
                        return failed;
                    }

                    break;
            }

            await Task.Delay(Pace, time, cancellation);
        }
    }

    private async Task<LinkReply<Written>> Send(CommandInterface registers, ControlWord word, double hertz, CancellationToken cancellation)
    {
        var asked = new DriveCommand(word, ElectricalFrequency.FromHertz(hertz), rotation);
        return CommandRequests.Of(profile, registers, asked, known.Values) is { } requests
            ? await Write(requests, cancellation)
            : new LinkReply<Written>.Refused($"{hertz:0.##} Hz can't be told to this drive: read its parameters first");
    }

    // In order; what follows a request that was not answered is not sent.
    private async Task<LinkReply<Written>> Write(IReadOnlyList<RegisterWords> requests, CancellationToken cancellation)
    {
        LinkReply<Written> reply = new LinkReply<Written>.Answered(default);
        foreach (var request in requests)
        {
            reply = (await Write(request, cancellation)).AsWritten();
            if (reply is not LinkReply<Written>.Answered)
            {
                break;
            }
        }

        return reply;
    }

    private Task<ModbusOutcome<RegisterRange>> Write(RegisterWords request, CancellationToken cancellation) =>
        request.Words is [var single]
            ? client.WriteRegisterAsync(unit, new RegisterAddress(request.Register), single, cancellationToken: cancellation)
            : client.WriteRegistersAsync(unit, new RegisterAddress(request.Register), new RegisterValues([.. request.Words]), cancellationToken: cancellation);
}
