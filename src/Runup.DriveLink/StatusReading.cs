using Runup.Commissioning.Entry;
using Runup.Modbus;
using Runup.Profiles;
using Runup.Settings;

namespace Runup.DriveLink;

/// <summary>State and readings, in as few requests as the registers allow: one where they adjoin.</summary>
internal sealed class StatusReading
{
    private readonly IModbusClient client;
    private readonly UnitId unit;
    private readonly DriveProfile profile;
    private readonly KnownValues known;
    private IReadOnlyList<RegisterBatch> batches;

    public StatusReading(IModbusClient client, UnitId unit, DriveProfile profile, KnownValues known)
    {
        (this.client, this.unit, this.profile, this.known) = (client, unit, profile, known);
        IEnumerable<Parameter> state = profile.Command is { } command ? [command.Status] : [];
        batches = RegisterBatches.Of(state.Concat(profile.Readings.Select(r => r.Parameter)), profile);
    }

    public async Task<LinkReply<DriveStatus>> Read(CancellationToken cancellation)
    {
        var raw = new Dictionary<string, long>(StringComparer.Ordinal);
        for (var i = 0; i < batches.Count; i++)
        {
            var batch = batches[i];
            switch ((await client.ReadHoldingRegistersAsync(unit, batch.Range, cancellationToken: cancellation)).As(words => words))
            {
                case LinkReply<RegisterValues>.Answered answered:
                    foreach (var parameter in batch.Wanted)
                    {
                        raw[parameter.Number] = RegisterImage.Raw(parameter, answered.Value.AsSpan().Slice(parameter.Register - batch.Range.Start.Value, parameter.RegisterCount));
                    }

                    break;
                case LinkReply<RegisterValues>.Refused when batch.Wanted.Count > 1:
                    // Something in between is not there: from now on each is asked for alone.
                    batches = [.. batches.Take(i), .. batch.Wanted.Select(p => new RegisterBatch(new RegisterRange(p.Register, p.RegisterCount), [p])), .. batches.Skip(i + 1)];
                    i--;
                    break;
                case LinkReply<RegisterValues>.Refused refused when batch.Wanted[0] == profile.Command?.Status:
                    return new LinkReply<DriveStatus>.Refused(refused.Why);
                case LinkReply<RegisterValues>.Unanswered lost:
                    return new LinkReply<DriveStatus>.Unanswered(lost.Why);
            }
        }

        return Decode(raw);
    }

    private LinkReply<DriveStatus> Decode(Dictionary<string, long> raw)
    {
        var readings = ReadingCodec.Decode(profile, known.Values, p => raw.TryGetValue(p.Number, out var value) ? value : null);
        var word = profile.Command is { } command && raw.TryGetValue(command.Status.Number, out var bits) ? new StatusWord((ushort)bits) : (StatusWord?)null;
        if ((word is { } w ? w.State : readings.State) is not { } state)
        {
            return new LinkReply<DriveStatus>.Refused(word is { } unknown ? $"the status word {unknown} follows no pattern of IEC 61800-7-201" : "the drive tells no state");
        }

        var live = state is PowerState.OperationEnabled or PowerState.QuickStopActive or PowerState.FaultReactionActive;
        return new LinkReply<DriveStatus>.Answered(new DriveStatus
        {
            State = state,
            Running = live || readings.OutputFrequency?.Hertz > 0,
            Trip = readings.LastTrip ?? TripCause.None,
            OutputFrequencyHz = readings.OutputFrequency?.Hertz,
            OutputCurrentA = readings.OutputCurrent?.Amperes,
            DcBusV = readings.DcBus?.Volts,
            OutputVoltageV = readings.OutputVoltage?.Volts,
            TorquePercent = readings.Torque?.Percent,
            SpeedRpm = readings.Speed?.Rpm,
        });
    }
}
