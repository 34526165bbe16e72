using System.Numerics;
using Runup.Dynamics;
using Runup.Dynamics.Lanes;
using Runup.Dynamics.Plant;
using Runup.Dynamics.Tests;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Outside.Tests.Dynamics;

/// <summary>A motor whose conductors fail, against SciPy's LSODA on its equations in phase quantities, and against symmetrical components in the steady state.</summary>
/// <remarks>Program and trajectories: <c>data/cases/dynamics/open-phase.py</c> and <c>.csv</c>.</remarks>
public sealed class OpenPhaseTests
{
    private const double PeakV = 326.59863237109040;

    private static readonly EquivalentCircuit Motor = Examples.Motor with { CoreLoss = null, FrictionLoss = default, StrayLoss = default };

    private static readonly OutputFault OpenU = new OutputFault.PhaseOpen(OutputPhase.U);

    [Fact]
    public void A_phase_that_opens_under_load_goes_as_there() => Compare("open", 604, plant => plant.Fault = OpenU, offAt: int.MaxValue);

    [Fact]
    public void A_start_with_a_phase_open_goes_as_there_and_does_not_turn() => Compare("start", 0, plant => plant.Fault = OpenU, offAt: int.MaxValue);

    [Fact]
    public void A_motor_that_coasts_into_a_short_circuit_of_two_phases_goes_as_there() =>
        Compare("coast", 604, plant => plant.Fault = new OutputFault.BetweenPhases(OutputPhase.V, OutputPhase.W, Resistance.FromOhms(2)), offAt: 604);

    /// <summary>
    /// One phase open: I₁ = −I₂ = U_LL/√3/|Z₁ + Z₂|, √3·I₁ in each line; torque 3·p/ω·(I_r1²·Rr/s − I_r2²·Rr/(2 − s)).
    /// Wagner and Evans, Symmetrical Components (from memory), as any textbook of machines has it.
    /// </summary>
    [Theory]
    [InlineData(0)]
    [InlineData(750)]
    [InlineData(1440)]
    public void In_the_steady_state_it_is_the_positive_and_the_negative_sequence_in_series(double rpm)
    {
        var plant = Plant(inertia: 1e7);
        plant.Take(plant.Give() with { States = plant.Give().States with { MotorRadPerS = rpm * Math.PI / 30, LoadRadPerS = rpm * Math.PI / 30 }, Direction = 1 }, plant.Reading);
        plant.Fault = OpenU;
        for (var i = 0; i < 3000; i++)
        {
            Tick(plant, on: true);
        }

        var (square, torque) = (0.0, 0.0);
        for (var i = 0; i < 20; i++)
        {
            Tick(plant, on: true);
            square += Math.Pow(Phase(plant, 3021 + i, OutputPhase.V), 2) / 20;
            torque += plant.Reading.TorqueNm / 20;
        }

        var slip = 1 - (rpm / 1500);
        var (positive, negative) = (Branch(slip), Branch(2 - slip));
        var current = PeakV / Math.Sqrt(2) / (positive.Total + negative.Total).Magnitude;
        Math.Sqrt(square).ShouldBe(Math.Sqrt(3) * current, 2e-4 * current);
        var expected = 3 * 2 / (100 * Math.PI) * current * current * (positive.AirGapOhm - negative.AirGapOhm);
        torque.ShouldBe(expected, 2e-4 * 3 * 2 / (100 * Math.PI) * current * current * positive.AirGapOhm);
    }

    private static (Complex Total, double AirGapOhm) Branch(double slip)
    {
        var rotor = new Complex(Motor.RotorResistance.Ohms / slip, Motor.RotorLeakage.Ohms);
        var parallel = 1 / ((1 / rotor) + (1 / new Complex(0, Motor.Magnetizing.Ohms)));
        return (parallel + new Complex(Motor.StatorResistance.Ohms, Motor.StatorLeakage.Ohms), parallel.Real);
    }

    private static void Compare(string run, int failsAt, Action<DetailedPlant> fail, int offAt)
    {
        var plant = Plant(inertia: 0.155);
        var rows = StoredRuns.Rows("open-phase").Where(r => string.Equals(r[0], run, StringComparison.Ordinal)).Select(r => r.Skip(1).Select(StoredRuns.Number).ToArray())
            .ToDictionary(r => (int)Math.Round(r[0] / 1e-3));
        var (largestA, largestNm) = (rows.Values.Max(r => Math.Abs(r[2])), rows.Values.Max(r => Math.Abs(r[4])));
        for (var i = 0; i < rows.Keys.Max(); i++)
        {
            if (i == failsAt)
            {
                fail(plant);
            }

            Tick(plant, i < offAt);
            if (rows.TryGetValue(i + 1, out var row))
            {
                Phase(plant, i + 1, OutputPhase.U).ShouldBe(i < offAt ? row[1] : 0, 3e-4 * largestA, $"U at {row[0]} s");
                Phase(plant, i + 1, OutputPhase.V).ShouldBe(i < offAt ? row[2] : 0, 3e-4 * largestA, $"V at {row[0]} s");
                ((double)plant.Reading.TorqueNm).ShouldBe(row[4], 3e-4 * Math.Max(largestNm, 1), $"torque at {row[0]} s");
                ((double)plant.Reading.SpeedRadPerS).ShouldBe(row[5], 2e-3, $"speed at {row[0]} s");
            }
        }

        rows.Count.ShouldBeGreaterThanOrEqualTo(20);
    }

    // A bus so large that it stands still.
    private static DetailedPlant Plant(double inertia) => new(
        Examples.PumpSet with
        {
            Motor = Motor,
            Machine = Examples.Pump with
            {
                MotorInertia = Inertia.FromKilogramSquareMetres(inertia),
                MachineInertia = Inertia.FromKilogramSquareMetres(0),
                Breakaway = null,
            },
            Drive = Examples.Drive with { BusCapacitance = Capacitance.FromFarads(1e5), OvercurrentTrip = LineCurrent.FromAmperes(1000) },
        },
        new PlantDetail(),
        1e-3);

    private static void Tick(DetailedPlant plant, bool on)
    {
        double busV = plant.Reading.BusV;
        plant.Advance(new PlantCommand<One>(on ? LaneSet.Every<One>() : default, PeakV / busV, default, 50, false, LaneSet.Every<One>(), RectifierMode.Conducting));
    }

    private static double Phase(DetailedPlant plant, int ticks, OutputPhase phase) => FaultyFields.PhaseA(
        Math.Sqrt(2) * new Complex(plant.Reading.AlongA, -plant.Reading.AcrossA) * Complex.FromPolarCoordinates(1, 2 * Math.PI * 0.05 * ticks), plant.ResidualA, phase);
}
