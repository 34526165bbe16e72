using Runup.Modbus.Identification;
using Runup.Modbus.Serving;

namespace Runup.Modbus.Tests.Serving;

/// <summary>Holding registers 0 to 999, input registers 0 to 99 which hold their address plus 1000; writing 0xDEAD is refused, 0xBEEF silent, 0xFFFF throws.</summary>
internal sealed class BankDevice : IModbusDevice
{
    public const int Size = 1000;
    public const string Breakdown = "the device is broken";

    public ushort[] Holding { get; } = new ushort[Size];

    public DeviceIdentification? Identification { get; init; } =
        new DeviceIdentification("Invented Works", "BANK", "V1.0").With(IdentificationObjectId.ProductName, "Register bank");

    public DeviceAnswer ReadHoldingRegisters(RegisterRange range, Span<ushort> values)
    {
        if (range.Last.Value >= Size)
        {
            return DeviceAnswer.Refused(ExceptionCode.IllegalDataAddress);
        }

        Holding.AsSpan(range.Start.Value, range.Count).CopyTo(values);
        return DeviceAnswer.Done;
    }

    public DeviceAnswer ReadInputRegisters(RegisterRange range, Span<ushort> values)
    {
        if (range.Last.Value >= 100)
        {
            return DeviceAnswer.Refused(ExceptionCode.IllegalDataAddress);
        }

        for (var i = 0; i < values.Length; i++)
        {
            values[i] = (ushort)(range.Start.Value + i + 1000);
        }

        return DeviceAnswer.Done;
    }

    public DeviceAnswer WriteRegister(RegisterAddress address, ushort value) => value switch
    {
        0xDEAD => DeviceAnswer.Refused(ExceptionCode.IllegalDataValue),
        0xBEEF => DeviceAnswer.Silent,
        0xFFFF => throw new InvalidOperationException(Breakdown),
        _ => WriteRegisters(new RegisterRange(address, 1), [value]),
    };

    public DeviceAnswer WriteRegisters(RegisterRange range, ReadOnlySpan<ushort> values)
    {
        if (range.Last.Value >= Size)
        {
            return DeviceAnswer.Refused(ExceptionCode.IllegalDataAddress);
        }

        values.CopyTo(Holding.AsSpan(range.Start.Value));
        return DeviceAnswer.Done;
    }

    public DeviceAnswer ReadWriteRegisters(RegisterRange read, Span<ushort> readValues, RegisterRange write, ReadOnlySpan<ushort> written)
    {
        if (read.Last.Value >= Size)
        {
            return DeviceAnswer.Refused(ExceptionCode.IllegalDataAddress);
        }

        var answer = WriteRegisters(write, written);
        return answer == DeviceAnswer.Done ? ReadHoldingRegisters(read, readValues) : answer;
    }
}
