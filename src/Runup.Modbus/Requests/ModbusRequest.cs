using System.Buffers.Binary;
using Runup.Modbus.Identification;

namespace Runup.Modbus.Requests;

/// <summary>A request as a client asks it; a closed set, each valid by construction.</summary>
public abstract record ModbusRequest
{
    private ModbusRequest()
    {
    }

    /// <summary>The function code.</summary>
    public abstract FunctionCode Function { get; }

    /// <summary>Whether the server may hold something else after it than before.</summary>
    public abstract bool Writes { get; }

    /// <summary>Writes function code and data.</summary>
    /// <param name="pdu">At least <see cref="ModbusLimits.PduLength"/> bytes.</param>
    /// <returns>The length in bytes.</returns>
    public abstract int Encode(Span<byte> pdu);

    /// <summary>Function 3.</summary>
    public sealed record ReadHoldingRegisters : ModbusRequest
    {
        /// <summary>Asks for holding registers.</summary>
        /// <param name="range">At most <see cref="ModbusLimits.ReadCount"/> registers.</param>
        public ReadHoldingRegisters(RegisterRange range) => Range = AtMost(range, ModbusLimits.ReadCount);

        /// <summary>The registers asked for.</summary>
        public RegisterRange Range { get; }

        /// <inheritdoc />
        public override FunctionCode Function => FunctionCode.ReadHoldingRegisters;

        /// <inheritdoc />
        public override bool Writes => false;

        /// <inheritdoc />
        public override int Encode(Span<byte> pdu) => EncodeRead(pdu, Function, Range);
    }

    /// <summary>Function 4.</summary>
    public sealed record ReadInputRegisters : ModbusRequest
    {
        /// <summary>Asks for input registers.</summary>
        /// <param name="range">At most <see cref="ModbusLimits.ReadCount"/> registers.</param>
        public ReadInputRegisters(RegisterRange range) => Range = AtMost(range, ModbusLimits.ReadCount);

        /// <summary>The registers asked for.</summary>
        public RegisterRange Range { get; }

        /// <inheritdoc />
        public override FunctionCode Function => FunctionCode.ReadInputRegisters;

        /// <inheritdoc />
        public override bool Writes => false;

        /// <inheritdoc />
        public override int Encode(Span<byte> pdu) => EncodeRead(pdu, Function, Range);
    }

    /// <summary>Function 6.</summary>
    /// <param name="Address">The register.</param>
    /// <param name="Value">What to write.</param>
    public sealed record WriteSingleRegister(RegisterAddress Address, ushort Value) : ModbusRequest
    {
        /// <inheritdoc />
        public override FunctionCode Function => FunctionCode.WriteSingleRegister;

        /// <inheritdoc />
        public override bool Writes => true;

        /// <inheritdoc />
        public override int Encode(Span<byte> pdu)
        {
            pdu[0] = (byte)Function;
            BinaryPrimitives.WriteUInt16BigEndian(pdu[1..], Address.Value);
            BinaryPrimitives.WriteUInt16BigEndian(pdu[3..], Value);
            return 5;
        }
    }

    /// <summary>Function 16.</summary>
    public sealed record WriteMultipleRegisters : ModbusRequest
    {
        /// <summary>Writes neighbouring registers.</summary>
        /// <param name="start">The lowest address.</param>
        /// <param name="values">At most <see cref="ModbusLimits.WriteCount"/> words.</param>
        public WriteMultipleRegisters(RegisterAddress start, RegisterValues values)
        {
            ArgumentNullException.ThrowIfNull(values);
            Range = AtMost(new RegisterRange(start, values.Count), ModbusLimits.WriteCount);
            Values = values;
        }

        /// <summary>The registers written.</summary>
        public RegisterRange Range { get; }

        /// <summary>What to write.</summary>
        public RegisterValues Values { get; }

        /// <inheritdoc />
        public override FunctionCode Function => FunctionCode.WriteMultipleRegisters;

        /// <inheritdoc />
        public override bool Writes => true;

