using Runup.Engineering.Loads;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Dynamics.Tests.Regressions;

/// <summary>Free acceleration of textbook machines on the supply: a regression, not a publication.</summary>
/// <remarks>
/// The books print these runs as figures only. The figures here were computed once by another program (stationary frame, Runge-Kutta at 50 µs), no load, own
/// inertia. The circuits are published: Krause and others (3, 50, 500 hp), Cathey, Cavin and Ayoub 1973 (250 hp), Chapman (25 hp), Modelica Standard Library
/// (18.5 kW at 90 °C, without core loss).
/// </remarks>
public sealed class FreeAccelerationTests
{
    public static TheoryData<string, double[], double, double, double[], double> Machines => new()
    {
        // Name; V, Hz, Rs, Xls, Xm, Xlr, Rr, J; highest and lowest torque; s to 50, 90, 95, 99 % of synchronous speed; highest speed (0: none above).
        { "3 hp", [220, 60, 0.435, 0.754, 26.13, 0.754, 0.816, 0.089], 132.1, -22.1, [0.157, 0.294, 0.334, 0.420], 0 },
        { "50 hp", [460, 60, 0.087, 0.302, 13.08, 0.302, 0.228, 1.662], 1654.6, -569.6, [0.278, 0.461, 0.508, 0.607], 0 },
        { "500 hp", [2300, 60, 0.262, 1.206, 54.02, 1.206, 0.187, 11.06], 5066, -3700, [1.024, 1.362, 1.388, 1.411], 1830.9 },
        { "250 hp", [2300, 60, 0.681, 2.45, 85.84, 2.45, 0.401, 6.918], 2291, -1488, [1.198, 1.617, 1.650, 1.681], 1820.5 },
        { "25 hp", [460, 60, 0.641, 1.106, 26.3, 0.464, 0.332, 0.554], 305.2, -82.2, [0.401, 0.607, 0.638, 0.685], 0 },
        { "18.5 kW", [400, 50, 0.2379, 0.5067, 22.133, 0.77, 0.1792, 0.12], 363.1, -181.4, [0.090, 0.127, 0.132, 0.135], 1606.8 },
    };

    [Theory]
    [MemberData(nameof(Machines))]
    public void Torque_times_and_overshoot_are_as_before(
        string name, double[] figures, double highestNm, double lowestNm, double[] timesS, double highestRpm)
    {
        var start = Start(figures);
        var synchronousRpm = 30 * figures[1];
        List<(double T, double Te, double Rpm)> seen = [];
        for (var i = 0; i < 22_000; i++)
        {
            start.Advance(Duration.FromSeconds(1e-4));
            seen.Add((start.Time.Seconds, start.Torque.NewtonMetres, start.Speed.Rpm));
        }

        seen.Max(s => s.Te).ShouldBe(highestNm, 0.003 * highestNm, name);
        seen.Min(s => s.Te).ShouldBe(lowestNm, 0.003 * highestNm, name);
        double[] parts = [0.5, 0.9, 0.95, 0.99];
        for (var i = 0; i < parts.Length; i++)
        {
            seen.First(s => s.Rpm >= parts[i] * synchronousRpm).T.ShouldBe(timesS[i], 0.001, name);
        }

        (seen.Max(s => s.Rpm) - Math.Max(highestRpm, synchronousRpm)).ShouldBeLessThan(0.5, name);
        seen.Max(s => s.Rpm).ShouldBeGreaterThan(Math.Max(highestRpm, 0.999 * synchronousRpm) - 0.5, name);
    }

    private static LineStart Start(double[] f) => new(
        new EquivalentCircuit
        {
            StatorResistance = Resistance.FromOhms(f[2]),
            StatorLeakage = Reactance.FromOhms(f[3]),
            Magnetizing = Reactance.FromOhms(f[4]),
            RotorLeakage = Reactance.FromOhms(f[5]),
            RotorResistance = Resistance.FromOhms(f[6]),
            RatedFrequency = ElectricalFrequency.FromHertz(f[1]),
            RatedVoltage = LineVoltage.FromVolts(f[0]),
            Poles = PoleCount.FromPoles(4),
        },
        new DrivenMachine
        {
            Load = new LoadCurve.Constant(Torque.FromNewtonMetres(0)),
            MachineInertia = Inertia.FromKilogramSquareMetres(0),
            MotorInertia = Inertia.FromKilogramSquareMetres(f[7]),
        },
        LineVoltage.FromVolts(f[0]),
        ElectricalFrequency.FromHertz(f[1]));
}
