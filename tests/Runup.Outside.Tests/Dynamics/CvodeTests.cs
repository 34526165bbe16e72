using Runup.Dynamics;
using Runup.Dynamics.Integration;
using Runup.Dynamics.Lanes;
using Runup.Dynamics.Plant;
using Runup.Engineering.Loads;
using Runup.Engineering.Motors;
using Runup.Outside.Tests.Engineering;
using Runup.Quantities;

namespace Runup.Outside.Tests.Dynamics;

/// <summary>Runs without control against SUNDIALS CVODE at 1e-13: within a millionth of each state's largest magnitude.</summary>
/// <remarks>Program and trajectories: <c>data/cases/dynamics/line-start.c</c> and <c>.csv</c>. Circuits: Modelica Standard Library, Chapman, Krause (<c>motors.csv</c>).</remarks>
public sealed class CvodeTests
{
    private const double Millionth = 1e-6;

    [Fact]
    public void A_start_on_the_supply_goes_as_there()
    {
        var motor = Circuit(100 * Math.Sqrt(3), 50, 0.03, 0.10178253, 2.89821747, 0.10178253, 0.04, null);

        Compare("start", new LineStart(motor, Fan(0.58, 161.4, 1440.45), motor.RatedVoltage, motor.RatedFrequency));
    }

    [Fact]
    public void A_start_with_core_loss_goes_as_there()
    {
        var motor = PublishedMotors.Circuit("MSL-18k5") with { FrictionLoss = default, StrayLoss = default };

        Compare("core-loss", new LineStart(motor, Fan(0.24, 120, 1462.5), motor.RatedVoltage, motor.RatedFrequency));
    }

    [Fact]
    public void Plugging_from_full_speed_through_zero_goes_as_there()
    {
        var motor = Circuit(460, 60, 0.641, 1.106, 26.3, 0.464, 0.332, null);

        Compare("plugging", new LineStart(motor, Fan(0.554, 0, 1800), motor.RatedVoltage, motor.RatedFrequency, ShaftSpeed.FromRpm(-1790)));
    }

    [Fact]
    public void A_ramp_of_voltage_and_frequency_goes_as_there()
    {
        var motor = Circuit(460, 60, 0.087, 0.302, 13.08, 0.302, 0.228, null);
        var top = 460 * Math.Sqrt(2.0 / 3);
        var radPerS = 120 * Math.PI;
        var rates = new RampRates<One>
        {
            Machine = new InductionMachine<One>([motor]),
            Shaft = new Shaft<One>([new ShaftLoad(Fan(1.662, 198, 1705), motor)]),
            AtZeroV = 0.02 * top,
            PerRadPerSV = 0.98 * top / radPerS,
        };
        rates.Share = rates.Machine.ShareAt(default);
        rates.Move(0, 1);
        var (stepper, states) = (new DormandPrince(1e-10, 1e-12), default(SixStates<One>));
        var timeS = 0.0;

        Compare("ramp", to =>
        {
            rates.AngularAcceleration = timeS < 2 - 1e-9 ? radPerS / 2 : 0;
            ShaftMotion.Advance<DormandPrince, RampRates<One>, One>(stepper, ref rates, ref states, to - timeS);
            timeS = to;
            return states;
        });
    }

    private static void Compare(string run, LineStart start) => Compare(run, to =>
    {
        start.Advance(Duration.FromSeconds(to - start.Time.Seconds));
        return start.States;
    });

    private static void Compare(string run, Func<double, SixStates<One>> advance)
    {
        var rows = StoredRuns.Rows("line-start").Where(r => string.Equals(r[0], run, StringComparison.Ordinal)).Select(r => r.Skip(1).Select(StoredRuns.Number).ToArray()).ToList();
        var apart = new double[5];
        foreach (var row in rows)
        {
            var at = advance(row[0]);
            double[] ours = [at.X1, at.X2, at.X3, at.X4, at.X5];
            for (var i = 0; i < ours.Length; i++)
            {
                apart[i] = Math.Max(apart[i], Math.Abs(ours[i] - row[i + 1]));
            }
        }

        rows.Count.ShouldBeGreaterThanOrEqualTo(60);
        for (var i = 0; i < apart.Length; i++)
        {
            apart[i].ShouldBeLessThan(Millionth * rows.Max(r => Math.Abs(r[i + 1])), $"state {i + 1}");
        }
    }

    private static EquivalentCircuit Circuit(double volts, double hertz, double rs, double xls, double xm, double xlr, double rr, double? rc) => new()
    {
        RatedVoltage = LineVoltage.FromVolts(volts),
        RatedFrequency = ElectricalFrequency.FromHertz(hertz),
        Poles = PoleCount.FromPoles(4),
        StatorResistance = Resistance.FromOhms(rs),
        StatorLeakage = Reactance.FromOhms(xls),
        Magnetizing = Reactance.FromOhms(xm),
        RotorLeakage = Reactance.FromOhms(xlr),
        RotorResistance = Resistance.FromOhms(rr),
        CoreLoss = rc is { } ohms ? Resistance.FromOhms(ohms) : null,
    };

    private static DrivenMachine Fan(double inertia, double torqueNm, double rpm) => new()
    {
        Load = torqueNm > 0
            ? new LoadCurve.Quadratic(Torque.FromNewtonMetres(torqueNm), ShaftSpeed.FromRpm(rpm))
            : new LoadCurve.Constant(Torque.FromNewtonMetres(0)),
        MachineInertia = Inertia.FromKilogramSquareMetres(0),
        MotorInertia = Inertia.FromKilogramSquareMetres(inertia),
    };
}