        /// <inheritdoc />
        public override int Encode(Span<byte> pdu)
        {
            _ = EncodeRead(pdu, Function, Range);
            return 5 + EncodeCountedWords(pdu[5..], Values);
        }
    }

    /// <summary>Function 23: the write is done first, then the read.</summary>
    public sealed record ReadWriteMultipleRegisters : ModbusRequest
    {
        /// <summary>Writes and reads in one transaction.</summary>
        /// <param name="read">At most <see cref="ModbusLimits.ReadCount"/> registers.</param>
        /// <param name="writeStart">The lowest address written.</param>
        /// <param name="values">At most <see cref="ModbusLimits.ReadWriteWriteCount"/> words.</param>
        public ReadWriteMultipleRegisters(RegisterRange read, RegisterAddress writeStart, RegisterValues values)
        {
            ArgumentNullException.ThrowIfNull(values);
            Read = AtMost(read, ModbusLimits.ReadCount);
            Write = AtMost(new RegisterRange(writeStart, values.Count), ModbusLimits.ReadWriteWriteCount);
            Values = values;
        }

        /// <summary>The registers read.</summary>
        public RegisterRange Read { get; }

        /// <summary>The registers written.</summary>
        public RegisterRange Write { get; }

        /// <summary>What to write.</summary>
        public RegisterValues Values { get; }

        /// <inheritdoc />
        public override FunctionCode Function => FunctionCode.ReadWriteMultipleRegisters;

        /// <inheritdoc />
        public override bool Writes => true;

        /// <inheritdoc />
        public override int Encode(Span<byte> pdu)
        {
            _ = EncodeRead(pdu, Function, Read);
            BinaryPrimitives.WriteUInt16BigEndian(pdu[5..], Write.Start.Value);
            BinaryPrimitives.WriteUInt16BigEndian(pdu[7..], (ushort)Write.Count);
            return 9 + EncodeCountedWords(pdu[9..], Values);
        }
    }

    /// <summary>Function 43, MEI type 14.</summary>
    public sealed record ReadDeviceIdentification : ModbusRequest
    {
        /// <summary>Asks for identification.</summary>
        /// <param name="code">Basic, regular, extended or individual.</param>
        /// <param name="objectId">The object to begin with, or the one asked for.</param>
        public ReadDeviceIdentification(ReadDeviceIdCode code, IdentificationObjectId objectId)
        {
            if (code is < ReadDeviceIdCode.Basic or > ReadDeviceIdCode.Individual)
            {
                throw new ArgumentOutOfRangeException(nameof(code));
            }

            Code = code;
            ObjectId = objectId;
        }

        /// <summary>How much is asked for.</summary>
        public ReadDeviceIdCode Code { get; }

        /// <summary>The object to begin with, or the one asked for.</summary>
        public IdentificationObjectId ObjectId { get; }

        /// <inheritdoc />
        public override FunctionCode Function => FunctionCode.EncapsulatedInterface;

        /// <inheritdoc />
        public override bool Writes => false;

        /// <inheritdoc />
        public override int Encode(Span<byte> pdu)
        {
            pdu[0] = (byte)Function;
            pdu[1] = MeiType.ReadDeviceIdentification;
            pdu[2] = (byte)Code;
            pdu[3] = ObjectId.Value;
            return 4;
        }
    }

    private static RegisterRange AtMost(RegisterRange range, int limit)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(range.Count, limit, nameof(range));
        return range;
    }

    private static int EncodeRead(Span<byte> pdu, FunctionCode function, RegisterRange range)
    {
        pdu[0] = (byte)function;
        BinaryPrimitives.WriteUInt16BigEndian(pdu[1..], range.Start.Value);
        BinaryPrimitives.WriteUInt16BigEndian(pdu[3..], (ushort)range.Count);
        return 5;
    }

    private static int EncodeCountedWords(Span<byte> pdu, RegisterValues values)
    {
        var byteCount = values.Count * 2;
        pdu[0] = (byte)byteCount;
        WireWords.Write(values.AsSpan(), pdu.Slice(1, byteCount));
        return 1 + byteCount;
    }
}
