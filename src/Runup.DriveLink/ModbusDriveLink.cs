using Runup.Commissioning.Entry;
using Runup.Modbus;
using Runup.Modbus.Identification;
using Runup.Profiles;

namespace Runup.DriveLink;

/// <summary>A drive on Modbus, in the terms of its profile.</summary>
/// <remarks>
/// When the connection is lost it stays lost. A value of 32 bits travels in one request, in the profile's word order.
/// Only a busy drive (exception 06) is asked again, and never with a command.
/// </remarks>
public sealed class ModbusDriveLink : IDriveLink
{
    private const int Attempts = 4;
    private static readonly TimeSpan BusyPause = TimeSpan.FromMilliseconds(100);
    private static readonly TimeSpan StoreTime = TimeSpan.FromSeconds(5);

    private readonly IModbusClient client;
    private readonly UnitId unit;
    private readonly DriveProfile profile;
    private readonly TimeProvider time;
    private readonly KnownValues known = new();
    private readonly StatusReading status;
    private readonly Commanding commanding;
    private readonly WritePatience patience;
    private readonly IReadOnlyList<Parameter> grounds;
    private readonly HashSet<string> asked = new(StringComparer.Ordinal);

    /// <summary>Makes a link on a connection, which it then owns.</summary>
    /// <param name="client">The connection.</param>
    /// <param name="unit">The drive's unit identifier.</param>
    /// <param name="profile">How it is spoken to.</param>
    /// <param name="time">The clock of the pauses.</param>
    /// <param name="description">What the link is, for people.</param>
    public ModbusDriveLink(IModbusClient client, UnitId unit, DriveProfile profile, TimeProvider time, string description)
    {
        ArgumentNullException.ThrowIfNull(profile);
        (this.client, this.unit, this.profile, this.time, Description) = (client, unit, profile, time, description);
        patience = new(time);
        grounds = ReadingCodec.StandOn(profile);
        status = new(client, unit, profile, known);
        commanding = new(client, unit, profile, known, status, time);
    }

    /// <inheritdoc/>
    public string Description { get; }

    /// <inheritdoc/>
    public async Task<LinkReply<string>> Identify(CancellationToken cancellation)
    {
        var outcome = await client.ReadIdentificationAsync(unit, ReadDeviceIdCode.Basic, cancellationToken: cancellation);
        return outcome.As(objects => string.Join(' ', objects.Select(o => o.Text.Trim())));
    }

    /// <inheritdoc/>
    public async Task<LinkReply<IReadOnlyDictionary<string, long>>> Read(IReadOnlyList<Parameter> parameters, CancellationToken cancellation)
    {
        var values = new Dictionary<string, long>(StringComparer.Ordinal);
        string? refusal = null;
        var batches = new Queue<RegisterBatch>(RegisterBatches.Of(parameters, profile));
        while (batches.TryDequeue(out var batch))
        {
            var outcome = await WhileBusy(() => patience.Heard(client.ReadHoldingRegistersAsync(unit, batch.Range, cancellationToken: cancellation)), cancellation);
            if (outcome is ModbusOutcome<RegisterValues>.Refused { Code: var code } && code == ExceptionCode.ServerDeviceBusy)
            {
                // It says nothing of these registers, and would say it of each of them.
                return new LinkReply<IReadOnlyDictionary<string, long>>.Unanswered($"the drive stays busy, exception {code}");
            }

            switch (outcome.As(words => words))
            {
                case LinkReply<RegisterValues>.Answered answered:
                    Take(batch, answered.Value, values);
                    break;
                case LinkReply<RegisterValues>.Refused refused:
                    // One register that the drive does not have spoils the whole request: each is asked for alone.
                    refusal = refused.Why;
                    foreach (var single in batch.Wanted.Count > 1 ? batch.Wanted : [])
                    {
                        batches.Enqueue(new(new RegisterRange(single.Register, single.RegisterCount), [single]));
                    }

                    break;
                case LinkReply<RegisterValues>.Unanswered lost:
                    return new LinkReply<IReadOnlyDictionary<string, long>>.Unanswered(lost.Why);
            }
        }

        return values.Count == 0 && refusal is not null
            ? new LinkReply<IReadOnlyDictionary<string, long>>.Refused(refusal)
            : new LinkReply<IReadOnlyDictionary<string, long>>.Answered(values);
    }

