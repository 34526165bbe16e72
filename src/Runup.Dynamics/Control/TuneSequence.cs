using System.Numerics;
using Runup.Dynamics.Lanes;
using Runup.Dynamics.Plant;
using Runup.Quantities;

namespace Runup.Dynamics.Control;

/// <summary>Auto-tune: direct current for the stator's resistance, an alternating voltage on one axis at two frequencies for the rest, and a run without load.</summary>
/// <remarks>
/// With all leakage on the stator's side Z = Rs + jω·Lσ + 1/(1/Rr + 1/(jω·Lm)). Rs = ΔV/ΔI of two direct currents; Lσ from the higher frequency, Rr and Lm from the lower, where the
/// rotor's branch shows, in turn until they agree. Without load the branch's susceptance is 1/(ω·Lm) whatever the slip: Lm at the flux at which the motor will work.
/// Currents of the test as shares of the motor's, and its times, were found by trial on motors from 0.75 to 75 kW.
/// </remarks>
internal sealed class TuneSequence
{
    private const double LowA = 0.4;
    private const double HighA = 0.8;
    private const double SettledAPerS = 0.002;
    private const double LongestDirectS = 8;

    // Of the direct current: with one phase open the other two put more than half of it across.
    private const double MostAcross = 0.3;
    private const double LongestRotorS = 2.5;
    private const double AlternatingA = 0.5;
    private const double RunShare = 0.8;
    private const double SettleRunS = 2;

    private readonly ControlFigures figures;
    private readonly VoltageCurve<One> curve;
    private readonly AutoTune kind;
    private readonly double radPerS;
    private readonly List<(double V, double A)> direct = [];
    private Impedance? high;
    private Impedance? low;
    private readonly double rotorS;
    private readonly double lowHz;
    private double directV;
    private double directS;
    private double lastA;
    private double quietS;
    private double statorOhm;
    private double leakageH;
    private double rotorOhm;
    private double magnetizingH;
    private double runHz;
    private double atSpeedS;
    private bool slowing;

    internal TuneSequence(AutoTune kind, ControlFigures figures)
    {
        this.kind = kind;
        this.figures = figures;
        curve = new VoltageCurve<One>(figures.Settings);
        radPerS = figures.Settings.MotorRatedFrequency.RadiansPerSecond;

        // Where resistance and reactance of the rotor's branch are of one order, in whole milliseconds.
        rotorS = Math.Clamp(figures.Motor.Magnetizing.Ohms / (radPerS * figures.Motor.RotorResistance.Ohms), 0.05, LongestRotorS);
        lowHz = 1 / (ControlFigures.TickS * Math.Round(2 * Math.PI * rotorS / (2 * ControlFigures.TickS)));
    }

    /// <summary>How it ended; null while it goes on.</summary>
    internal AutoTuneOutcome? Outcome { get; private set; }

    /// <summary>One sample.</summary>
    internal PlantCommand<One> Sample(in Measurement<One> measured)
    {
        if (measured.LargestCurrentA >= figures.OvercurrentA || measured.BusV < figures.UndervoltageTripV)
        {
            Outcome = new AutoTuneOutcome.Failed("current or DC bus left their limits; check cable, supply and the motor's rated values.");
        }

        double alongA = Math.Sqrt(2) * measured.AlongA;
        var (peakV, hertz) = direct.Count < 2 ? (Direct(alongA, measured.AcrossA), 0)
            : high is not { IsDone: true } ? (High(alongA), 0)
            : low is not { IsDone: true } ? (Low(alongA), 0)
            : kind == AutoTune.Rotating ? Run(measured)
            : (Finish(), 0);
        var on = Outcome is null ? LaneSet.Every<One>() : default;
        return new PlantCommand<One>(
            on, peakV / Math.Max(measured.BusV, 1), default, hertz, false, kind == AutoTune.Rotating && direct.Count == 2 ? on : default, RectifierMode.Conducting);
    }

    private double Direct(double currentA, double acrossA)
    {
        directS += ControlFigures.TickS;
        var wantedA = Math.Sqrt(2) * figures.MotorA * (direct.Count == 0 ? LowA : HighA);
        var unit = Math.Sqrt(2.0 / 3) * figures.Settings.MotorRatedVoltage.Volts / (Math.Sqrt(2) * figures.MotorA);
        directV = Math.Clamp(directV + (0.5 * unit * ControlFigures.TickS * (wantedA - currentA)), 0, 0.3 * figures.Settings.MotorRatedVoltage.Volts);
        var moving = Math.Abs(currentA - lastA) / ControlFigures.TickS > SettledAPerS * wantedA || Math.Abs(currentA - wantedA) > SettledAPerS * wantedA;
        lastA = currentA;
        quietS = moving ? 0 : quietS + ControlFigures.TickS;
        if (quietS > 0.2)
        {
            if (Math.Abs(Math.Sqrt(2) * acrossA) > MostAcross * currentA)
            {
                Outcome = new AutoTuneOutcome.Failed("the phases do not share the direct current as three equal ones do; check that all three are connected.");
            }

            direct.Add((directV, currentA));
            (directS, quietS) = (0, 0);
            statorOhm = direct.Count == 2 ? (direct[1].V - direct[0].V) / (direct[1].A - direct[0].A) : 0;
        }
        else if (directS > LongestDirectS)
        {
            Outcome = new AutoTuneOutcome.Failed("the direct current does not settle; check that all three phases are connected.");
        }

        return directV;
    }

