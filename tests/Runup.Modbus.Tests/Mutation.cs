using FsCheck;
using FsCheck.Fluent;

namespace Runup.Modbus.Tests;

/// <summary>Small damage to a frame: a byte changed, dropped or doubled, the tail cut or lengthened.</summary>
public sealed record Mutation(int Kind, int At, byte Value)
{
    public static Arbitrary<Mutation> Any() => Arb.From(
        from kind in Gen.Choose(0, 4)
        from at in Gen.Choose(0, 299)
        from value in Gen.Choose(0, 255)
        select new Mutation(kind, at, (byte)value));

    public byte[] Apply(ReadOnlySpan<byte> frame)
    {
        var at = frame.Length == 0 ? 0 : At % frame.Length;
        return (frame.Length == 0 ? 4 : Kind) switch
        {
            0 => [.. frame[..at], Value, .. frame[(at + 1)..]],
            1 => [.. frame[..at], .. frame[(at + 1)..]],
            2 => [.. frame[..at], frame[at], .. frame[at..]],
            3 => [.. frame[..at]],
            _ => [.. frame, Value],
        };
    }
}
