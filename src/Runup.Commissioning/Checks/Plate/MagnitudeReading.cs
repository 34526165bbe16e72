namespace Runup.Commissioning.Checks.Plate;

/// <summary>How a plate's output, voltage, current, power factor and efficiency go together.</summary>
/// <remarks>
/// Where power factor and efficiency are both printed, P/(√3·U·I·cos φ·η) is held against 1 and against the factor of each slip of the pen. Where one or
/// both are missing, P/(√3·U·I) is held against the band of usual motors of that output and pole number, as entered and as each slip would correct it.
/// </remarks>
internal abstract record MagnitudeReading
{
    private MagnitudeReading()
    {
    }

    /// <summary>Figures that no motor has, or not an induction motor.</summary>
    internal sealed record Unusable : MagnitudeReading;

    /// <summary>They go together.</summary>
    /// <param name="Ratio">Found over expected: exactly the balance where both factors are printed, else against the middle of the usual band.</param>
    /// <param name="Printed">Whether power factor and efficiency are both printed.</param>
    internal sealed record Agree(double Ratio, bool Printed) : MagnitudeReading;

    /// <summary>Usual as horsepower and as kilowatts.</summary>
    internal sealed record EitherUnit(double OtherOutput_W) : MagnitudeReading;

    /// <summary>A slip of the pen explains the disagreement.</summary>
    /// <param name="Kind">The slip.</param>
    /// <param name="Factor">By what it makes P/(√3·U·I) too large.</param>
    /// <param name="Ratio">Found over expected.</param>
    /// <param name="Basis">What it rests on.</param>
    internal sealed record Slip(MagnitudeSlip Kind, double Factor, double Ratio, Basis Basis) : MagnitudeReading;

    /// <summary>Power factor or efficiency is unusual as printed, and usual as the others imply it: that one was misread.</summary>
    /// <param name="PowerFactor">Whether it is the power factor; else the efficiency.</param>
    /// <param name="Implied">The value that the others imply.</param>
    /// <param name="Ratio">Found over expected.</param>
    internal sealed record Misread(bool PowerFactor, double Implied, double Ratio) : MagnitudeReading;

    /// <summary>They disagree, and no single slip explains it.</summary>
    internal sealed record Unexplained(double Ratio, Basis Basis) : MagnitudeReading;

    internal static MagnitudeReading Of(PlateContext context)
    {
        if (!context.IsInduction || !context.Figures.AreUsable)
        {
            return new Unusable();
        }

        var read = context.Figures.PrintedProduct is { } printed
            ? new PrintedMagnitudes(context, printed).Read()
            : new UsualMagnitudes(context).Read();

        // A slip with a factor of its own is not named in a title where a misread digit explains the plate better.
        return read is Slip slip && context.Likely.SpeaksAgainst(slip.Kind) ? new Unexplained(slip.Ratio, slip.Basis) : read;
    }
}
