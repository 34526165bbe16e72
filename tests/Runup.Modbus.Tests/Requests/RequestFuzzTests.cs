using FsCheck.Xunit;
using Runup.Modbus.Requests;

namespace Runup.Modbus.Tests.Requests;

[Properties(Arbitrary = [typeof(AnyRequest), typeof(Mutation)], MaxTest = 2000)]
public sealed class RequestFuzzTests
{
    [Property]
    public void What_is_encoded_is_decoded_the_same(ModbusRequest request)
    {
        var pdu = Encode(request);
        var decoded = RequestDecoder.Decode(pdu);
        decoded.Refusal.ShouldBeNull();
        decoded.Detach().ShouldBe(request);
    }

    [Property]
    public void Any_bytes_give_a_request_or_a_refusal(byte[] bytes) => IsTotal(bytes);

    [Property]
    public void Any_bytes_after_a_known_function_give_a_request_or_a_refusal(byte[] bytes, byte which)
    {
        byte[] functions = [3, 4, 6, 16, 23, 43];
        IsTotal([functions[which % functions.Length], .. bytes]);
    }

    [Property]
    public void Damaged_request_gives_a_request_or_a_refusal(ModbusRequest request, Mutation damage) => IsTotal(damage.Apply(Encode(request)));

    [Property]
    public void Request_cut_short_or_lengthened_is_never_accepted(ModbusRequest request, Mutation damage)
    {
        var damaged = (damage with { Kind = 3 + (damage.Kind % 2) }).Apply(Encode(request));
        RequestDecoder.Decode(damaged).Refusal.ShouldNotBeNull();
    }

    private static void IsTotal(byte[] pdu)
    {
        var decoded = RequestDecoder.Decode(pdu);
        if (decoded.Refusal is not null)
        {
            decoded.Function.ShouldBe(FunctionCode.None);
            return;
        }

        // Whatever is accepted says exactly what stood on the wire.
        Encode(decoded.Detach().ShouldNotBeNull()).ShouldBe(pdu);
    }

    private static byte[] Encode(ModbusRequest request)
    {
        var pdu = new byte[ModbusLimits.PduLength];
        return pdu[..request.Encode(pdu)];
    }
}
