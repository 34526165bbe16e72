using Runup.Modbus.Identification;

namespace Runup.Modbus.Serving;

/// <summary>
/// What stands behind a server. Quantities and the end of the address space are checked before it is asked; whether the addresses exist is its own to say.
/// Members are called from the server's thread, one request at a time on each server, and must answer at once: whoever waits makes every connection wait.
/// A function that is not overridden is refused as illegal.
/// </summary>
public interface IModbusDevice
{
    /// <summary>The device's identification, or null when it has none (function 43/14 is then illegal).</summary>
    DeviceIdentification? Identification => null;

    /// <summary>Function 3.</summary>
    /// <param name="range">The registers asked for.</param>
    /// <param name="values">To be filled, as long as the range.</param>
    DeviceAnswer ReadHoldingRegisters(RegisterRange range, Span<ushort> values) => DeviceAnswer.Refused(ExceptionCode.IllegalFunction);

    /// <summary>Function 4.</summary>
    /// <param name="range">The registers asked for.</param>
    /// <param name="values">To be filled, as long as the range.</param>
    DeviceAnswer ReadInputRegisters(RegisterRange range, Span<ushort> values) => DeviceAnswer.Refused(ExceptionCode.IllegalFunction);

    /// <summary>Function 6.</summary>
    /// <param name="address">The register.</param>
    /// <param name="value">What to write.</param>
    DeviceAnswer WriteRegister(RegisterAddress address, ushort value) => DeviceAnswer.Refused(ExceptionCode.IllegalFunction);

    /// <summary>Function 16.</summary>
    /// <param name="range">The registers written.</param>
    /// <param name="values">What to write, as long as the range.</param>
    DeviceAnswer WriteRegisters(RegisterRange range, ReadOnlySpan<ushort> values) => DeviceAnswer.Refused(ExceptionCode.IllegalFunction);

    /// <summary>Function 23: write, then read.</summary>
    /// <param name="read">The registers asked for.</param>
    /// <param name="readValues">To be filled, as long as <paramref name="read"/>.</param>
    /// <param name="write">The registers written.</param>
    /// <param name="written">What to write, as long as <paramref name="write"/>.</param>
    DeviceAnswer ReadWriteRegisters(RegisterRange read, Span<ushort> readValues, RegisterRange write, ReadOnlySpan<ushort> written) =>
        DeviceAnswer.Refused(ExceptionCode.IllegalFunction);
}
