using Runup.Modbus.Identification;

namespace Runup.Modbus.Requests;

/// <summary>
/// What a server makes of the bytes of a request: one of the functions it speaks, with lengths and addresses that agree, or the refusal the specification prescribes.
/// A view on the receive buffer without a copy; made only by <see cref="RequestDecoder"/>.
/// </summary>
public readonly ref struct ReceivedRequest
{
    private ReceivedRequest(byte functionByte, FunctionCode function, ExceptionCode? refusal)
    {
        FunctionByte = functionByte;
        Function = function;
        Refusal = refusal;
    }

    /// <summary>The function code as it came, also one that is not spoken here.</summary>
    public byte FunctionByte { get; }

    /// <summary>The function asked for; <see cref="FunctionCode.None"/> when refused.</summary>
    public FunctionCode Function { get; }

    /// <summary>The exception to answer with, or null when the request is acceptable.</summary>
    public ExceptionCode? Refusal { get; }

    /// <summary>The registers to read: functions 3, 4 and 23.</summary>
    public RegisterRange Read { get; private init; }

    /// <summary>The registers to write: functions 6, 16 and 23.</summary>
    public RegisterRange Write { get; private init; }

    /// <summary>The words to write as they came, high byte first; always two bytes for each register of <see cref="Write"/>.</summary>
    public ReadOnlySpan<byte> WrittenBytes { get; private init; }

    /// <summary>How much identification is asked for: function 43.</summary>
    public ReadDeviceIdCode IdentificationCode { get; private init; }

    /// <summary>The identification object asked for: function 43.</summary>
    public IdentificationObjectId IdentificationObject { get; private init; }

    /// <summary>A copy that outlives the buffer, or null when the request is refused.</summary>
    public ModbusRequest? Detach() => Function switch
    {
        FunctionCode.ReadHoldingRegisters => new ModbusRequest.ReadHoldingRegisters(Read),
        FunctionCode.ReadInputRegisters => new ModbusRequest.ReadInputRegisters(Read),
        FunctionCode.WriteSingleRegister => new ModbusRequest.WriteSingleRegister(Write.Start, RegisterValues.FromWire(WrittenBytes)[0]),
        FunctionCode.WriteMultipleRegisters => new ModbusRequest.WriteMultipleRegisters(Write.Start, RegisterValues.FromWire(WrittenBytes)),
        FunctionCode.ReadWriteMultipleRegisters => new ModbusRequest.ReadWriteMultipleRegisters(Read, Write.Start, RegisterValues.FromWire(WrittenBytes)),
        FunctionCode.EncapsulatedInterface => new ModbusRequest.ReadDeviceIdentification(IdentificationCode, IdentificationObject),
        _ => null,
    };

    internal static ReceivedRequest Refused(byte functionByte, ExceptionCode refusal) => new(functionByte, FunctionCode.None, refusal);

    internal static ReceivedRequest Reads(FunctionCode function, RegisterRange read) =>
        new((byte)function, function, null) { Read = read };

    internal static ReceivedRequest WritesRegisters(FunctionCode function, RegisterRange write, ReadOnlySpan<byte> bytes) =>
        new((byte)function, function, null) { Write = write, WrittenBytes = bytes };

    internal static ReceivedRequest ReadsAndWrites(RegisterRange read, RegisterRange write, ReadOnlySpan<byte> bytes) =>
        new((byte)FunctionCode.ReadWriteMultipleRegisters, FunctionCode.ReadWriteMultipleRegisters, null)
        {
            Read = read,
            Write = write,
            WrittenBytes = bytes,
        };

    internal static ReceivedRequest Identifies(ReadDeviceIdCode code, IdentificationObjectId objectId) =>
        new((byte)FunctionCode.EncapsulatedInterface, FunctionCode.EncapsulatedInterface, null)
        {
            IdentificationCode = code,
            IdentificationObject = objectId,
        };
}
