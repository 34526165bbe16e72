using System.Runtime.InteropServices;

namespace Runup.Engineering.Motors;

/// <summary>The rated point that a circuit has to reproduce, as bare numbers per phase of the star equivalent.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct RatedPoint
{
    internal required double Output_W { get; init; }

    internal required double Phase_V { get; init; }

    internal required double Current_A { get; init; }

    internal required double Frequency_Hz { get; init; }

    internal required int PolePairs { get; init; }

    internal required double Slip { get; init; }

    internal required double PowerFactor { get; init; }

    internal required double Efficiency { get; init; }

    internal double Input_W => 3 * Phase_V * Current_A * PowerFactor;

    internal double SynchronousSpeed_radPerS => 2 * Math.PI * Frequency_Hz / PolePairs;

    internal double Torque_Nm => Output_W / (SynchronousSpeed_radPerS * (1 - Slip));
}
