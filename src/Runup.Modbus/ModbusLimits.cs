namespace Runup.Modbus;

/// <summary>The largest quantities and lengths of the Modbus Application Protocol V1.1b3 (clauses 4.1 and 6) and of the Messaging on TCP/IP guide V1.0b (clause 3.1.3).</summary>
public static class ModbusLimits
{
    /// <summary>Registers have 16-bit addresses.</summary>
    public const int AddressSpace = 65_536;

    /// <summary>Function code and data of one frame, in bytes.</summary>
    public const int PduLength = 253;

    /// <summary>A whole frame on TCP, in bytes: 7 of header and the PDU.</summary>
    public const int TcpFrameLength = 260;

    /// <summary>A whole frame on a serial line, in bytes: address, PDU, CRC.</summary>
    public const int RtuFrameLength = 256;

    /// <summary>Registers of one read (functions 3, 4 and the read of 23).</summary>
    public const int ReadCount = 125;

    /// <summary>Registers of one write by function 16.</summary>
    public const int WriteCount = 123;

    /// <summary>Registers of the write of function 23.</summary>
    public const int ReadWriteWriteCount = 121;

    /// <summary>Bytes of one identification object: what the PDU leaves after the seven bytes of the reply's head and the object's own two.</summary>
    public const int IdentificationObjectLength = PduLength - 9;
}
