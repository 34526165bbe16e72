using System.Numerics;

namespace Runup.Dynamics.Plant;

/// <summary>States of the detailed plant, or their rates.</summary>
/// <param name="Stator">Flux of the stator, in Wb.</param>
/// <param name="First">Flux of the first cage.</param>
/// <param name="Second">Flux of the second cage; unused where there is one.</param>
/// <param name="MotorRadPerS">Speed of the rotor.</param>
/// <param name="LoadRadPerS">Speed of the machine, at the motor's side of the gear.</param>
/// <param name="TwistRad">Twist of the shaft between them.</param>
/// <param name="BusV">DC bus.</param>
/// <param name="AngleRad">By how much the control's frame stands before one at rest.</param>
internal readonly record struct DetailedStates(Complex Stator, Complex First, Complex Second, double MotorRadPerS, double LoadRadPerS, double TwistRad, double BusV, double AngleRad = 0)
{
    internal bool IsFinite => double.IsFinite(Stator.Real + Stator.Imaginary + First.Real + First.Imaginary + Second.Real + Second.Imaginary + MotorRadPerS + LoadRadPerS + TwistRad + BusV);

    /// <summary>These states and a length of time at other rates.</summary>
    internal DetailedStates After(double lengthS, in DetailedStates rates) => new(
        Stator + (lengthS * rates.Stator),
        First + (lengthS * rates.First),
        Second + (lengthS * rates.Second),
        MotorRadPerS + (lengthS * rates.MotorRadPerS),
        LoadRadPerS + (lengthS * rates.LoadRadPerS),
        TwistRad + (lengthS * rates.TwistRad),
        BusV + (lengthS * rates.BusV),
        AngleRad + (lengthS * rates.AngleRad));
}
