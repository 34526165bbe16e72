using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;
using Runup.Engineering;

namespace Runup.Dynamics.Control;

/// <summary>The drive's thermal model of the motor, of one time constant.</summary>
/// <remarks>
/// τ·dθ/dt = (I/I_r)² − θ, trip at θ = k². With k² = 1.05·1.2 the model holds at 1.05·I_r and trips at 1.2·I_r for every class; τ is chosen so that 7.2·I_r
/// from cold trips at 0.8 of the class's longest time, which lies within all limits of the standard, that after equilibrium at I_r included. Reduced
/// cooling at low speed is left out: no curve without a source.
/// </remarks>
[Source("iec-60947-4-1", "tables 2 to 4, limits of operation (partly from memory)")]
internal sealed class MotorThermalModel<T>
    where T : struct, ILanes<T>
{
    private const double TripLevel = 1.05 * 1.2;
    private const double ClassMultiple = 7.2;
    private const double ShareOfClassTime = 0.8;

    private double perTimeConstant;
    private double perCurrentA;
    private T state;

    internal MotorThermalModel(ControlSettings settings) => Configure(settings);

    /// <summary>Thermal state, 1 trips.</summary>
    internal T PartOfTrip => (1 / TripLevel) * state;

    /// <summary>Set where it is at the trip level.</summary>
    internal T Exceeded
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => T.Not(T.Less(state, T.Of(TripLevel)));
    }

    internal void Configure(ControlSettings settings)
    {
        const double Square = ClassMultiple * ClassMultiple;
        perTimeConstant = Math.Log(Square / (Square - TripLevel)) / (ShareOfClassTime * settings.OverloadTripTime.Seconds);
        perCurrentA = 1 / settings.MotorOverloadCurrent.Amperes;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Sample(T currentA)
    {
        var ratio = perCurrentA * currentA;
        state += (perTimeConstant * ControlFigures.TickS) * ((ratio * ratio) - state);
    }
}
