using Runup.Modbus;
using Runup.Modbus.Serving;

namespace Runup.Bench.ModbusServer;

/// <summary>A thousand holding registers, each holding its address.</summary>
internal sealed class CountingBank : IModbusDevice
{
    private readonly ushort[] _registers = [.. Enumerable.Range(0, 1000).Select(i => (ushort)i)];

    public DeviceAnswer ReadHoldingRegisters(RegisterRange range, Span<ushort> values)
    {
        if (range.Last.Value >= _registers.Length)
        {
            return DeviceAnswer.Refused(ExceptionCode.IllegalDataAddress);
        }

        _registers.AsSpan(range.Start.Value, range.Count).CopyTo(values);
        return DeviceAnswer.Done;
    }
}
