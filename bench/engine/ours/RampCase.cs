using System.Globalization;
using Runup.Dynamics.Batch;
using Runup.Dynamics.Lanes;
using Runup.Engineering.Drives;
using Runup.Engineering.Loads;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Bench.Engine;

/// <summary>Case (a): plant and V/f ramp alone, 0 to 60 Hz in 2 s and 1 s there; the figures stand in engine.c too.</summary>
internal static class RampCase
{
    internal static readonly EquivalentCircuit Motor = new()
    {
        StatorResistance = Resistance.FromOhms(0.087),
        StatorLeakage = Reactance.FromOhms(0.302),
        Magnetizing = Reactance.FromOhms(13.08),
        RotorLeakage = Reactance.FromOhms(0.302),
        RotorResistance = Resistance.FromOhms(0.228),
        RatedFrequency = ElectricalFrequency.FromHertz(60),
        RatedVoltage = LineVoltage.FromVolts(460),
        Poles = PoleCount.FromPoles(4),
    };

    internal static readonly DrivenMachine Machine = new()
    {
        Load = new LoadCurve.Quadratic(Torque.FromNewtonMetres(198), ShaftSpeed.FromRpm(1705)),
        MachineInertia = default,
        MotorInertia = Inertia.FromKilogramSquareMetres(1.662),
    };

    private static readonly VoltsPerHertz Curve = new()
    {
        BaseFrequency = ElectricalFrequency.FromHertz(60),
        MaximumVoltage = LineVoltage.FromVolts(460),
        RatedVoltage = LineVoltage.FromVolts(460),
        Boost = Fraction.FromRatio(0.02),
    };

    /// <summary>Points of one run, for comparison: time, speed, current.</summary>
    internal static IEnumerable<string> Points()
    {
        var run = New<One>([Motor]);
        for (var step = 1; step <= run.RampSteps + StaySteps(run); step++)
        {
            if (step <= run.RampSteps)
            {
                run.Rise(1);
            }
            else
            {
                run.Stay(1);
            }

            yield return string.Create(CultureInfo.InvariantCulture, $"{step * run.StepS:R} {run.SpeedRadPerS[0]:R} {run.CurrentA[0]:R}");
        }
    }

    /// <summary>Microseconds of one run; a run is set up outside the measurement, as CVODE's memory is.</summary>
    internal static double SingleUs()
    {
        const int Runs = 10;
        var pristine = New<One>([Motor]);
        return Timing.MedianUs(() =>
        {
            for (var i = 0; i < Runs; i++)
            {
                Go(pristine);
            }
        }) / Runs;
    }

    /// <summary>Microseconds a member of a batch on all processors.</summary>
    internal static double MemberUs(int members)
    {
        var motors = Enumerable.Range(0, members)
            .Select(i => Motor with { RotorResistance = Resistance.FromOhms(0.228 * (0.8 + (0.4 * i / members))) }).ToArray();
        var groups = motors.Chunk(Eight.Count).Select(New<Eight>).ToArray();
        return Timing.MedianUs(() => Parallel.ForEach(groups, Go)) / members / Environment.ProcessorCount;
    }

    /// <summary>Microseconds a member of one group of eight on one processor.</summary>
    internal static double LaneUs()
    {
        var group = New<Eight>([Motor]);
        return Timing.MedianUs(() => Go(group), 101) / Eight.Count;
    }

    private static RampRun<T> New<T>(IReadOnlyList<EquivalentCircuit> motors)
        where T : struct, ILanes<T> =>
        new(motors, Machine, Curve, ElectricalFrequency.FromHertz(60), Duration.FromSeconds(2));

    private static int StaySteps<T>(RampRun<T> run)
        where T : struct, ILanes<T> => (int)Math.Round(1 / run.StepS);

    private static void Go<T>(RampRun<T> run)
        where T : struct, ILanes<T>
    {
        run.Restart();
        run.Rise(run.RampSteps);
        run.Stay(StaySteps(run));
    }
}
