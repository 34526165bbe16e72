namespace Runup.Quantities;

/// <summary>Number of poles of a machine: even, at least two. <c>default</c> is not a machine and has none.</summary>
public readonly record struct PoleCount
{
    private PoleCount(int poles) => Poles = poles;

    /// <summary>The number of poles, not of pairs.</summary>
    public int Poles { get; }

    /// <summary>The number of pole pairs.</summary>
    public int Pairs => Poles / 2;

    /// <summary>Makes the count from a number of poles.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is odd or below two.</exception>
    public static PoleCount FromPoles(int poles) =>
        poles >= 2 && poles % 2 == 0
            ? new(poles)
            : throw new ArgumentOutOfRangeException(nameof(poles), poles, "A machine has an even number of poles, at least two.");

    /// <summary>The poles of a motor that runs at a full-load speed: the largest even number whose synchronous speed lies above it.</summary>
    public static PoleCount FromFullLoad(ElectricalFrequency frequency, ShaftSpeed speed) =>
        FromPoles(2 * Math.Max(1, (int)Math.Floor(frequency.RadiansPerSecond / speed.RadiansPerSecond)));
}
