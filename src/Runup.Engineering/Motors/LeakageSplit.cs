namespace Runup.Engineering.Motors;

/// <summary>How the leakage reactance of a motor is shared between stator and rotor: Xls / Xlr by design letter.</summary>
[Source("ieee-112", "ratio of stator to rotor leakage reactance by design letter")]
public static class LeakageSplit
{
    private const double DesignA = 1.0;
    private const double DesignB = 0.67;
    private const double DesignC = 0.43;
    private const double DesignD = 1.0;

    /// <summary>The ratio for a design letter, and what was taken for granted.</summary>
    /// <param name="designLetter">NEMA A to D, or an IEC letter (N, NE, NY, NEY, H, HE, HY, HEY); null or unknown takes design B.</param>
    public static (double Ratio, Assumption Assumption) For(string? designLetter)
    {
        var letter = designLetter?.Trim().ToUpperInvariant() ?? "";
        var (ratio, why) = letter switch
        {
            "A" => (DesignA, "design A"),
            "B" => (DesignB, "design B"),
            "C" => (DesignC, "design C"),
            "D" => (DesignD, "design D"),
            ['N', ..] => (DesignB, $"design {letter} taken as design B, which it resembles"),
            ['H', ..] => (DesignC, $"design {letter} taken as design C, which it resembles"),
            _ => (DesignB, "no known design letter: design B, the most common"),
        };
        return (ratio, new Assumption(
            $"stator over rotor leakage reactance ({why})",
            FormattableString.Invariant($"{ratio}"),
            "IEEE 112, ratio of leakage reactances by design letter",
            FromMemory: true));
    }
}
