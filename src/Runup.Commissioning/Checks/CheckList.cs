using Runup.Commissioning.Checks.Plate;

namespace Runup.Commissioning.Checks;

/// <summary>All checks, in the order in which findings are read.</summary>
public static class CheckList
{
    /// <summary>The checks that need no more than a plate.</summary>
    public static IReadOnlyList<PlateCheck> OfPlate { get; } =
    [
        new KindOfMotor(), new PowerUnit(), new BaseFrequency(), new VoltageConnection(), new PoleNumber(), new FullLoadSpeed(), new LinePhaseCurrent(), new PowerBalance(),
        new PrintedPowerFactor(), new PrintedEfficiency(), new ServiceFactor(),
    ];

    /// <summary>All checks of a job.</summary>
    public static IReadOnlyList<Check> OfJob { get; } = [.. OfPlate];
}
