using System.Runtime.InteropServices;

namespace Runup.Engineering.Motors.Ensemble;

/// <summary>One motor that the plate may stand for, as bare numbers per phase of the star equivalent.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct MotorMember
{
    internal required CircuitValues Values { get; init; }

    internal required double Phase_V { get; init; }

    internal required double Output_W { get; init; }

    internal required double Current_A { get; init; }

    internal required double PowerFactor { get; init; }

    internal required double Efficiency { get; init; }

    internal required double Slip { get; init; }

    /// <summary>Total leakage at the rated point over V/I.</summary>
    internal required double Leakage { get; init; }

    /// <summary>Temperature of the winding at which the stator resistance holds.</summary>
    internal required double Warm_C { get; init; }

    /// <summary>Leakage that is left at the current of a locked rotor on rated voltage, over that at rated current: the teeth's tips saturate.</summary>
    internal required double LeakageLeft { get; init; }

    internal double Frequency_Hz => Values.RatedFrequency_Hz;

    internal double RatedTorque_Nm => Output_W / (SynchronousSpeed_radPerS * (1 - Slip));

    internal double SynchronousSpeed_radPerS => 2 * Math.PI * Values.RatedFrequency_Hz / Values.PolePairs;

    internal PhaseCircuit Rated => new(Values, Values.RatedFrequency_Hz);

    /// <summary>With the leakage of a locked rotor on rated voltage.</summary>
    private PhaseCircuit Locked => new(
        Values with
        {
            StatorLeakage_ohm = LeakageLeft * Values.StatorLeakage_ohm,
            RotorLeakage_ohm = LeakageLeft * Values.RotorLeakage_ohm,
            SecondRotorLeakage_ohm = LeakageLeft * Values.SecondRotorLeakage_ohm,
        },
        Values.RatedFrequency_Hz);

    /// <summary>Locked-rotor current over rated current.</summary>
    internal double LockedRotorCurrent => Locked.At(Phase_V, 1).Current_A / Current_A;

    /// <summary>Locked-rotor torque over rated torque.</summary>
    internal double LockedRotorTorque => Locked.At(Phase_V, 1).DevelopedTorque_Nm / RatedTorque_Nm;

    /// <summary>Breakdown torque over rated torque.</summary>
    internal double BreakdownTorque => Breakdown.Largest(Rated, Phase_V, 1).Torque_Nm / RatedTorque_Nm;

    /// <summary>Leakage that a quick change meets: in the middle, as a geometric mean, between that at the rated slip and that with all of the bars' field gone.</summary>
    internal double TransientLeakage_ohm
    {
        get
        {
            var atRated = Leakage * Phase_V / Current_A;
            var rotorAtOnce = Values.SecondRotor_ohm > 0
                ? Values.RotorLeakage_ohm * Values.SecondRotorLeakage_ohm / (Values.RotorLeakage_ohm + Values.SecondRotorLeakage_ohm)
                : Values.RotorLeakage_ohm;
            return Math.Sqrt(atRated * (Values.StatorLeakage_ohm + rotorAtOnce));
        }
    }

    /// <summary>The motor that turns only itself.</summary>
    internal PhaseFlow Uncoupled(double phase_V, double frequency_Hz) => Running.At(new PhaseCircuit(Values, frequency_Hz), phase_V);
}
