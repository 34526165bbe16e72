using System.Globalization;

namespace Runup.Engineering.Motors;

/// <summary>A figure of starting or breakdown that a plate or catalogue prints beside the rated point, and how a circuit has it.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Printed">As printed, over rated.</param>
/// <param name="Of">The circuit's own; falls with leakage.</param>
/// <param name="Assumption">What was taken to read it, if anything.</param>
internal sealed record StartingDatum(PlateDatum Kind, double Printed, Func<EquivalentCircuit, double> Of, Assumption? Assumption = null)
{
    /// <summary>Relative error of a circuit's figure.</summary>
    internal double Error(EquivalentCircuit circuit) => Math.Abs((Of(circuit) / Printed) - 1);

    /// <summary>What a plate has of them, in the order in which they are followed: breakdown is reached while the bars still are what they are at rated load.</summary>
    internal static IReadOnlyList<StartingDatum> All(Nameplate plate, RatedPoint point)
    {
        var data = new List<StartingDatum>();
        if (Usable(PlateDatum.BreakdownTorque, plate.BreakdownTorqueRatio) is { } breakdown)
        {
            data.Add(new(PlateDatum.BreakdownTorque, breakdown, circuit => Breakdown.Largest(new PhaseCircuit(circuit, point.Frequency_Hz), point.Phase_V, 1).Torque_Nm / point.Torque_Nm));
        }

        if (Usable(PlateDatum.LockedRotorCurrent, plate.LockedRotorCurrentRatio) is { } current)
        {
            data.Add(new(PlateDatum.LockedRotorCurrent, current, circuit => Locked(circuit, point).Current_A / point.Current_A));
        }
        else if (Usable(PlateDatum.CodeLetter, FitResidual.CodeLetterRatio(plate)) is { } fromLetter)
        {
            data.Add(new(PlateDatum.CodeLetter, fromLetter, circuit => Locked(circuit, point).Current_A / point.Current_A, new Assumption(
                $"locked-rotor current over rated current (middle of code letter {plate.CodeLetter})",
                string.Create(CultureInfo.InvariantCulture, $"{fromLetter:F2}"),
                "NEC Table 430.7(B)",
                false)));
        }

        if (Usable(PlateDatum.LockedRotorTorque, plate.LockedRotorTorqueRatio) is { } torque)
        {
            data.Add(new(PlateDatum.LockedRotorTorque, torque, circuit => Locked(circuit, point).DevelopedTorque_Nm / point.Torque_Nm));
        }

        return data;
    }

    /// <summary>What is printed and cannot be, beside what the circuit has.</summary>
    internal static IEnumerable<GivenUp> NotBelieved(IReadOnlyList<FitResidual> residuals) =>
        from residual in residuals
        where residual.Datum is PlateDatum.LockedRotorCurrent or PlateDatum.CodeLetter or PlateDatum.LockedRotorTorque or PlateDatum.BreakdownTorque
            && !StartingLimits.Believes(residual.Datum, residual.Plate)
        let limits = StartingLimits.Of(residual.Datum)
        select new GivenUp(residual.Datum, residual.Plate, residual.Circuit, string.Create(CultureInfo.InvariantCulture, $"no cage motor has it below {limits.Low:0.##} or above {limits.High:0.##} times rated: misread"));

    private static double? Usable(PlateDatum datum, double? ratio) => ratio is { } value && StartingLimits.Believes(datum, value) ? value : null;

    private static PhaseFlow Locked(EquivalentCircuit circuit, RatedPoint point) => new PhaseCircuit(circuit, point.Frequency_Hz).At(point.Phase_V, 1);
}
