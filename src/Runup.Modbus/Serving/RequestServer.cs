using Runup.Modbus.Identification;
using Runup.Modbus.Requests;

namespace Runup.Modbus.Serving;

/// <summary>From the PDU of a request to the PDU of its reply, whatever carries them. Allocates nothing.</summary>
/// <param name="routing">Who answers for which unit.</param>
/// <param name="deviceFailed">Told when a device throws; the client gets exception 4.</param>
public sealed class RequestServer(UnitRouting routing, Action<Exception>? deviceFailed = null)
{
    /// <summary>What the device threw last, or null: a device should answer, not throw.</summary>
    public Exception? DeviceFailure { get; private set; }

    /// <summary>Carries a request out.</summary>
    /// <param name="unit">Who is asked.</param>
    /// <param name="request">Function code and data, exactly as long as the frame says; any bytes.</param>
    /// <param name="reply">At least <see cref="ModbusLimits.PduLength"/> bytes.</param>
    /// <returns>The reply's length; 0 for silence.</returns>
    public int Answer(UnitId unit, ReadOnlySpan<byte> request, Span<byte> reply)
    {
        if (request.IsEmpty)
        {
            return 0;
        }

        if (routing.For(unit) is not { } device)
        {
            return routing.Unknown == UnknownUnit.Silence
                ? 0
                : ReplyEncoder.Refusal(reply, request[0], ExceptionCode.GatewayTargetDeviceFailedToRespond);
        }

        var asked = RequestDecoder.Decode(request);
        if (asked.Refusal is { } refusal)
        {
            return ReplyEncoder.Refusal(reply, asked.FunctionByte, refusal);
        }

        try
        {
            return CarryOut(device, asked, reply);
        }
        catch (Exception failure) when (failure is not OutOfMemoryException)
        {
            Report(failure);
            return ReplyEncoder.Refusal(reply, asked.FunctionByte, ExceptionCode.ServerDeviceFailure);
        }
    }

    internal void Report(Exception failure)
    {
        DeviceFailure = failure;
        deviceFailed?.Invoke(failure);
    }

    private static int CarryOut(IModbusDevice device, ReceivedRequest asked, Span<byte> reply) => asked.Function switch
    {
        FunctionCode.ReadHoldingRegisters or FunctionCode.ReadInputRegisters or FunctionCode.ReadWriteMultipleRegisters => Read(device, asked, reply),
        FunctionCode.WriteSingleRegister or FunctionCode.WriteMultipleRegisters => Write(device, asked, reply),
        FunctionCode.EncapsulatedInterface => Identify(device.Identification, asked, reply),
        _ => throw new InvalidOperationException("The decoder accepts no other function."),
    };

    private static int Read(IModbusDevice device, ReceivedRequest asked, Span<byte> reply)
    {
        Span<ushort> values = stackalloc ushort[ModbusLimits.ReadCount];
        values = values[..asked.Read.Count];
        DeviceAnswer answer;
        if (asked.Function == FunctionCode.ReadWriteMultipleRegisters)
        {
            Span<ushort> written = stackalloc ushort[ModbusLimits.ReadWriteWriteCount];
            written = written[..asked.Write.Count];
            WireWords.Read(asked.WrittenBytes, written);
            answer = device.ReadWriteRegisters(asked.Read, values, asked.Write, written);
        }
        else
        {
            answer = asked.Function == FunctionCode.ReadHoldingRegisters
                ? device.ReadHoldingRegisters(asked.Read, values)
                : device.ReadInputRegisters(asked.Read, values);
        }

        return Unless(answer, asked, reply) ?? ReplyEncoder.Registers(reply, asked.Function, values);
    }

    private static int Write(IModbusDevice device, ReceivedRequest asked, Span<byte> reply)
    {
        Span<ushort> written = stackalloc ushort[ModbusLimits.WriteCount];
        written = written[..asked.Write.Count];
        WireWords.Read(asked.WrittenBytes, written);
        if (asked.Function == FunctionCode.WriteSingleRegister)
        {
            return Unless(device.WriteRegister(asked.Write.Start, written[0]), asked, reply)
                ?? ReplyEncoder.Echo(reply, asked.Function, asked.Write.Start, written[0]);
        }

        return Unless(device.WriteRegisters(asked.Write, written), asked, reply)
            ?? ReplyEncoder.Echo(reply, asked.Function, asked.Write.Start, (ushort)asked.Write.Count);
    }

    private static int Identify(DeviceIdentification? identification, ReceivedRequest asked, Span<byte> reply)
    {
        if (identification is null)
        {
            return ReplyEncoder.Refusal(reply, asked.FunctionByte, ExceptionCode.IllegalFunction);
        }

        if (asked.IdentificationCode == ReadDeviceIdCode.Individual && !identification.Has(asked.IdentificationObject))
        {
            return ReplyEncoder.Refusal(reply, asked.FunctionByte, ExceptionCode.IllegalDataAddress);
        }

        return identification.Encode(asked.IdentificationCode, asked.IdentificationObject, reply);
    }

    private static int? Unless(DeviceAnswer answer, ReceivedRequest asked, Span<byte> reply)
    {
        if (answer.IsSilent)
        {
            return 0;
        }

        return answer.Refusal is { } code ? ReplyEncoder.Refusal(reply, asked.FunctionByte, code) : null;
    }
}
