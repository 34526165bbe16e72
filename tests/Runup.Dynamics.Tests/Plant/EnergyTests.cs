using Runup.Dynamics.Lanes;
using Runup.Dynamics.Plant;
using static Runup.Dynamics.Tests.Examples;

namespace Runup.Dynamics.Tests.Plant;

/// <summary>What goes in is stored, lost or done as work: over a whole start, to a millionth.</summary>
public sealed class EnergyTests
{
    private const double SampleS = 2e-5;
    private static readonly ShaftLoad Load = new(Pump, Motor);

    [Fact]
    public void Input_of_a_start_on_the_supply_is_shaft_work_losses_and_stored_energy()
    {
        var motor = Motor with { CoreLoss = null };
        var start = new LineStart(motor, Pump, Motor.RatedVoltage, Motor.RatedFrequency);
        var inertia = Pump.TotalInertia.KilogramSquareMetres;
        var work = new Simpson();

        var before = Stored(start, inertia);
        work.Add(Powers(start));
        for (var i = 0; i < 20_000; i++)
        {
            start.Advance(Seconds(SampleS));
            work.Add(Powers(start));
        }

        var after = Stored(start, inertia);
        after.Kinetic.ShouldBeGreaterThan(500);
        var (inputJ, lossJ, shaftJ, againstJ) = work.Sums(SampleS);
        inputJ.ShouldBe(lossJ + shaftJ + after.Field - before.Field, 1e-6 * inputJ);
        shaftJ.ShouldBe(againstJ + after.Kinetic - before.Kinetic, 1e-6 * inputJ);
    }

    [Fact]
    public void Switching_the_output_off_leaves_the_energy_of_the_leakage_on_the_bus()
    {
        var drive = new DriveSimulation(PumpSet, ByPlate) { Order = Forward(50) };
        var running = drive.Run(7);
        drive.PowerOff();

        var coasting = drive.Run(0.001);

        var leakage = (Motor.StatorLeakage.Ohms + (Motor.Magnetizing.Ohms * Motor.RotorLeakage.Ohms / (Motor.Magnetizing.Ohms + Motor.RotorLeakage.Ohms))) / (100 * Math.PI);
        var energyJ = 1.5 * leakage * running.OutputCurrentA * running.OutputCurrentA;
        var capacitance = Drive.BusCapacitance.Farads;
        coasting.OutputCurrentA.ShouldBe(0);
        (0.5 * capacitance * ((coasting.DcBusV * coasting.DcBusV) - (running.DcBusV * running.DcBusV))).ShouldBe(energyJ, 0.1 * energyJ);
    }

    private static (double Input, double Loss, double Shaft, double Against) Powers(LineStart start)
    {
        var (i, states) = (start.Currents, start.States);
        var machine = start.Rates.Machine;
        double speed = states.X5;
        var against = speed >= 0
            ? Load.Forward.At(speed) + Load.BearingsNm + (Load.WindagePerSquare * speed * speed)
            : Load.Backward.At(speed) - Load.BearingsNm - (Load.WindagePerSquare * speed * speed);
        double stray = StrayBraking.PerSpeed(Motor) * i.StatorSquareA2 * speed;
        return (
            1.5 * states.X6 * i.QsA,
            1.5 * ((machine.StatorOhm * i.StatorSquareA2) + (machine.RotorOhm * ((i.QrA * i.QrA) + (i.DrA * i.DrA)))),
            machine.TorqueNm(i, states.X3, states.X4) * speed,
            (against + stray) * speed);
    }

    private static (double Field, double Kinetic) Stored(LineStart start, double inertia)
    {
        var s = start.States;
        return (
            InductionMachine<One>.FieldEnergyJ(s, start.Currents),
            0.5 * inertia * s.X5 * s.X5);
    }

    /// <summary>Simpson's rule over samples at equal steps, an even number of them.</summary>
    private sealed class Simpson
    {
        private readonly List<(double Input, double Loss, double Shaft, double Against)> samples = [];

        internal void Add((double Input, double Loss, double Shaft, double Against) sample) => samples.Add(sample);

        internal (double Input, double Loss, double Shaft, double Against) Sums(double stepS) =>
            (Sum(s => s.Input, stepS), Sum(s => s.Loss, stepS), Sum(s => s.Shaft, stepS), Sum(s => s.Against, stepS));

        private double Sum(Func<(double Input, double Loss, double Shaft, double Against), double> of, double stepS)
        {
            var sum = 0.0;
            for (var i = 0; i + 2 < samples.Count; i += 2)
            {
                sum += stepS / 3 * (of(samples[i]) + (4 * of(samples[i + 1])) + of(samples[i + 2]));
            }

            return sum;
        }
    }
}
