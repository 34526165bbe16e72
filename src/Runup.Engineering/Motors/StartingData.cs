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
        if (Usable(plate.BreakdownTorqueRatio, 1) is { } breakdown)
        {
            data.Add(new(PlateDatum.BreakdownTorque, breakdown, circuit => Breakdown.Largest(new PhaseCircuit(circuit, point.Frequency_Hz), point.Phase_V, 1).Torque_Nm / point.Torque_Nm));
        }

        if (Usable(plate.LockedRotorCurrentRatio, 1) is { } current)
        {
            data.Add(new(PlateDatum.LockedRotorCurrent, current, circuit => Locked(circuit, point).Current_A / point.Current_A));
        }
        else if (Usable(FitResidual.CodeLetterRatio(plate), 1) is { } fromLetter)
        {
            data.Add(new(PlateDatum.CodeLetter, fromLetter, circuit => Locked(circuit, point).Current_A / point.Current_A, new Assumption(
                $"locked-rotor current over rated current (middle of code letter {plate.CodeLetter})",
                string.Create(CultureInfo.InvariantCulture, $"{fromLetter:F2}"),
                "NEC Table 430.7(B)",
                false)));
        }

        if (Usable(plate.LockedRotorTorqueRatio, 0.1) is { } torque)
        {
            data.Add(new(PlateDatum.LockedRotorTorque, torque, circuit => Locked(circuit, point).DevelopedTorque_Nm / point.Torque_Nm));
        }

        return data;
    }

    private static double? Usable(double? ratio, double above) => ratio > above && ratio < 100 ? ratio : null;

    private static PhaseFlow Locked(EquivalentCircuit circuit, RatedPoint point) => new PhaseCircuit(circuit, point.Frequency_Hz).At(point.Phase_V, 1);
}
