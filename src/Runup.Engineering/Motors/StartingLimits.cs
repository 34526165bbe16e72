namespace Runup.Engineering.Motors;

/// <summary>What a figure of starting or breakdown, over rated, can be at all; beyond that it was misread, and no circuit is bent to follow it.</summary>
/// <remarks>
/// IEC 60034-1 (from memory) asks for a breakdown torque of 1.6 times rated at least, and of 1.5 where the locked-rotor current is small; 10 % less is its tolerance.
/// The other ends leave room for the oddest cage motors that are built: common practice, no source.
/// </remarks>
[Source("iec-60034-1", "momentary excess torque; schedule of tolerances")]
[Source("common-practice", "locked-rotor current and torques of cage motors")]
public static class StartingLimits
{
    /// <summary>Lowest and highest value over rated that is believed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The datum is none of starting or breakdown.</exception>
    public static (double Low, double High) Of(PlateDatum datum) => datum switch
    {
        PlateDatum.LockedRotorCurrent or PlateDatum.CodeLetter => (1.5, 20),
        PlateDatum.LockedRotorTorque => (0.1, 8),
        PlateDatum.BreakdownTorque => (1.3, 8),
        _ => throw new ArgumentOutOfRangeException(nameof(datum), datum, "Neither a locked-rotor figure nor a breakdown torque."),
    };

    /// <summary>Whether a printed value is believed.</summary>
    internal static bool Believes(PlateDatum datum, double ratio) => Of(datum) is var (low, high) && ratio >= low && ratio <= high;
}
