using Runup.Engineering.Standards;

namespace Runup.Engineering.Motors.Ensemble;

/// <summary>What a plate or catalogue prints beside the rated point, as evidence.</summary>
/// <remarks>
/// Tolerances: locked-rotor current +20 %, locked-rotor torque −15 % to +25 %, breakdown torque −10 %. Assumed: normal, the tolerance being two standard
/// deviations; upward for the breakdown torque as for the locked-rotor torque; downward for the locked-rotor current as upward. To each, 4 % for what a circuit
/// of constants leaves out; where the plate is exact, 1.5 % in place of all.
/// </remarks>
[Source("iec-60034-1", "schedule of tolerances")]
[Source("iec-60034-12", "design N, minimum torques")]
internal static class PlateEvidence
{
    private const double LetterEdge = 0.03;
    private const double LimitEdge = 0.08;

    // A limit has one end; the other is out of reach.
    private const double Beyond = 10;

    // What a circuit of constants leaves out: hand rounding in a textbook; saturated leakage and the like in a motor.
    private const double ExactModel = 0.015;
    private const double RealModel = 0.04;

    internal static IReadOnlyList<IEvidence> Of(Nameplate plate, PlateTrust trust)
    {
        var exact = trust == PlateTrust.Exact;
        var found = new List<IEvidence>();
        void Add(MemberFigure of, double printed, double below, double above)
        {
            var left = exact ? ExactModel : RealModel;
            double With(double tolerance) => exact ? left : double.Hypot(tolerance / 2, left);
            found.Add(new FigureEvidence(of, printed, With(below), With(above)));
        }

        if (Usable(PlateDatum.LockedRotorCurrent, plate.LockedRotorCurrentRatio) is { } current)
        {
            Add((in MotorMember member) => member.LockedRotorCurrent, current, 0.20, 0.20);
        }
        else if (plate.CodeLetter is { } letter && CodeLetter.Of(letter) is { Below: not null } code)
        {
            var (low, high) = code.LockedRotorCurrents(plate.Output, plate.Voltage);
            var rated = plate.Current.Amperes;
            if (Usable(PlateDatum.CodeLetter, high!.Value.Amperes / rated) is not null)
            {
                found.Add(new BandEvidence((in MotorMember member) => member.LockedRotorCurrent, Math.Max(low.Amperes / rated, 0.5), high.Value.Amperes / rated, LetterEdge));
            }
        }

        if (Usable(PlateDatum.LockedRotorTorque, plate.LockedRotorTorqueRatio) is { } starting)
        {
            Add((in MotorMember member) => member.LockedRotorTorque, starting, 0.15, 0.25);
        }

        if (Usable(PlateDatum.BreakdownTorque, plate.BreakdownTorqueRatio) is { } breakdown)
        {
            Add((in MotorMember member) => member.BreakdownTorque, breakdown, 0.10, 0.25);
        }

        Promised(plate, found);
        return found;
    }

    /// <summary>What the design letter promises and the plate does not print: least torques, largest current, each with an edge of 8 %.</summary>
    private static void Promised(Nameplate plate, List<IEvidence> found)
    {
        if (DesignLimits.Of(plate.DesignLetter, plate.Output, plate.Poles, plate.Voltage) is not { } limits)
        {
            return;
        }

        if (limits.LockedRotorTorque is { } starting && Usable(PlateDatum.LockedRotorTorque, plate.LockedRotorTorqueRatio) is null)
        {
            found.Add(new BandEvidence((in MotorMember member) => member.LockedRotorTorque, starting.Value, Beyond * starting.Value, LimitEdge));
        }

        if (limits.BreakdownTorque is { } breakdown && Usable(PlateDatum.BreakdownTorque, plate.BreakdownTorqueRatio) is null)
        {
            found.Add(new BandEvidence((in MotorMember member) => member.BreakdownTorque, breakdown.Value, Beyond * breakdown.Value, LimitEdge));
        }

        if (limits.LockedRotorCurrent is { } current && Usable(PlateDatum.LockedRotorCurrent, plate.LockedRotorCurrentRatio) is null && plate.CodeLetter is null)
        {
            var largest = current.Amperes / plate.Current.Amperes;
            found.Add(new BandEvidence((in MotorMember member) => member.LockedRotorCurrent, largest / Beyond, largest, LimitEdge));
        }
    }

    private static double? Usable(PlateDatum datum, double? ratio) => ratio is { } value && StartingLimits.Believes(datum, value) ? value : null;
}
