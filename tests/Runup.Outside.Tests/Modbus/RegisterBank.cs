using Runup.Modbus;
using Runup.Modbus.Identification;
using Runup.Modbus.Serving;

namespace Runup.Outside.Tests.Modbus;

/// <summary>A thousand holding registers; input registers hold their address plus 1000; 0xDEAD is refused.</summary>
internal sealed class RegisterBank : IModbusDevice
{
    public ushort[] Holding { get; } = new ushort[1000];

    public DeviceIdentification? Identification { get; init; } = new DeviceIdentification("Invented Works", "BANK", "V1.0")
        .With(IdentificationObjectId.ProductName, "Register bank")
        .With(new IdentificationObjectId(0x80), "serial 17");

    public DeviceAnswer ReadHoldingRegisters(RegisterRange range, Span<ushort> values)
    {
        if (range.Last.Value >= Holding.Length)
        {
            return DeviceAnswer.Refused(ExceptionCode.IllegalDataAddress);
        }

        Holding.AsSpan(range.Start.Value, range.Count).CopyTo(values);
        return DeviceAnswer.Done;
    }

    public DeviceAnswer ReadInputRegisters(RegisterRange range, Span<ushort> values)
    {
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = unchecked((ushort)(range.Start.Value + i + 1000));
        }

        return DeviceAnswer.Done;
    }

    public DeviceAnswer WriteRegister(RegisterAddress address, ushort value) =>
        value == 0xDEAD ? DeviceAnswer.Refused(ExceptionCode.IllegalDataValue) : WriteRegisters(new RegisterRange(address, 1), [value]);

    public DeviceAnswer WriteRegisters(RegisterRange range, ReadOnlySpan<ushort> values)
    {
        if (range.Last.Value >= Holding.Length)
        {
            return DeviceAnswer.Refused(ExceptionCode.IllegalDataAddress);
        }

        values.CopyTo(Holding.AsSpan(range.Start.Value));
        return DeviceAnswer.Done;
    }

    public DeviceAnswer ReadWriteRegisters(RegisterRange read, Span<ushort> readValues, RegisterRange write, ReadOnlySpan<ushort> written)
    {
        var answer = WriteRegisters(write, written);
        return answer == DeviceAnswer.Done ? ReadHoldingRegisters(read, readValues) : answer;
    }
}
