namespace Runup.Profiles;

/// <summary>A parameter's value as the words of its registers, in the order of the addresses.</summary>
public static class RegisterImage
{
    /// <summary>Whether a value fits the parameter's registers at all.</summary>
    public static bool Fits(Parameter parameter, long raw) => (parameter.Width, parameter.Signed) switch
    {
        (16, false) => raw is >= ushort.MinValue and <= ushort.MaxValue,
        (16, true) => raw is >= short.MinValue and <= short.MaxValue,
        (32, false) => raw is >= uint.MinValue and <= uint.MaxValue,
        (32, true) => raw is >= int.MinValue and <= int.MaxValue,
        _ => false,
    };

    /// <summary>The words of a value, lower address first.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value does not fit the parameter's registers.</exception>
    public static ushort[] Words(Parameter parameter, long raw)
    {
        if (!Fits(parameter, raw))
        {
            throw new ArgumentOutOfRangeException(nameof(raw), raw, $"Parameter {parameter.Number} has {parameter.Width} bits{(parameter.Signed ? ", signed" : "")}.");
        }

        var low = (ushort)raw;
        if (parameter.Width == 16)
        {
            return [low];
        }

        var high = (ushort)(raw >> 16);
        return parameter.WordOrder == WordOrder.LowFirst ? [low, high] : [high, low];
    }

    /// <summary>The value of words, lower address first.</summary>
    /// <exception cref="ArgumentException">The number of words is not the parameter's.</exception>
    public static long Raw(Parameter parameter, ReadOnlySpan<ushort> words)
    {
        if (words.Length != parameter.RegisterCount)
        {
            throw new ArgumentException($"Parameter {parameter.Number} has {parameter.RegisterCount} registers, not {words.Length}.", nameof(words));
        }

        if (parameter.Width == 16)
        {
            return parameter.Signed ? (short)words[0] : words[0];
        }

        var (low, high) = parameter.WordOrder == WordOrder.LowFirst ? (words[0], words[1]) : (words[1], words[0]);
        var bits = ((uint)high << 16) | low;
        return parameter.Signed ? (int)bits : bits;
    }
}
