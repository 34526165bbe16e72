using System.Numerics;

namespace Runup.Dynamics.Plant;

/// <summary>The motor behind a fault of its conductors, with its fluxes in a frame at rest, whose real axis is that of phase U.</summary>
/// <remarks>
/// <para>
/// Phase k is x·e^(−jα_k), α = 0, 2π/3, −2π/3. A phase that is open carries no current: on its axis the stator has no circuit, iu = 0, and on the axis across it pλs = v − rs·is
/// with the voltage between the other two; star point isolated. A fault to earth takes i = v_k/R, one between phases i = (v_k − v_l)/R, from the inverter's mean voltages about the middle of
/// the bus, which lies at earth's potential as the mean of a rectifier on an earthed supply does; the motor's own currents know nothing of either. With the output off two phases that touch
/// close a circuit for the motor: pλs = −(rs + R/2)·is on the axis between them.
/// </para>
/// <para>
/// A transistor carries only a few times the current of its trip level (from memory): a fault takes at most <c>mostA</c>. No inductance of the cable, no arc, no capacitance to earth.
/// </para>
/// </remarks>
internal sealed class FaultyFields : MotorFields
{
    // A dead fault, of conductors and transistors.
    private const double LeastOhm = 1e-3;

    private static readonly Complex[] Axes = [.. new[] { 0, 2, -2 }.Select(thirds => Complex.FromPolarCoordinates(1, thirds * Math.PI / 3))];

    private readonly OutputFault fault;
    private readonly bool supplyEarthed;
    private readonly double mostA;
    private StatorAxes axes;

    internal FaultyFields(OutputFault fault, bool supplyEarthed, double mostA, DetailedMachine machine, double strayPerSpeed, double busF)
        : base(machine, strayPerSpeed, busF)
    {
        (this.fault, this.supplyEarthed, this.mostA) = (fault, supplyEarthed, mostA);
        axes = With(fed: false);
    }

    /// <summary>What a phase carries of the sum of vector and residual current.</summary>
    internal static double PhaseA(Complex vectorA, double residualA, OutputPhase phase) =>
        (vectorA * Complex.Conjugate(Axes[(int)phase])).Real + (residualA / 3);

    /// <summary>The same states at rest, as the fault leaves them: a current that can't flow on is gone at once, into the arc where a conductor breaks.</summary>
    internal DetailedStates Take(in DetailedStates turning, bool fed)
    {
        var turn = Complex.FromPolarCoordinates(1, turning.AngleRad);
        var x = turning with { Stator = turning.Stator * turn, First = turning.First * turn, Second = turning.Second * turn };
        (Fed, axes) = (fed, With(fed));
        return fed ? x : x with { Stator = Machine.AtRest(x, default, default).Magnetizing };
    }

    /// <summary>The same states in the control's frame, for a motor whose conductors are whole again.</summary>
    internal DetailedStates Give(in DetailedStates x)
    {
        var turn = Complex.FromPolarCoordinates(1, -x.AngleRad);
        var stator = Whole(x, Magnetizing(x));
        return x with { Stator = Fed ? stator * turn : default, First = x.First * turn, Second = x.Second * turn };
    }

    /// <inheritdoc/>
    internal override FieldRates At(in DetailedStates x)
    {
        var volts = Volts(x);
        var rates = Machine.AtRest(x, axes, Fed ? volts : default);
        var outputA = Fed ? rates.StatorA + FaultA(volts).Vector : default;
        return new FieldRates(
            rates.Stator,
            rates.First,
            rates.Second,
            axes.AnyClosed ? DrivingNm(rates.TorqueNm, rates.StatorA, x.MotorRadPerS) : 0,
            Fed ? 1.5 * (volts * Complex.Conjugate(outputA)).Real / Math.Max(x.BusV, 1) : 0);
    }

    /// <inheritdoc/>
    internal override Complex OutputA(in DetailedStates x) => VectorA(x) * Complex.FromPolarCoordinates(1, -x.AngleRad);

    /// <inheritdoc/>
    internal override double ResidualA(in DetailedStates x) => Fed ? FaultA(Volts(x)).Residual : 0;

    /// <inheritdoc/>
    internal override double LargestA(in DetailedStates x)
    {
        var (vector, residual) = (VectorA(x), ResidualA(x));
        return Math.Max(
            Math.Abs(PhaseA(vector, residual, OutputPhase.U)),
            Math.Max(Math.Abs(PhaseA(vector, residual, OutputPhase.V)), Math.Abs(PhaseA(vector, residual, OutputPhase.W))));
    }

    /// <inheritdoc/>
    internal override double TorqueNm(in DetailedStates x) => axes.AnyClosed ? Machine.AtRest(x, axes, Fed ? Volts(x) : default).TorqueNm : 0;

    /// <inheritdoc/>
    internal override DetailedStates Switch(in DetailedStates x, bool on)
    {
        if (on == Fed)
        {
            return x;
        }

        var magnetizing = Magnetizing(x);
        var (was, next) = (axes, With(on));
        var (flux, current) = (Whole(x, magnetizing), was.From(Machine.StatorA(x.Stator, magnetizing, was)));
        var ended = current - next.Closed(current);
        (Fed, axes) = (on, next);
        return x with { Stator = flux, BusV = BusAfter(x.BusV, ended.Magnitude) };
    }

    // Where the stator has no circuit its flux is that of the magnetizing branch.
    private Complex Whole(in DetailedStates x, Complex magnetizing)
    {
        var (stator, own) = (axes.From(x.Stator), axes.From(magnetizing));
        return axes.ToRest(new Complex(axes.AlongClosed ? stator.Real : own.Real, axes.AcrossClosed ? stator.Imaginary : own.Imaginary));
    }

    private StatorAxes With(bool fed) => fault switch
    {
        OutputFault.PhaseOpen open => new StatorAxes(Axes[(int)open.Phase], false, fed),
        OutputFault.BetweenPhases { Phase: var a, Other: var b } between when a != b =>
            new StatorAxes(Axes[3 - (int)a - (int)b], fed, true, fed ? 0 : 0.5 * between.Resistance.Ohms),
        _ => new StatorAxes(Axes[0], fed, fed),
    };

    private Complex Volts(in DetailedStates x) => Modulation * x.BusV * Complex.FromPolarCoordinates(1, x.AngleRad);

    private Complex Magnetizing(in DetailedStates x) => Machine.AtRest(x, axes, Fed ? Volts(x) : default).Magnetizing;

    private Complex VectorA(in DetailedStates x)
    {
        if (!Fed)
        {
            return default;
        }

        var volts = Volts(x);
        return Machine.AtRest(x, axes, volts).StatorA + FaultA(volts).Vector;
    }

    private (Complex Vector, double Residual) FaultA(Complex volts)
    {
        switch (fault)
        {
            case OutputFault.ToEarth earth when supplyEarthed:
                var residual = Through(earth.Resistance.Ohms, PhaseA(volts, 0, earth.Phase));
                return (2.0 / 3 * residual * Axes[(int)earth.Phase], residual);
            case OutputFault.BetweenPhases between when between.Phase != between.Other:
                var current = Through(between.Resistance.Ohms, PhaseA(volts, 0, between.Phase) - PhaseA(volts, 0, between.Other));
                return (2.0 / 3 * current * (Axes[(int)between.Phase] - Axes[(int)between.Other]), 0);
            default:
                return default;
        }
    }

    private double Through(double ohms, double volts) => Math.Clamp(volts / Math.Max(ohms, LeastOhm), -mostA, mostA);
}
