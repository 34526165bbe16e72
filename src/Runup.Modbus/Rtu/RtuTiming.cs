namespace Runup.Modbus.Rtu;

/// <summary>
/// The silences that part a serial line's frames (MODBUS over Serial Line V1.02, clause 2.5.1.1): t₁.₅ = 1.5·11/b and t₃.₅ = 3.5·11/b with b in bit/s,
/// since every character has 11 bits; above 19,200 bit/s fixed at 750 µs and 1.750 ms.
/// </summary>
/// <param name="BitsPerSecond">The line's speed.</param>
public readonly record struct RtuTiming(int BitsPerSecond)
{
    private const int BitsOfCharacter = 11;
    private const int FixedAbove = 19_200;

    /// <summary>How long one character takes.</summary>
    public TimeSpan Character => Characters(1);

    /// <summary>The longest silence within a frame.</summary>
    public TimeSpan WithinFrame => BitsPerSecond > FixedAbove ? TimeSpan.FromMicroseconds(750) : Characters(1.5);

    /// <summary>The shortest silence between frames.</summary>
    public TimeSpan BetweenFrames => BitsPerSecond > FixedAbove ? TimeSpan.FromMicroseconds(1750) : Characters(3.5);

    private TimeSpan Characters(double count) => TimeSpan.FromTicks((long)Math.Round(count * BitsOfCharacter * TimeSpan.TicksPerSecond / BitsPerSecond));
}