    private double High(double currentA)
    {
        var motor = figures.Motor;
        var hertz = figures.Settings.MotorRatedFrequency.Hertz;
        var ohms = new Complex(statorOhm + motor.RotorResistance.Ohms, motor.Leakage.Ohms).Magnitude;
        high ??= new Impedance(hertz, AlternatingA * Math.Sqrt(2) * figures.MotorA * ohms, 1.5, (int)hertz);
        return high.Next(currentA);
    }

    private double Low(double currentA)
    {
        low ??= new Impedance(lowHz, AlternatingA * Math.Sqrt(2) * figures.MotorA * (statorOhm + (0.7 * figures.Motor.RotorResistance.Ohms)), 6 * rotorS, 4);
        var volts = low.Next(currentA);
        if (low.IsDone)
        {
            Solve();
        }

        return volts;
    }

    private void Solve()
    {
        var (fast, slow) = (2 * Math.PI * figures.Settings.MotorRatedFrequency.Hertz, 2 * Math.PI * lowHz);
        leakageH = high!.Ohms.Imaginary / fast;
        for (var i = 0; i < 50; i++)
        {
            var branch = 1 / (low!.Ohms - statorOhm - new Complex(0, slow * leakageH));
            (rotorOhm, magnetizingH) = (1 / branch.Real, -1 / (slow * branch.Imaginary));
            var atHigh = 1 / new Complex(1 / rotorOhm, -1 / (fast * magnetizingH));
            leakageH = (high.Ohms.Imaginary - atHigh.Imaginary) / fast;
        }

        if (!(statorOhm > 0 && leakageH > 0 && rotorOhm > 0 && magnetizingH > leakageH))
        {
            Outcome = new AutoTuneOutcome.Failed("what was measured is no induction motor; check the connection, and that nothing else hangs on the output.");
        }
    }

    private (double PeakV, double Hz) Run(in Measurement<One> measured)
    {
        var topHz = RunShare * figures.Settings.BaseFrequency.Hertz;
        if (slowing)
        {
            runHz = Math.Max(0, runHz - (figures.DecelerationHzPerS * ControlFigures.TickS));
            return runHz > 0 ? (PeakAt(runHz), runHz) : (Finish(), 0);
        }

        if (measured.CurrentA > 1.2 * figures.MotorA && runHz > 0.2 * topHz)
        {
            Outcome = new AutoTuneOutcome.Failed("the motor is loaded; uncouple it for a rotating auto-tune, or choose the stationary one.");
        }

        runHz = Math.Min(topHz, runHz + (figures.AccelerationHzPerS * ControlFigures.TickS));
        atSpeedS += runHz < topHz ? 0 : ControlFigures.TickS;
        if (atSpeedS > SettleRunS)
        {
            NoLoad(measured);
            slowing = true;
        }

        return (PeakAt(runHz), runHz);
    }

    private double PeakAt(double hertz) => Math.Sqrt(2.0 / 3) * curve.At(hertz);

    private void NoLoad(in Measurement<One> measured)
    {
        if (measured.CurrentA > 0.9 * figures.MotorA)
        {
            Outcome = new AutoTuneOutcome.Failed("the motor is loaded; uncouple it for a rotating auto-tune, or choose the stationary one.");
            return;
        }

        var omega = 2 * Math.PI * runHz;
        var current = Math.Sqrt(2) * new Complex(measured.AlongA, -measured.AcrossA);
        var branch = 1 / ((PeakAt(runHz) / current) - statorOhm - new Complex(0, omega * leakageH));
        magnetizingH = -1 / (omega * branch.Imaginary);
    }

    private double Finish()
    {
        Outcome ??= new AutoTuneOutcome.Done(new TunedMotor(
            Resistance.FromOhms(statorOhm), Reactance.FromOhms(radPerS * leakageH), Resistance.FromOhms(rotorOhm), Reactance.FromOhms(radPerS * magnetizingH)));
        return 0;
    }
}
