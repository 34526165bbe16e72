using System.Text.Json;
using FsCheck;
using FsCheck.Fluent;
using Runup.Engineering.Motors;
using Runup.Outside.Tests.Modbus;
using Runup.Quantities;

namespace Runup.Outside.Tests.Engineering;

/// <summary>
/// The steady state of random motors against SciPy (Debian's python3-scipy), which solves the mesh equations of the same circuit by general linear algebra and searches
/// the largest torque with a general optimiser.
/// </summary>
public sealed class SciPyTests
{
    private const int Motors = 300;
    private const double Close = 1e-9;

    [Fact]
    public async Task Random_motors_have_the_current_power_factor_and_torque_that_scipy_finds()
    {
        var python = await PythonAsync();
        Assert.SkipUnless(python is not null, "SciPy is not installed: apt-get install python3-scipy");
        var cases = Gen.Sample(AnyMotor, Motors, 50).Append(TwoHumps).Concat(PublishedMotors.Motors.Rows.Keys.Select(id => new Case(PublishedMotors.Circuit(id), 0.03, 1))).ToList();
        var file = Path.GetTempFileName();
        try
        {
            await File.WriteAllTextAsync(file, JsonSerializer.Serialize(cases.Select(Told)));
            var run = (await OtherProgram.RunAsync(python, Path.Combine(AppContext.BaseDirectory, "Engineering", "circuit_meshes.py"), file)).ShouldNotBeNull();
            run.Status.ShouldBe(0, run.Errors);
            using var said = JsonDocument.Parse(run.Output);
            said.RootElement.GetArrayLength().ShouldBe(cases.Count);
            foreach (var (motor, answer) in cases.Zip(said.RootElement.EnumerateArray()))
            {
                Agrees(motor, answer);
            }
        }
        finally
        {
            File.Delete(file);
        }
    }

    /// <summary>Two humps of torque, at slips of 4 % and 84 %, nearly as high as one another.</summary>
    private static Case TwoHumps => new(
        new EquivalentCircuit
        {
            StatorResistance = Resistance.FromOhms(1.62024),
            StatorLeakage = Reactance.FromOhms(0.606373),
            Magnetizing = Reactance.FromOhms(130.545),
            CoreLoss = Resistance.FromOhms(1311.34),
            RotorLeakage = Reactance.FromOhms(4.25525),
            RotorResistance = Resistance.FromOhms(0.178133),
            SecondCage = new RotorCage(Resistance.FromOhms(2.79192), Reactance.FromOhms(2.16337)),
            RatedFrequency = ElectricalFrequency.FromHertz(50),
            RatedVoltage = LineVoltage.FromVolts(400),
            Poles = PoleCount.FromPoles(12),
        },
        -0.6438275229447066,
        0.92);

    private static void Agrees(Case motor, JsonElement answer)
    {
        var (circuit, frequency) = (motor.Circuit, ElectricalFrequency.FromHertz(motor.Circuit.RatedFrequency.Hertz * motor.Scale));
        var state = CircuitSolution.At(circuit, circuit.RatedVoltage, frequency, Slip.FromRatio(motor.Slip));
        void Same(string name, double ours, double within = Close)
        {
            var theirs = answer.GetProperty(name).GetDouble();
            ours.ShouldBe(theirs, within * Math.Abs(theirs), $"{name} of {circuit} at slip {motor.Slip}");
        }

        Same("current", state.Current.Amperes);
        Same("power_factor", state.PowerFactor.Ratio);
        Same("torque", state.DevelopedTorque.NewtonMetres);
        Same("input", state.Input.Watts);
        if (motor.SearchesBreakdown)
        {
            // Of two cages the largest torque is searched, not solved, on both sides; the top of the curve is flat.
            Same("breakdown", Breakdown.Of(circuit, circuit.RatedVoltage, frequency).Torque.NewtonMetres, circuit.SecondCage is null ? 1e-9 : 1e-6);
        }
    }

    private static object Told(Case motor) => new
    {
        rs = motor.Circuit.StatorResistance.Ohms,
        xls = motor.Circuit.StatorLeakage.Ohms,
        xm = motor.Circuit.Magnetizing.Ohms,
        core = motor.Circuit.CoreLoss?.Ohms,
        rr = motor.Circuit.RotorResistance.Ohms,
        xlr = motor.Circuit.RotorLeakage.Ohms,
        r2 = motor.Circuit.SecondCage?.Resistance.Ohms,
        x2 = motor.Circuit.SecondCage?.Leakage.Ohms,
        poles = motor.Circuit.Poles.Poles,
        rated_hertz = motor.Circuit.RatedFrequency.Hertz,
        hertz = motor.Circuit.RatedFrequency.Hertz * motor.Scale,
        volts = motor.Circuit.RatedVoltage.Volts,
        slip = motor.Slip,
        breakdown = motor.SearchesBreakdown,
    };

    private static Gen<double> Between(double low, double high) =>
        Gen.Choose(0, 1_000_000).Select(part => low * Math.Pow(high / low, part / 1e6));

    /// <summary>From a tenth of a kilowatt to half a megawatt, 5 to 100 Hz, motor and generator, with and without core loss and second cage.</summary>
    private static Gen<Case> AnyMotor =>
        from ohms in Between(0.02, 300)
        from rs in Between(0.008, 0.12)
        from xls in Between(0.03, 0.2)
        from xm in Between(1.2, 8)
        from xlr in Between(0.03, 0.3)
        from rr in Between(0.006, 0.12)
        from core in Gen.Elements<double?>(null, 20, 80)
        from second in Gen.Elements(false, true)
        from r2 in Between(0.05, 0.6)
        from x2 in Between(0.02, 0.2)
        from poles in Gen.Elements(2, 4, 6, 8, 12)
        from hertz in Gen.Elements(50.0, 60.0)
        from scale in Between(0.1, 2)
        from slip in Between(0.003, 1.5)
        from sign in Gen.Elements(1, 1, 1, -1)
        select new Case(
            new EquivalentCircuit
            {
                StatorResistance = Resistance.FromOhms(ohms * rs),
                StatorLeakage = Reactance.FromOhms(ohms * xls),
                Magnetizing = Reactance.FromOhms(ohms * xm),
                CoreLoss = core is { } c ? Resistance.FromOhms(ohms * c) : null,
                RotorLeakage = Reactance.FromOhms(ohms * xlr),
                RotorResistance = Resistance.FromOhms(ohms * rr),
                SecondCage = second ? new RotorCage(Resistance.FromOhms(ohms * r2), Reactance.FromOhms(ohms * x2)) : null,
                RatedFrequency = ElectricalFrequency.FromHertz(hertz),
                RatedVoltage = LineVoltage.FromVolts(400),
                Poles = PoleCount.FromPoles(poles),
            },
            slip * sign,
            scale);

    private static async Task<string?> PythonAsync()
    {
        foreach (var python in new[] { "/usr/bin/python3", "python3" })
        {
            if (await OtherProgram.RunAsync(python, "-c", "import scipy, numpy") is { Status: 0 })
            {
                return python;
            }
        }

        return null;
    }

    private sealed record Case(EquivalentCircuit Circuit, double Slip, double Scale)
    {
        // A single cage's peak may lie beyond standstill, where a motor does not run; the search of the script ends there.
        internal bool SearchesBreakdown =>
            Breakdown.Of(Circuit, Circuit.RatedVoltage, ElectricalFrequency.FromHertz(Circuit.RatedFrequency.Hertz * Scale)).Slip.Ratio is > 2e-3 and < 0.9;
    }
}
