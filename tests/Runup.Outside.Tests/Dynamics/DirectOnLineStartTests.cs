using Runup.Dynamics;
using Runup.Engineering.Loads;
using Runup.Engineering.Motors;
using Runup.Quantities;

namespace Runup.Outside.Tests.Dynamics;

/// <summary>Direct-on-line start against the published solver output of the Modelica Standard Library's example IMC_DOL.</summary>
/// <remarks>
/// Source of the trajectory: github.com/modelica/MAP-LIB_ReferenceResults, commit 2ea98d39, reference result of
/// Modelica.Electrical.Machines.Examples.InductionMachines.IMC_DOL; of the machine: the library's IM_SquirrelCage (BSD-3). The torque is not in that
/// file: it is formed from the published currents, 3/2·p·Lm·Im{is·conj(ir)}. The machine is in delta on 100 V, that is, 100 V at each winding.
/// </remarks>
public sealed class DirectOnLineStartTests
{
    // 0.2 % of the largest magnitude in each column of the rows below.
    private const double CurrentTolerance = 0.002 * 638.6;
    private const double TorqueTolerance = 0.002 * 419.2;
    private const double SpeedTolerance = 0.002 * 1440.45;

    /// <summary>Time after switching in s; current of a winding as space phasor over √2 in A; torque in N·m; speed in rpm.</summary>
    public static TheoryData<double, double, double, double> Rows => new()
    {
        { 0.005, 550.3, 58.5, 1.06 },
        { 0.010, 638.6, 419.2, 19.1 },
        { 0.020, 412.8, 29.4, 90.0 },
        { 0.050, 486.9, 78.9, 111.7 },
        { 0.100, 404.8, 381.7, 239.2 },
        { 0.200, 486.9, 161.1, 487.1 },
        { 0.300, 426.0, 290.7, 843.0 },
        { 0.400, 307.8, 355.1, 1250.2 },
        { 0.500, 108.6, 170.0, 1439.9 },
        { 0.600, 100.1, 161.6, 1440.4 },
        { 0.700, 100.00, 161.40, 1440.45 },
        { 1.000, 100.00, 161.40, 1440.45 },
    };

    [Theory]
    [MemberData(nameof(Rows))]
    public void Every_row_of_the_published_start_is_met(double timeS, double currentA, double torqueNm, double speedRpm)
    {
        var start = Start();

        start.Advance(Duration.FromSeconds(timeS));

        start.Current.Amperes.ShouldBe(currentA, CurrentTolerance);
        start.Torque.NewtonMetres.ShouldBe(torqueNm, TorqueTolerance);
        start.Speed.Rpm.ShouldBe(speedRpm, SpeedTolerance);
    }

    [Fact]
    public void Peaks_of_the_published_start_are_met()
    {
        var seen = Sampled(Start(), 0.5e-4, 1);

        var current = seen.MaxBy(s => s.CurrentA);
        (current.CurrentA * Math.Sqrt(2)).ShouldBe(922.67, 0.002 * 922.67);
        current.TimeS.ShouldBe(8.55e-3, 0.1e-3);
        var highest = seen.MaxBy(s => s.TorqueNm);
        highest.TorqueNm.ShouldBe(586.3, 0.002 * 586.3);
        highest.TimeS.ShouldBe(13.5e-3, 0.1e-3);
        var lowest = seen.MinBy(s => s.TorqueNm);
        lowest.TorqueNm.ShouldBe(-298.8, 0.002 * 586.3);
        lowest.TimeS.ShouldBe(45.2e-3, 0.1e-3);
        seen.Max(s => s.SpeedRpm).ShouldBe(1440.91, 0.002 * 1440.45);
    }

    [Theory]
    [InlineData(0.5, 0.2674)]
    [InlineData(0.9, 0.4126)]
    [InlineData(0.99, 0.4702)]
    public void Times_to_parts_of_the_final_speed_are_met(double part, double timeS) =>
        Sampled(Start(), 1e-4, 1).First(s => s.SpeedRpm >= part * 1440.45).TimeS.ShouldBe(timeS, 0.002 * timeS);

    private static LineStart Start() => new(Motor, Machine, LineVoltage.FromVolts(100 * Math.Sqrt(3)), ElectricalFrequency.FromHertz(50));

    // 3 Ω stator and rotor reactance with a stray factor of 0.0667: Xm = 3·√(1 − 0.0667), Xls = Xlr = 3 − Xm.
    private static EquivalentCircuit Motor
    {
        get
        {
            var magnetizing = 3 * Math.Sqrt(1 - 0.0667);
            return new EquivalentCircuit
            {
                StatorResistance = Resistance.FromOhms(0.03),
                StatorLeakage = Reactance.FromOhms(3 - magnetizing),
                Magnetizing = Reactance.FromOhms(magnetizing),
                RotorLeakage = Reactance.FromOhms(3 - magnetizing),
                RotorResistance = Resistance.FromOhms(0.04),
                RatedFrequency = ElectricalFrequency.FromHertz(50),
                RatedVoltage = LineVoltage.FromVolts(100 * Math.Sqrt(3)),
                Poles = PoleCount.FromPoles(4),
            };
        }
    }

    private static DrivenMachine Machine => new()
    {
        Load = new LoadCurve.Quadratic(Torque.FromNewtonMetres(161.4), ShaftSpeed.FromRpm(1440.45)),
        MachineInertia = Inertia.FromKilogramSquareMetres(0.29),
        MotorInertia = Inertia.FromKilogramSquareMetres(0.29),
    };

    private static List<(double TimeS, double CurrentA, double TorqueNm, double SpeedRpm)> Sampled(LineStart start, double everyS, double lengthS)
    {
        List<(double, double, double, double)> seen = [];
        while (start.Time.Seconds < lengthS)
        {
            start.Advance(Duration.FromSeconds(everyS));
            seen.Add((start.Time.Seconds, start.Current.Amperes, start.Torque.NewtonMetres, start.Speed.Rpm));
        }

        return seen;
    }
}
