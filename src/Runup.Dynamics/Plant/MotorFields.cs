using System.Numerics;

namespace Runup.Dynamics.Plant;

/// <summary>The detailed motor at the inverter's output, in a frame of its own choice.</summary>
internal abstract class MotorFields(DetailedMachine machine, double strayPerSpeed, double busF)
{
    /// <summary>The inverter switches.</summary>
    internal bool Fed { get; private protected set; }

    /// <summary>Peak of the phase voltage over the bus voltage, q − j·d in the control's frame.</summary>
    internal Complex Modulation { get; set; }

    /// <summary>Speed of the control's frame.</summary>
    internal double FrameRadPerS { get; set; }

    private protected DetailedMachine Machine => machine;

    /// <summary>Rates at some states.</summary>
    internal abstract FieldRates At(in DetailedStates x);

    /// <summary>Output current of the drive in the control's frame, q − j·d, a peak of the phase.</summary>
    internal abstract Complex OutputA(in DetailedStates x);

    /// <summary>Sum of the three output currents.</summary>
    internal virtual double ResidualA(in DetailedStates x) => 0;

    /// <summary>Largest of the three output currents and their vector, a peak of the phase.</summary>
    internal virtual double LargestA(in DetailedStates x) => OutputA(x).Magnitude;

    /// <summary>Developed torque, in N·m.</summary>
    internal abstract double TorqueNm(in DetailedStates x);

    /// <summary>Switches the inverter on or off: the states after it.</summary>
    internal abstract DetailedStates Switch(in DetailedStates x, bool on);

    // Proportional to speed and to the square of the current.
    private protected double DrivingNm(double torqueNm, Complex statorA, double speedRadPerS) =>
        torqueNm - (strayPerSpeed * statorA.Magnitude * statorA.Magnitude * speedRadPerS);

    // A current that flowed dies out through the diodes; the energy of its field goes to the bus.
    private protected double BusAfter(double busV, double currentA) =>
        Math.Sqrt((busV * busV) + (1.5 * machine.TransientH * currentA * currentA / busF));
}
