using Runup.Dynamics.Integration;
using Runup.Dynamics.Lanes;
using Runup.Dynamics.Plant;
using Runup.Engineering.Loads;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Dynamics;

/// <summary>A start straight on a stiff supply, without a drive: the plain motor, integrated with chosen accuracy.</summary>
/// <remarks>
/// Voltage and frequency are constant from the moment of switching; the motor's fields are dead then. Relative tolerance of a step 1e-9.
/// The moment within the period at which the switch closes does not matter to amplitude of current, torque and speed.
/// </remarks>
public sealed class LineStart
{
    private const double RelativeTolerance = 1e-9;
    private const double AbsoluteTolerance = 1e-10;
    private const double LongestOnTableS = 1e-4;

    private readonly DormandPrince stepper = new(RelativeTolerance, AbsoluteTolerance);
    private DriveRates<One> rates;
    private SixStates<One> states;
    private double timeS;

    /// <summary>Makes the motor just switched on.</summary>
    /// <param name="motor">The motor.</param>
    /// <param name="machine">What turns with its shaft.</param>
    /// <param name="voltage">Of the supply.</param>
    /// <param name="frequency">Of the supply.</param>
    /// <param name="turning">Speed at that moment; negative where the supply's field turns against it, as in plugging.</param>
    /// <exception cref="ArgumentException">Inertia, a resistance or a reactance is zero.</exception>
    public LineStart(EquivalentCircuit motor, DrivenMachine machine, LineVoltage voltage, ElectricalFrequency frequency, ShaftSpeed turning = default)
    {
        ArgumentNullException.ThrowIfNull(motor);
        ArgumentNullException.ThrowIfNull(machine);
        SystemCheck.Require([.. SystemCheck.OfMotor(motor), .. SystemCheck.OfMachine(machine, motor)], nameof(motor));
        rates = new DriveRates<One>([motor]) { Fed = LaneSet.Every<One>() };
        rates.FrameRadPerS = frequency.RadiansPerSecond;
        rates.Share = rates.Machine.ShareAt(rates.FrameRadPerS);
        rates.Shaft = new Shaft<One>([new ShaftLoad(machine, motor)]);

        // The supply stands in for the bus: a sixth state that nothing changes, the peak of the phase voltage.
        rates.ModulationQ = 1;
        states.X6 = voltage.Phase.Volts * Math.Sqrt(2);
        states.X5 = turning.RadiansPerSecond;
        rates.Move(0, Math.Sign(turning.RadiansPerSecond));
    }

    /// <summary>Time since switching on.</summary>
    public Duration Time => Duration.FromSeconds(timeS);

    /// <summary>Stator current, rms of a sine of its present amplitude.</summary>
    public LineCurrent Current => LineCurrent.FromAmperes(Currents.StatorRmsA);

    /// <summary>Power from the supply.</summary>
    public ElectricalPower Input => ElectricalPower.FromWatts(1.5 * (double)states.X6 * Currents.QsA);

    /// <summary>Developed torque.</summary>
    public Torque Torque => Torque.FromNewtonMetres(rates.DrivingTorqueNm(states));

    /// <summary>Speed of the shaft.</summary>
    public ShaftSpeed Speed => ShaftSpeed.FromRadiansPerSecond(states.X5);

    internal MachineCurrents<One> Currents => rates.Machine.Currents(rates.Share, states.X1, states.X2, states.X3, states.X4);

    internal SixStates<One> States
    {
        get => states;
        set => states = value;
    }

    internal DriveRates<One> Rates => rates;

    /// <summary>Lets so much time pass.</summary>
    /// <exception cref="InvalidOperationException">The states left the range of numbers.</exception>
    public void Advance(Duration length)
    {
        var before = states;
        var pieces = rates.Shaft.HasTables ? Math.Max(1, (int)Math.Ceiling(length.Seconds / LongestOnTableS)) : 1;
        for (var piece = 0; piece < pieces; piece++)
        {
            rates.Shaft.FollowTables(states.X5);
            ShaftMotion.Advance<DormandPrince, DriveRates<One>, One>(stepper, ref rates, ref states, length.Seconds / pieces);
        }

        if (!states.Finite.IsSet(0))
        {
            states = before;
            throw new InvalidOperationException($"The run leaves the range of numbers after {timeS:g4} s.");
        }

        timeS += length.Seconds;
    }
}
