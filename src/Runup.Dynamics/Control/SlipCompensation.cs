using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;

namespace Runup.Dynamics.Control;

/// <summary>Raises the output frequency by the slip that the load causes.</summary>
/// <remarks>f_c = share · f_slip,N · I_active/(I_N·cosφ_N), through a filter of 0.1 s, which keeps the loop of current and frequency slow.</remarks>
internal sealed class SlipCompensation<T>(ControlFigures figures)
    where T : struct, ILanes<T>
{
    private const double FilterS = 0.1;
    private readonly double share = figures.Settings.SlipCompensation.Ratio;
    private readonly double perRatedActiveA = 1 / (figures.MotorA * figures.Settings.MotorPowerFactor.Ratio);

    /// <summary>What is added to the frequency, in Hz, in the direction of motion.</summary>
    internal T AddedHz { get; private set; }

    internal void Reset(T where) => AddedHz = T.Choose(where, default, AddedHz);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Sample(in Measurement<T> measured)
    {
        if (share <= 0)
        {
            return;
        }

        var wanted = (share * figures.RatedSlipHz) * LaneSet.Clamp(perRatedActiveA * measured.ActiveA, T.Of(-2), T.Of(2));
        AddedHz = T.MultiplyAdd(T.Of(ControlFigures.TickS / FilterS), wanted - AddedHz, AddedHz);
    }
}
