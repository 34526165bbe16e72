using System.Numerics;
using Runup.Dynamics;
using Runup.Engineering.Loads;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Outside.Tests.Dynamics;

/// <summary>Start and plugging of two textbook motors against exact integrations of their circuits' torque (worked examples E1 and E2, re-solved).</summary>
/// <remarks>
/// The integrations take the torque of the steady circuit at each speed. With a hundred times the inertia, and fields that are settled at the start, these
/// follow at every speed: a hundredth of the engine's time is then to be theirs. Dubey Ex. 6.7 p. 176; Gupta and Singhal Ex. 6.7 p. 169 (circuits read in public transcriptions;
/// the times integrated by another program).
/// </remarks>
public sealed class SlowStartTests
{
    private const double Slowly = 100;

    [Theory]
    [InlineData(2200, 6, 0.075, 0.5, 0.12, 100, 1.061)]
    [InlineData(400, 8, 0.1, 0.4, 0.1, 10, 1.439)]
    public void A_start_to_a_slip_of_five_per_cent_takes_as_long(double volts, int poles, double rs, double leakage, double rr, double inertia, double seconds)
    {
        var start = Start(volts, poles, rs, leakage, rr, inertia, slip: 1);

        TimeTo(start, 0.95 * 6000 / poles).ShouldBe(Slowly * seconds, 0.002 * Slowly * seconds);
    }

    [Theory]
    [InlineData(2200, 6, 0.075, 0.5, 0.12, 100, 2.901)]
    [InlineData(400, 8, 0.1, 0.4, 0.1, 10, 3.863)]
    public void Plugging_to_rest_takes_as_long(double volts, int poles, double rs, double leakage, double rr, double inertia, double seconds)
    {
        var start = Start(volts, poles, rs, leakage, rr, inertia, slip: 2);

        TimeTo(start, 0).ShouldBe(Slowly * seconds, 0.002 * Slowly * seconds);
    }

    private static double TimeTo(LineStart start, double rpm)
    {
        double beforeS = 0, beforeRpm = start.Speed.Rpm;
        while (start.Speed.Rpm < rpm)
        {
            (beforeS, beforeRpm) = (start.Time.Seconds, start.Speed.Rpm);
            start.Advance(Duration.FromSeconds(0.05));
        }

        return beforeS + ((start.Time.Seconds - beforeS) * (rpm - beforeRpm) / (start.Speed.Rpm - beforeRpm));
    }

    private static LineStart Start(double volts, int poles, double rs, double leakage, double rr, double inertia, double slip)
    {
        // No magnetizing branch in these examples: one so large that it carries nothing.
        var motor = new EquivalentCircuit
        {
            RatedVoltage = LineVoltage.FromVolts(volts),
            RatedFrequency = ElectricalFrequency.FromHertz(50),
            Poles = PoleCount.FromPoles(poles),
            StatorResistance = Resistance.FromOhms(rs),
            StatorLeakage = Reactance.FromOhms(leakage),
            Magnetizing = Reactance.FromOhms(1e7),
            RotorLeakage = Reactance.FromOhms(leakage),
            RotorResistance = Resistance.FromOhms(rr),
        };
        var machine = new DrivenMachine
        {
            Load = new LoadCurve.Constant(Torque.FromNewtonMetres(0)),
            MachineInertia = Inertia.FromKilogramSquareMetres(0),
            MotorInertia = Inertia.FromKilogramSquareMetres(Slowly * inertia),
        };
        var start = new LineStart(motor, machine, motor.RatedVoltage, motor.RatedFrequency, ShaftSpeed.FromRpm((1 - slip) * 6000 / poles));
        var volt = motor.RatedVoltage.Phase.Volts * Math.Sqrt(2);
        var radPerS = motor.RatedFrequency.RadiansPerSecond;
        var current = volt / new Complex(rs + (rr / slip), 2 * leakage);
        var stator = (volt - (rs * current)) / new Complex(0, radPerS);
        var rotor = rr * current / new Complex(0, slip * radPerS);
        start.States = start.States with { X1 = stator.Real, X2 = -stator.Imaginary, X3 = rotor.Real, X4 = -rotor.Imaginary };
        return start;
    }
}
