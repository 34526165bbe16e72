using FsCheck.Xunit;
using Runup.Modbus.Requests;
using Runup.Modbus.Rtu;

namespace Runup.Modbus.Tests.Rtu;

[Properties(Arbitrary = [typeof(AnyRequest), typeof(Mutation)], MaxTest = 2000)]
public sealed class RtuFrameTests
{
    [Property]
    public void What_is_written_is_read_the_same(ModbusRequest request, byte unit)
    {
        var (frame, pdu) = Frame(request, unit);
        var reading = RtuFrame.Read(frame);
        reading.State.ShouldBe(RtuFrameState.Whole);
        reading.Unit.ShouldBe(new UnitId(unit));
        reading.Pdu(frame).ToArray().ShouldBe(pdu);
    }

    [Property]
    public void Any_bytes_give_one_of_the_states(byte[] bytes)
    {
        var reading = RtuFrame.Read(bytes);
        if (reading.State != RtuFrameState.Whole)
        {
            reading.Pdu(bytes).Length.ShouldBe(0);
        }
    }

    [Property]
    public void Single_byte_changed_is_found(ModbusRequest request, Mutation damage)
    {
        ArgumentNullException.ThrowIfNull(damage);
        var (frame, _) = Frame(request, 1);
        var damaged = (damage with { Kind = 0 }).Apply(frame);
        RtuFrame.Read(damaged).State.ShouldBe(damaged.AsSpan().SequenceEqual(frame) ? RtuFrameState.Whole : RtuFrameState.WrongCrc);
    }

    [Fact]
    public void Too_little_and_too_much_are_no_frame()
    {
        RtuFrame.Read([]).State.ShouldBe(RtuFrameState.TooShort);
        RtuFrame.Read([1, 3, 0]).State.ShouldBe(RtuFrameState.TooShort);
        RtuFrame.Read(new byte[257]).State.ShouldBe(RtuFrameState.TooLong);
    }

    [Fact]
    public void Longest_frame_is_256_bytes()
    {
        var frame = new byte[ModbusLimits.RtuFrameLength];
        RtuFrame.Write(new UnitId(1), new byte[ModbusLimits.PduLength], frame).ShouldBe(256);
        RtuFrame.Read(frame).State.ShouldBe(RtuFrameState.Whole);
    }

    private static (byte[] Frame, byte[] Pdu) Frame(ModbusRequest request, byte unit)
    {
        ArgumentNullException.ThrowIfNull(request);
        var pdu = new byte[ModbusLimits.PduLength];
        pdu = pdu[..request.Encode(pdu)];
        var frame = new byte[ModbusLimits.RtuFrameLength];
        return (frame[..RtuFrame.Write(new UnitId(unit), pdu, frame)], pdu);
    }
}