    /// <inheritdoc/>
    public async Task<LinkReply<Written>> Write(Parameter parameter, long raw, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(parameter);
        if (parameter.Access is not (ParameterAccess.AnyTime or ParameterAccess.StoppedOnly))
        {
            return new LinkReply<Written>.Refused($"{parameter} is not a value to be written");
        }

        known.Forget(parameter.Number);
        asked.Remove(parameter.Number);
        return await WriteWords(parameter, raw, null, cancellation);
    }

    /// <inheritdoc/>
    public async Task<LinkReply<Written>> Store(CancellationToken cancellation) =>
        profile.Store is { } store && profile.Find(store.Parameter) is { } parameter
            ? await WriteWords(parameter, store.Write, StoreTime, cancellation)
            : new LinkReply<Written>.Refused("the profile does not tell how the drive is told to keep its parameters");

    /// <inheritdoc/>
    public async Task<LinkReply<DriveStatus>> Status(CancellationToken cancellation)
    {
        // A reading that is a part of a parameter says nothing before that parameter was read: once, before the first round.
        var unknown = grounds.Where(p => known.Values[p.Number] is null && asked.Add(p.Number)).ToList();
        if (unknown.Count > 0 && await Read(unknown, cancellation) is LinkReply<IReadOnlyDictionary<string, long>>.Unanswered lost)
        {
            return new LinkReply<DriveStatus>.Unanswered(lost.Why);
        }

        return await status.Read(cancellation);
    }

    /// <inheritdoc/>
    public Task<LinkReply<Written>> Command(LinkCommand command, CancellationToken cancellation) => commanding.Send(command, cancellation);

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => client.DisposeAsync();

    // One register by function 6; a drive that speaks only function 16 says so with exception 01.
    private async Task<LinkReply<Written>> WriteWords(Parameter parameter, long raw, TimeSpan? timeout, CancellationToken cancellation)
    {
        var words = RegisterImage.Words(parameter, raw);
        var address = new RegisterAddress(parameter.Register);
        if (words is [var word])
        {
            var single = await WhileBusy(() => patience.Over(timeout, wait => client.WriteRegisterAsync(unit, address, word, wait, cancellation)), cancellation);
            if (single is not ModbusOutcome<RegisterRange>.Refused { Code: var code } || code != ExceptionCode.IllegalFunction)
            {
                return single.AsWritten();
            }
        }

        var several = await WhileBusy(() => patience.Over(timeout, wait => client.WriteRegistersAsync(unit, address, new RegisterValues(words), wait, cancellation)), cancellation);
        return several.AsWritten();
    }

    private void Take(RegisterBatch batch, RegisterValues words, Dictionary<string, long> values)
    {
        foreach (var parameter in batch.Wanted)
        {
            var raw = RegisterImage.Raw(parameter, words.AsSpan().Slice(parameter.Register - batch.Range.Start.Value, parameter.RegisterCount));
            values[parameter.Number] = raw;
            known.Take(parameter.Number, raw);
        }
    }

    private async Task<ModbusOutcome<T>> WhileBusy<T>(Func<Task<ModbusOutcome<T>>> ask, CancellationToken cancellation)
    {
        for (var attempt = 1; ; attempt++)
        {
            var outcome = await ask();
            if (attempt == Attempts || outcome is not ModbusOutcome<T>.Refused { Code: var code } || code != ExceptionCode.ServerDeviceBusy)
            {
                return outcome;
            }

            await Task.Delay(BusyPause, time, cancellation);
        }
    }
}
