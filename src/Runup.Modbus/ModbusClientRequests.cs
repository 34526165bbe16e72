using System.Collections.Immutable;
using Runup.Modbus.Identification;
using Runup.Modbus.Replies;
using Runup.Modbus.Requests;

namespace Runup.Modbus;

/// <summary>The requests by name, on any link.</summary>
public static class ModbusClientRequests
{
    /// <summary>Function 3.</summary>
    /// <param name="client">The link.</param>
    /// <param name="unit">Who is asked.</param>
    /// <param name="range">At most <see cref="ModbusLimits.ReadCount"/> registers.</param>
    /// <param name="timeout">Null for the link's own.</param>
    /// <param name="cancellationToken">Gives up waiting.</param>
    public static Task<ModbusOutcome<RegisterValues>> ReadHoldingRegistersAsync(
        this IModbusClient client, UnitId unit, RegisterRange range, TimeSpan? timeout = null, CancellationToken cancellationToken = default) =>
        RegistersAsync(client, unit, new ModbusRequest.ReadHoldingRegisters(range), timeout, cancellationToken);

    /// <summary>Function 4.</summary>
    /// <param name="client">The link.</param>
    /// <param name="unit">Who is asked.</param>
    /// <param name="range">At most <see cref="ModbusLimits.ReadCount"/> registers.</param>
    /// <param name="timeout">Null for the link's own.</param>
    /// <param name="cancellationToken">Gives up waiting.</param>
    public static Task<ModbusOutcome<RegisterValues>> ReadInputRegistersAsync(
        this IModbusClient client, UnitId unit, RegisterRange range, TimeSpan? timeout = null, CancellationToken cancellationToken = default) =>
        RegistersAsync(client, unit, new ModbusRequest.ReadInputRegisters(range), timeout, cancellationToken);

    /// <summary>Function 6.</summary>
    /// <param name="client">The link.</param>
    /// <param name="unit">Who is asked.</param>
    /// <param name="address">The register.</param>
    /// <param name="value">What to write.</param>
    /// <param name="timeout">Null for the link's own.</param>
    /// <param name="cancellationToken">Gives up waiting.</param>
    public static Task<ModbusOutcome<RegisterRange>> WriteRegisterAsync(
        this IModbusClient client, UnitId unit, RegisterAddress address, ushort value, TimeSpan? timeout = null, CancellationToken cancellationToken = default) =>
        WrittenAsync(client, unit, new ModbusRequest.WriteSingleRegister(address, value), timeout, cancellationToken);

    /// <summary>Function 16.</summary>
    /// <param name="client">The link.</param>
    /// <param name="unit">Who is asked.</param>
    /// <param name="start">The lowest address.</param>
    /// <param name="values">At most <see cref="ModbusLimits.WriteCount"/> words.</param>
    /// <param name="timeout">Null for the link's own.</param>
    /// <param name="cancellationToken">Gives up waiting.</param>
    public static Task<ModbusOutcome<RegisterRange>> WriteRegistersAsync(
        this IModbusClient client, UnitId unit, RegisterAddress start, RegisterValues values, TimeSpan? timeout = null, CancellationToken cancellationToken = default) =>
        WrittenAsync(client, unit, new ModbusRequest.WriteMultipleRegisters(start, values), timeout, cancellationToken);

    /// <summary>Function 23: the write is done first, then the read.</summary>
    /// <param name="client">The link.</param>
    /// <param name="unit">Who is asked.</param>
    /// <param name="read">At most <see cref="ModbusLimits.ReadCount"/> registers.</param>
    /// <param name="writeStart">The lowest address written.</param>
    /// <param name="values">At most <see cref="ModbusLimits.ReadWriteWriteCount"/> words.</param>
    /// <param name="timeout">Null for the link's own.</param>
    /// <param name="cancellationToken">Gives up waiting.</param>
    public static Task<ModbusOutcome<RegisterValues>> ReadWriteRegistersAsync(
        this IModbusClient client, UnitId unit, RegisterRange read, RegisterAddress writeStart, RegisterValues values, TimeSpan? timeout = null, CancellationToken cancellationToken = default) =>
        RegistersAsync(client, unit, new ModbusRequest.ReadWriteMultipleRegisters(read, writeStart, values), timeout, cancellationToken);

