namespace Runup.Engineering.Motors.Ensemble;

/// <summary>What is believed of motors before anything but the rated point is known.</summary>
/// <remarks>
/// Distributions are ours (common practice, no source): logarithms of leakage, of its split and of the rise of rotor resistance are normal. Leakage follows from
/// locked-rotor currents of 4 to 9 times rated, which motors for direct starting have; the magnetizing current's share falls with size and rises with the poles.
/// </remarks>
/// <param name="Leakage">Median of total leakage over V/I at the rated point.</param>
/// <param name="LeakageSpread">Standard deviation of its logarithm.</param>
/// <param name="Split">Median of stator over rotor leakage.</param>
/// <param name="SplitSpread">Standard deviation of its logarithm.</param>
/// <param name="Magnetizing">Median of no-load over rated current.</param>
/// <param name="MagnetizingSpread">Standard deviation of its logarithm.</param>
/// <param name="Resistances">Median of stator over rotor resistance at the rated point.</param>
/// <param name="ResistancesSpread">Standard deviation of its logarithm.</param>
/// <param name="CopperOnly">Share of motors without any loss beside copper, as textbooks like them.</param>
/// <param name="PlainCage">Share of motors whose rotor resistance is the same at standstill.</param>
/// <param name="BarRise">Median of the rise of rotor resistance at standstill, R(1)/R(s) − 1.</param>
/// <param name="BarRiseSpread">Standard deviation of its logarithm.</param>
/// <param name="LeakageSaturation">Largest share of the leakage that is lost at the current of a locked rotor.</param>
/// <param name="IronShare">Largest share of the magnetizing current that the iron takes.</param>
[Source("common-practice", "distributions of leakage, magnetizing current, loss shares and bars of cage motors")]
[Source("ieee-112", "ratio of stator to rotor leakage reactance by design letter")]
internal sealed record MotorPrior(
    double Leakage,
    double LeakageSpread,
    double Split,
    double SplitSpread,
    double Magnetizing,
    double MagnetizingSpread,
    double Resistances,
    double ResistancesSpread,
    double CopperOnly,
    double PlainCage,
    double BarRise,
    double BarRiseSpread,
    double LeakageSaturation,
    double IronShare)
{
    internal static MotorPrior For(Nameplate plate, in RatedPoint point, PlateTrust trust)
    {
        var poles = point.PolePairs / 2.0;
        var exact = trust == PlateTrust.Exact;
        var letter = plate.DesignLetter?.Trim().ToUpperInvariant();
        var known = letter is "A" or "B" or "C" or "D" || letter is ['N' or 'H', ..];
        return new MotorPrior(
            Leakage: (exact ? 0.143 : 0.155) * Math.Pow(Math.Clamp(poles, 0.5, 4), 0.15) * Math.Pow(Hardness(point), 0.4),
            LeakageSpread: exact ? 0.33 : 0.45,
            Split: known ? Motors.LeakageSplit.For(letter).Ratio : 0.85,
            SplitSpread: known ? 0.3 : 0.4,
            Magnetizing: Math.Clamp(0.42 * Math.Pow(point.Output_W / 10_000, -0.12) * Math.Pow(Math.Clamp(poles, 0.5, 4), 0.35), 0.15, 0.75),
            MagnetizingSpread: exact ? 0.7 : 0.9,
            Resistances: 1.2,
            ResistancesSpread: 0.5,
            CopperOnly: exact ? 0.4 : 0,
            PlainCage: exact ? 0.85 : 0.1,
            BarRise: Math.Clamp(0.022 / point.Slip, 0.15, 4),
            BarRiseSpread: 0.5,
            LeakageSaturation: exact ? 0 : 0.2,
            IronShare: exact ? 0 : 0.3);
    }

    /// <summary>
    /// How hard a motor is rated for its size: its slip over that of its like, 5 % at 1 kW falling with the power 0.28 of output. The same iron and copper
    /// rated twice as high has twice the slip, and twice the leakage over V/I.
    /// </summary>
    private static double Hardness(in RatedPoint point) =>
        Math.Clamp(point.Slip / (0.05 * Math.Pow(point.Output_W / 1000, -0.28)), 0.25, 4);
}
