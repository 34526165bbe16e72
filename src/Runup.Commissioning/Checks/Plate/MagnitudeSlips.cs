namespace Runup.Commissioning.Checks.Plate;

/// <summary>By what each slip of the pen makes P/(√3·U·I) too large.</summary>
internal static class MagnitudeSlips
{
    private const double KilowattsPerHorsepower = PlateFigures.WattsPerHorsepower / 1000;

    internal static IReadOnlyList<(MagnitudeSlip Kind, double Factor)> Factors { get; } =
    [
        (MagnitudeSlip.HorsepowerAsKilowatts, 1 / KilowattsPerHorsepower),
        (MagnitudeSlip.KilowattsAsHorsepower, KilowattsPerHorsepower),
        (MagnitudeSlip.RootThreeTooLow, Math.Sqrt(3)),
        (MagnitudeSlip.RootThreeTooHigh, 1 / Math.Sqrt(3)),
        (MagnitudeSlip.Halved, 2),
        (MagnitudeSlip.Doubled, 0.5),
        (MagnitudeSlip.TenTooMuch, 10),
        (MagnitudeSlip.TenTooLittle, 0.1),
        (MagnitudeSlip.ThousandTooMuch, 1000),
        (MagnitudeSlip.ThousandTooLittle, 0.001),
    ];

    /// <summary>Whether the slip is one of the output; else it is one of voltage or current.</summary>
    internal static bool IsOfOutput(this MagnitudeSlip kind) =>
        kind is MagnitudeSlip.HorsepowerAsKilowatts or MagnitudeSlip.KilowattsAsHorsepower or MagnitudeSlip.ThousandTooMuch or MagnitudeSlip.ThousandTooLittle;
}
