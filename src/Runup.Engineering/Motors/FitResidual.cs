using Runup.Quantities;

namespace Runup.Engineering.Motors;

/// <summary>A printed value beside the fitted circuit's, both in SI units or as pure ratios.</summary>
/// <param name="Datum">Which.</param>
/// <param name="Plate">As printed.</param>
/// <param name="Circuit">Of the circuit.</param>
public sealed record FitResidual(PlateDatum Datum, double Plate, double Circuit)
{
    /// <summary>(circuit − plate) / plate.</summary>
    public Fraction Relative => Fraction.FromRatio((Circuit - Plate) / Plate);

    internal static IReadOnlyList<FitResidual> All(Nameplate plate, CircuitSolution rated)
    {
        var lockedRotor = CircuitSolution.LockedRotor(rated.Circuit, plate.Voltage, plate.Frequency);
        var breakdown = Breakdown.Of(rated.Circuit, plate.Voltage, plate.Frequency);
        var torque = plate.RatedTorque.NewtonMetres;
        var residuals = new List<FitResidual>
        {
            new(PlateDatum.Output, plate.Output.Watts, rated.Output.Watts),
            new(PlateDatum.Current, plate.Current.Amperes, rated.Current.Amperes),
            new(PlateDatum.Speed, plate.Speed.RadiansPerSecond, SpeedAtOutput(plate, rated)),
        };
        void Add(PlateDatum datum, double? printed, double circuit)
        {
            if (printed is { } value && double.IsFinite(value) && value > 0)
            {
                residuals.Add(new FitResidual(datum, value, circuit));
            }
        }

        Add(PlateDatum.PowerFactor, plate.PowerFactor?.Ratio, rated.PowerFactor.Ratio);
        Add(PlateDatum.Efficiency, plate.Efficiency?.Ratio, rated.Efficiency.Ratio);
        Add(PlateDatum.LockedRotorCurrent, plate.LockedRotorCurrentRatio, lockedRotor.Current.Amperes / plate.Current.Amperes);
        Add(PlateDatum.CodeLetter, CodeLetterRatio(plate), lockedRotor.Current.Amperes / plate.Current.Amperes);
        Add(PlateDatum.LockedRotorTorque, plate.LockedRotorTorqueRatio, lockedRotor.DevelopedTorque.NewtonMetres / torque);
        Add(PlateDatum.BreakdownTorque, plate.BreakdownTorqueRatio, breakdown.Torque.NewtonMetres / torque);
        return residuals;
    }

    /// <summary>Locked-rotor current over rated current in the middle of the code letter's band; null without a letter of the table.</summary>
    internal static double? CodeLetterRatio(Nameplate plate)
    {
        if (plate.CodeLetter is not { } letter || Standards.CodeLetter.Of(letter) is not { } band)
        {
            return null;
        }

        var (lowest, highest) = band.LockedRotorCurrents(plate.Output, plate.Voltage);
        return (lowest.Amperes + (highest ?? lowest).Amperes) / 2 / plate.Current.Amperes;
    }

    private static double SpeedAtOutput(Nameplate plate, CircuitSolution rated) =>
        OperatingPoint.AtShaftPower(rated.Circuit, plate.Voltage, plate.Frequency, plate.Output) switch
        {
            OperatingPoint.Runs runs => runs.Solution.Speed.RadiansPerSecond,
            OperatingPoint.BeyondBreakdown beyond => beyond.Largest.Speed.RadiansPerSecond,
            _ => throw new System.Diagnostics.UnreachableException(),
        };
}