    /// <summary>Function 43/14 for one object.</summary>
    /// <param name="client">The link.</param>
    /// <param name="unit">Who is asked.</param>
    /// <param name="objectId">The object.</param>
    /// <param name="timeout">Null for the link's own.</param>
    /// <param name="cancellationToken">Gives up waiting.</param>
    public static async Task<ModbusOutcome<IdentificationObject>> ReadIdentificationObjectAsync(
        this IModbusClient client, UnitId unit, IdentificationObjectId objectId, TimeSpan? timeout = null, CancellationToken cancellationToken = default)
    {
        var page = await PageAsync(client, unit, new ModbusRequest.ReadDeviceIdentification(ReadDeviceIdCode.Individual, objectId), timeout, cancellationToken);
        return page.Map(one => one.Objects[0]);
    }

    /// <summary>Function 43/14 as a stream: asks on until the server says that nothing follows. A server whose stream does not advance is malformed.</summary>
    /// <param name="client">The link.</param>
    /// <param name="unit">Who is asked.</param>
    /// <param name="category">Basic, regular or extended; a server with less answers with what it has.</param>
    /// <param name="timeout">For each request; null for the link's own.</param>
    /// <param name="cancellationToken">Gives up waiting.</param>
    public static async Task<ModbusOutcome<IReadOnlyList<IdentificationObject>>> ReadIdentificationAsync(
        this IModbusClient client, UnitId unit, ReadDeviceIdCode category, TimeSpan? timeout = null, CancellationToken cancellationToken = default)
    {
        if (category is < ReadDeviceIdCode.Basic or > ReadDeviceIdCode.Extended)
        {
            throw new ArgumentOutOfRangeException(nameof(category));
        }

        var objects = ImmutableArray.CreateBuilder<IdentificationObject>();
        IdentificationObjectId? next = IdentificationObjectId.VendorName;
        while (next is { } from)
        {
            var outcome = await PageAsync(client, unit, new ModbusRequest.ReadDeviceIdentification(category, from), timeout, cancellationToken);
            if (outcome is not ModbusOutcome<IdentificationPage>.Answered(var page))
            {
                return outcome.Map<IReadOnlyList<IdentificationObject>>(_ => objects.ToImmutable());
            }

            if (objects.Count > 0 && page.Objects[0].Id.Value <= objects[^1].Id.Value)
            {
                return new ModbusOutcome<IReadOnlyList<IdentificationObject>>.Malformed(ReplyFault.WrongObjects);
            }

            objects.AddRange(page.Objects);
            next = page.Next;
        }

        return new ModbusOutcome<IReadOnlyList<IdentificationObject>>.Answered(objects.ToImmutable());
    }

    private static async Task<ModbusOutcome<RegisterValues>> RegistersAsync(
        IModbusClient client, UnitId unit, ModbusRequest request, TimeSpan? timeout, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(client);
        var outcome = await client.SendAsync(unit, request, timeout, cancellationToken);
        return outcome.Map(reply => ((ModbusReply.Registers)reply).Values);
    }

    private static async Task<ModbusOutcome<RegisterRange>> WrittenAsync(
        IModbusClient client, UnitId unit, ModbusRequest request, TimeSpan? timeout, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(client);
        var outcome = await client.SendAsync(unit, request, timeout, cancellationToken);
        return outcome.Map(reply => ((ModbusReply.Written)reply).Range);
    }

    private static async Task<ModbusOutcome<IdentificationPage>> PageAsync(
        IModbusClient client, UnitId unit, ModbusRequest request, TimeSpan? timeout, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(client);
        var outcome = await client.SendAsync(unit, request, timeout, cancellationToken);
        return outcome.Map(reply => ((ModbusReply.Identification)reply).Page);
    }
}
