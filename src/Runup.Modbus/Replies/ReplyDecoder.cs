using System.Buffers.Binary;
using System.Collections.Immutable;
using Runup.Modbus.Identification;
using Runup.Modbus.Requests;

namespace Runup.Modbus.Replies;

/// <summary>
/// Reads the PDU of a reply against the request it should answer. Total: any bytes give one of three cases, never an exception.
/// Each length is held against every other: the PDU's own, the byte counts in it, and what was asked for.
/// </summary>
public static class ReplyDecoder
{
    private const byte ExceptionFlag = 0x80;
    private const int IdentificationHead = 7;

    /// <summary>Reads a PDU.</summary>
    /// <param name="pdu">Function code and data, exactly as long as the frame says.</param>
    /// <param name="asked">The request it should answer.</param>
    public static ReplyDecoding Decode(ReadOnlySpan<byte> pdu, ModbusRequest asked)
    {
        ArgumentNullException.ThrowIfNull(asked);
        if (pdu.IsEmpty)
        {
            return No(ReplyFault.Empty);
        }

        if (pdu[0] == ((byte)asked.Function | ExceptionFlag))
        {
            return pdu.Length == 2 ? new ReplyDecoding.Refused(new ExceptionCode(pdu[1])) : No(ReplyFault.WrongLength);
        }

        if (pdu[0] != (byte)asked.Function)
        {
            return No(ReplyFault.OtherFunction);
        }

        return asked switch
        {
            ModbusRequest.ReadHoldingRegisters read => DecodeRegisters(pdu, read.Range.Count),
            ModbusRequest.ReadInputRegisters read => DecodeRegisters(pdu, read.Range.Count),
            ModbusRequest.ReadWriteMultipleRegisters both => DecodeRegisters(pdu, both.Read.Count),
            ModbusRequest.WriteSingleRegister write => DecodeEcho(pdu, write.Address.Value, write.Value, new RegisterRange(write.Address, 1)),
            ModbusRequest.WriteMultipleRegisters write => DecodeEcho(pdu, write.Range.Start.Value, (ushort)write.Range.Count, write.Range),
            ModbusRequest.ReadDeviceIdentification identify => DecodeIdentification(pdu, identify),
            _ => throw new ArgumentOutOfRangeException(nameof(asked)),
        };
    }

    private static ReplyDecoding DecodeRegisters(ReadOnlySpan<byte> pdu, int count)
    {
        if (pdu.Length < 2)
        {
            return No(ReplyFault.WrongLength);
        }

        if (pdu[1] != count * 2)
        {
            return No(ReplyFault.WrongByteCount);
        }

        return pdu.Length == 2 + (count * 2)
            ? new ReplyDecoding.Answered(new ModbusReply.Registers(RegisterValues.FromWire(pdu[2..])))
            : No(ReplyFault.WrongLength);
    }

    private static ReplyDecoding DecodeEcho(ReadOnlySpan<byte> pdu, ushort first, ushort second, RegisterRange written)
    {
        if (pdu.Length != 5)
        {
            return No(ReplyFault.WrongLength);
        }

        return BinaryPrimitives.ReadUInt16BigEndian(pdu[1..]) == first && BinaryPrimitives.ReadUInt16BigEndian(pdu[3..]) == second
            ? new ReplyDecoding.Answered(new ModbusReply.Written(written))
            : No(ReplyFault.WrongEcho);
    }

    private static ReplyDecoding DecodeIdentification(ReadOnlySpan<byte> pdu, ModbusRequest.ReadDeviceIdentification asked)
    {
        if (pdu.Length < IdentificationHead)
        {
            return No(ReplyFault.WrongLength);
        }

        if (pdu[1] != MeiType.ReadDeviceIdentification || pdu[2] != (byte)asked.Code)
        {
            return No(ReplyFault.WrongEcho);
        }

        if (pdu[4] is not (0x00 or 0xFF))
        {
            return No(ReplyFault.WrongObjects);
        }

        var count = pdu[6];
        var objects = ImmutableArray.CreateBuilder<IdentificationObject>(count);
        var rest = pdu[IdentificationHead..];
        for (var i = 0; i < count; i++)
        {
            if (rest.Length < 2 || rest.Length - 2 < rest[1])
            {
                return No(ReplyFault.WrongLength);
            }

            objects.Add(new IdentificationObject(new IdentificationObjectId(rest[0]), [.. rest.Slice(2, rest[1])]));
            rest = rest[(2 + rest[1])..];
        }

        if (!rest.IsEmpty)
        {
            return No(ReplyFault.WrongLength);
        }

        IdentificationObjectId? next = pdu[4] == 0xFF ? new IdentificationObjectId(pdu[5]) : null;
        return ObjectsAgree(objects, next, asked)
            ? new ReplyDecoding.Answered(new ModbusReply.Identification(
                new IdentificationPage(asked.Code, new ConformityLevel(pdu[3]), next, objects.MoveToImmutable())))
            : No(ReplyFault.WrongObjects);
    }

    // One object when one was asked for; otherwise ascending, and what follows lies beyond, so that reading on must end.
    private static bool ObjectsAgree(
        ImmutableArray<IdentificationObject>.Builder objects, IdentificationObjectId? next, ModbusRequest.ReadDeviceIdentification asked)
    {
        if (asked.Code == ReadDeviceIdCode.Individual)
        {
            return objects.Count == 1 && objects[0].Id == asked.ObjectId && next is null;
        }

        for (var i = 1; i < objects.Count; i++)
        {
            if (objects[i].Id.Value <= objects[i - 1].Id.Value)
            {
                return false;
            }
        }

        return objects.Count > 0 && (next is null || next.Value.Value > objects[^1].Id.Value);
    }

    private static ReplyDecoding.NotAnAnswer No(ReplyFault fault) => new(fault);
}
