using Runup.Commissioning.Survey;
using Runup.Quantities;

namespace Runup.Commissioning.Checks.Plate;

/// <summary>In which unit the output was written, and whether motors of that number are made in it.</summary>
internal sealed record PowerWording(bool InHorsepower, double Number)
{
    private const double KilowattsPerHorsepower = PlateFigures.WattsPerHorsepower / 1000;

    private static readonly string[] HorsepowerUnits = ["hp", "ps", "cv"];
    private static readonly string[] MetricUnits = ["ps", "cv"];

    /// <summary>The slip of having meant the other unit, and by what it makes the output too large.</summary>
    internal (MagnitudeSlip Kind, double Factor) OtherUnit => InHorsepower
        ? (MagnitudeSlip.KilowattsAsHorsepower, KilowattsPerHorsepower)
        : (MagnitudeSlip.HorsepowerAsKilowatts, 1 / KilowattsPerHorsepower);

    /// <summary>Made in the unit written (also the kilowatts of a horsepower rating), not in the other.</summary>
    internal bool IsOnlyMadeInWrittenUnit => IsMadeAsWritten && !IsMadeInOther;

    /// <summary>Made in the other unit only.</summary>
    internal bool IsOnlyMadeInOtherUnit => IsMadeInOther && !IsMadeAsWritten;

    private bool IsMadeAsWritten => InHorsepower
        ? UsualMotors.IsHorsepowerRating(Number)
        : UsualMotors.IsKilowattRating(Number) || UsualMotors.IsHorsepowerRating(Number / KilowattsPerHorsepower);

    private bool IsMadeInOther => InHorsepower ? UsualMotors.IsKilowattRating(Number) : UsualMotors.IsHorsepowerRating(Number);

    internal static PowerWording Of(Datum<ShaftPower> output)
    {
        var (kW, hp) = (output.Value.Watts / 1000, output.Value.Watts / PlateFigures.WattsPerHorsepower);
        if (IsWrittenIn(MetricUnits, output))
        {
            return new(true, output.Value.Watts / PlateFigures.WattsPerMetricHorsepower);
        }

        var inHorsepower = output.AsWritten is null
            ? UsualMotors.IsHorsepowerRating(hp) && !UsualMotors.IsKilowattRating(kW)
            : IsWrittenIn(HorsepowerUnits, output);
        return new(inHorsepower, inHorsepower ? hp : kW);
    }

    private static bool IsWrittenIn(string[] units, Datum<ShaftPower> output) =>
        output.AsWritten is { } written && Array.Exists(units, unit => written.Contains(unit, StringComparison.OrdinalIgnoreCase));
}
