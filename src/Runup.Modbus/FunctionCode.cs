namespace Runup.Modbus;

/// <summary>The functions this library speaks, by their code on the wire.</summary>
public enum FunctionCode
{
    /// <summary>No function; never valid on the wire.</summary>
    None = 0,

    /// <summary>Read holding registers.</summary>
    ReadHoldingRegisters = 0x03,

    /// <summary>Read input registers.</summary>
    ReadInputRegisters = 0x04,

    /// <summary>Write single register.</summary>
    WriteSingleRegister = 0x06,

    /// <summary>Write multiple registers.</summary>
    WriteMultipleRegisters = 0x10,

    /// <summary>Read and write multiple registers in one transaction; the write comes first.</summary>
    ReadWriteMultipleRegisters = 0x17,

    /// <summary>Encapsulated interface transport, of which read device identification (MEI type 14) is spoken.</summary>
    EncapsulatedInterface = 0x2B,
}
