using FsCheck;
using FsCheck.Fluent;
using Runup.Modbus.Identification;
using Runup.Modbus.Requests;

namespace Runup.Modbus.Tests;

/// <summary>Valid requests of every kind, over all of their limits.</summary>
public static class AnyRequest
{
    public static Arbitrary<ModbusRequest> Requests() => Arb.From(Generator);

    public static Gen<ModbusRequest> Generator { get; } = Gen.OneOf(
        Range(ModbusLimits.ReadCount).Select(range => (ModbusRequest)new ModbusRequest.ReadHoldingRegisters(range)),
        Range(ModbusLimits.ReadCount).Select(range => (ModbusRequest)new ModbusRequest.ReadInputRegisters(range)),
        from address in Word
        from value in Word
        select (ModbusRequest)new ModbusRequest.WriteSingleRegister(new RegisterAddress(address), value),
        from range in Range(ModbusLimits.WriteCount)
        from values in Words(range.Count)
        select (ModbusRequest)new ModbusRequest.WriteMultipleRegisters(range.Start, values),
        from read in Range(ModbusLimits.ReadCount)
        from write in Range(ModbusLimits.ReadWriteWriteCount)
        from values in Words(write.Count)
        select (ModbusRequest)new ModbusRequest.ReadWriteMultipleRegisters(read, write.Start, values),
        from code in Gen.Choose(1, 4)
        from objectId in Gen.Choose(0, 255)
        select (ModbusRequest)new ModbusRequest.ReadDeviceIdentification((ReadDeviceIdCode)code, new IdentificationObjectId((byte)objectId)));

    private static Gen<ushort> Word => Gen.Choose(0, ushort.MaxValue).Select(word => (ushort)word);

    private static Gen<RegisterRange> Range(int limit) =>
        from count in Gen.Choose(1, limit)
        from start in Gen.Choose(0, ModbusLimits.AddressSpace - count)
        select new RegisterRange((ushort)start, count);

    private static Gen<RegisterValues> Words(int count) =>
        Word.ArrayOf(count).Select(words => new RegisterValues(words));
}
