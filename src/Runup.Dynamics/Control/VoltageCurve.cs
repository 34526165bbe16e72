using System.Runtime.CompilerServices;
using Runup.Dynamics.Lanes;
using Runup.Engineering.Drives;

namespace Runup.Dynamics.Control;

/// <summary>Output voltage against frequency: V/f with boost, as <see cref="VoltsPerHertz"/> defines it.</summary>
/// <remarks>Below base frequency U = U_max·xⁿ + b·U_N·(1 − x) with x = f/f_b: a polynomial of x, so that all members take it at once.</remarks>
internal sealed class VoltageCurve<T>(ControlSettings settings)
    where T : struct, ILanes<T>
{
    private readonly double perBaseHz = 1 / settings.BaseFrequency.Hertz;
    private readonly double boostV = settings.TorqueBoost.Ratio * settings.MotorRatedVoltage.Volts;
    private readonly double mostV = settings.MaximumOutputVoltage.Volts;
    private readonly bool quadratic = settings.VoltageShape == VoltageShape.Quadratic;

    /// <summary>Voltage, line to line, rms, in V.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal T At(T frequencyHz)
    {
        var x = T.Min(perBaseHz * T.Abs(frequencyHz), T.Of(1));
        var shaped = quadratic ? x * x : x;
        return LaneSet.Clamp((mostV * shaped) + (boostV * (T.Of(1) - x)), default, T.Of(mostV));
    }
}
