using Runup.Quantities;

namespace Runup.Engineering.Motors.Ensemble;

/// <summary>What the motors of an ensemble do at rated voltage and frequency, as bands.</summary>
/// <remarks>
/// Torques over each motor's rated shaft torque, locked-rotor current over its rated current. Locked-rotor and breakdown torque are taken at the air gap; the
/// no-load current is that of the uncoupled motor, which turns its own friction.
/// </remarks>
public sealed record MotorBands
{
    /// <summary>Full-load shaft torque.</summary>
    public required Band<Torque> RatedTorque { get; init; }

    /// <summary>Full-load current.</summary>
    public required Band<LineCurrent> RatedCurrent { get; init; }

    /// <summary>Full-load power factor.</summary>
    public required Band<PowerFactor> RatedPowerFactor { get; init; }

    /// <summary>Full-load efficiency.</summary>
    public required Band<Efficiency> RatedEfficiency { get; init; }

    /// <summary>Current of the uncoupled motor.</summary>
    public required Band<LineCurrent> NoLoadCurrent { get; init; }

    /// <summary>Locked-rotor current over rated current.</summary>
    public required Band<Ratio> LockedRotorCurrentRatio { get; init; }

    /// <summary>Locked-rotor torque over rated torque.</summary>
    public required Band<Ratio> LockedRotorTorqueRatio { get; init; }

    /// <summary>Breakdown torque over rated torque.</summary>
    public required Band<Ratio> BreakdownTorqueRatio { get; init; }

    /// <summary>The bands of an ensemble.</summary>
    public static MotorBands Of(MotorEnsemble ensemble)
    {
        Band<T> Over<T>(MemberFigure figure, Func<double, T> make) =>
            (ensemble.Band(figure) ?? throw new System.Diagnostics.UnreachableException()).As(make);
        return new MotorBands
        {
            RatedTorque = Over((in MotorMember member) => member.RatedTorque_Nm, Torque.FromNewtonMetres),
            RatedCurrent = Over((in MotorMember member) => member.Current_A, LineCurrent.FromAmperes),
            RatedPowerFactor = Over((in MotorMember member) => member.PowerFactor, PowerFactor.FromRatio),
            RatedEfficiency = Over((in MotorMember member) => member.Efficiency, Efficiency.FromRatio),
            NoLoadCurrent = Over((in MotorMember member) => member.Uncoupled(member.Phase_V, member.Frequency_Hz).Current_A, LineCurrent.FromAmperes),
            LockedRotorCurrentRatio = Over((in MotorMember member) => member.LockedRotorCurrent, Ratio.FromValue),
            LockedRotorTorqueRatio = Over((in MotorMember member) => member.LockedRotorTorque, Ratio.FromValue),
            BreakdownTorqueRatio = Over((in MotorMember member) => member.BreakdownTorque, Ratio.FromValue),
        };
    }
}
